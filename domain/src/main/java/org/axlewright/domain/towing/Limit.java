package org.axlewright.domain.towing;

/** What bounds the towed mass. {@code toString} is the name in answers. */
public enum Limit {
    UNBRAKED_RULE("unbraked-rule"),
    BRAKED_RULE("braked-rule"),
    GRIP_LEVEL("grip-level"),
    GRIP_GRADE("grip-grade"),
    GRIP_START("grip-start"),
    FRONT_AXLE_LEVEL("front-axle-level"),
    FRONT_AXLE_GRADE("front-axle-grade"),
    DESCENT_GRIP("descent-grip"),
    REAR_RATING("rear-rating"),
    MOTOR_DUTY_LEVEL("motor-duty-level"),
    MOTOR_DUTY_GRADE("motor-duty-grade"),
    MOTOR_START("motor-start");

    private final String token;

    Limit(String token) {
        this.token = token;
    }

    @Override
    public String toString() {
        return token;
    }
}
