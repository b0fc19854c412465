package org.axlewright.domain.quantity;

/** A value and its unit, exactly as sent or shown. Calculations take {@link #si()} and never see units. */
public sealed interface Quantity
        permits Length,
                Distance,
                Mass,
                Load,
                Force,
                Speed,
                Rotation,
                Torque,
                Power,
                Energy,
                Charge,
                Voltage,
                Current,
                Resistance,
                ResistancePerLength,
                Capacitance,
                Inductance,
                TemperatureDifference,
                Time,
                Angle,
                Acceleration,
                Area,
                VolumeFlow,
                Pressure,
                Stress,
                SpringRate,
                RollGradient,
                Frequency,
                Consumption,
                Temperature,
                Grade {

    double value();

    Unit unit();

    /** The value in the coherent SI unit of the dimension. */
    default double si() {
        return unit().toSi(value());
    }
}
