package org.axlewright.domain.drive;

/** What keeps a drive from pulling harder or going faster. {@code toString} is the name in answers. */
public enum DriveLimit {
    /** The controller's limit on the motor side. */
    MOTOR_CURRENT("motor-current"),
    /** The largest torque the motor gives. */
    MOTOR_TORQUE("motor-torque"),
    /** The controller's limit on the battery side, or the most the pack can give. */
    BATTERY_CURRENT("battery-current"),
    /** The motor turns no faster, or pulls no harder, at this voltage. */
    VOLTAGE("voltage"),
    /** The motor's power. */
    POWER("power"),
    /** A cap or limiter. */
    SPEED_CAP("speed-cap"),
    /** The tyres slip. */
    GRIP("grip");

    private final String token;

    DriveLimit(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
