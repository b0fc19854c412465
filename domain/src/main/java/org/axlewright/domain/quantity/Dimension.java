package org.axlewright.domain.quantity;

import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * What a number inside a finding, an assumption or a step is a value of: names the coherent SI unit and the way to show it in a
 * {@link UnitSystem}. {@link #NONE} is a share, a count or a ratio and stays a plain number.
 */
public enum Dimension {
    NONE("1", null),
    LENGTH("m", UnitSystem::length),
    CLEARANCE("m", UnitSystem::clearance),
    DISTANCE("m", UnitSystem::distance),
    MASS("kg", UnitSystem::mass),
    LOAD("N", UnitSystem::load),
    FORCE("N", UnitSystem::force),
    SPEED("m/s", UnitSystem::speed),
    ROTATION("rad/s", UnitSystem::rotation),
    TORQUE("N m", UnitSystem::torque),
    POWER("W", UnitSystem::power),
    SHAFT_POWER("W", UnitSystem::shaftPower),
    ENERGY("J", UnitSystem::energy),
    CHARGE("C", UnitSystem::charge),
    VOLTAGE("V", UnitSystem::voltage),
    CURRENT("A", UnitSystem::current),
    RESISTANCE("ohm", UnitSystem::resistance),
    RESISTANCE_PER_LENGTH("ohm/m", UnitSystem::resistancePerLength),
    CAPACITANCE("F", UnitSystem::capacitance),
    INDUCTANCE("H", UnitSystem::inductance),
    TEMPERATURE("degC", UnitSystem::temperature),
    TEMPERATURE_DIFFERENCE("K", UnitSystem::temperatureDifference),
    TIME("s", UnitSystem::time),
    EVENT_TIME("s", UnitSystem::eventTime),
    LIFE_TIME("s", UnitSystem::lifeTime),
    ANGLE("rad", UnitSystem::angle),
    GRADE("rad", UnitSystem::grade),
    ACCELERATION("m/s2", UnitSystem::acceleration),
    AREA("m2", UnitSystem::area),
    BODY_AREA("m2", UnitSystem::bodyArea),
    VOLUME_FLOW("m3/s", UnitSystem::volumeFlow),
    PRESSURE("Pa", UnitSystem::pressure),
    STRESS("Pa", UnitSystem::stress),
    SPRING_RATE("N/m", UnitSystem::springRate),
    ROLL_GRADIENT("rad s2/m", UnitSystem::rollGradient),
    FREQUENCY("Hz", UnitSystem::frequency),
    CONSUMPTION("J/m", UnitSystem::consumption),
    /** Of a section, in working only: answers carry no unit for it. */
    SECTION_MODULUS("m3", null),
    /** Of a section, in working only: answers carry no unit for it. */
    SECOND_MOMENT_OF_AREA("m4", null);

    private final String siUnit;

    @SuppressWarnings("ImmutableEnumChecker") // a method reference, without state
    private final @Nullable BiFunction<UnitSystem, Double, Quantity> shown;

    Dimension(String siUnit, @Nullable BiFunction<UnitSystem, Double, Quantity> shown) {
        this.siUnit = siUnit;
        this.shown = shown;
    }

    /** The unit in which working is written. */
    public String siUnit() {
        return siUnit;
    }

    /** A {@link Quantity} in the units of the system, or a plain {@link Double} for {@link #NONE}. */
    public Object show(double si, UnitSystem system) {
        return shown == null ? (Object) si : shown.apply(system, si);
    }
}
