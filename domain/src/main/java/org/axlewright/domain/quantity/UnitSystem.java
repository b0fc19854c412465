package org.axlewright.domain.quantity;

/** The two sets of output units (contract R5). A dimension has one unit in each; nothing is rounded. */
public enum UnitSystem {
    METRIC,
    US;

    @Override
    public String toString() {
        return this == METRIC ? "metric" : "us";
    }

    private <U extends Unit> U pick(U metric, U us) {
        return this == METRIC ? metric : us;
    }

    /** Lengths of the vehicle, metre inside. */
    public Length length(double metres) {
        LengthUnit unit = pick(LengthUnit.METRE, LengthUnit.INCH);
        return new Length(unit.fromSi(metres), unit);
    }

    /** Clearances, tyres and small changes of height: millimetres where {@link #length} gives metres. */
    public Length clearance(double metres) {
        LengthUnit unit = pick(LengthUnit.MILLIMETRE, LengthUnit.INCH);
        return new Length(unit.fromSi(metres), unit);
    }

    public Distance distance(double metres) {
        DistanceUnit unit = pick(DistanceUnit.KILOMETRE, DistanceUnit.MILE);
        return new Distance(unit.fromSi(metres), unit);
    }

    public Mass mass(double kilograms) {
        MassUnit unit = pick(MassUnit.KILOGRAM, MassUnit.POUND);
        return new Mass(unit.fromSi(kilograms), unit);
    }

    public Load load(double newtons) {
        LoadUnit unit = pick(LoadUnit.KILOGRAM, LoadUnit.POUND);
        return new Load(unit.fromSi(newtons), unit);
    }

    public Force force(double newtons) {
        ForceUnit unit = pick(ForceUnit.NEWTON, ForceUnit.POUND_FORCE);
        return new Force(unit.fromSi(newtons), unit);
    }

    public Speed speed(double metresPerSecond) {
        SpeedUnit unit = pick(SpeedUnit.KILOMETRE_PER_HOUR, SpeedUnit.MILE_PER_HOUR);
        return new Speed(unit.fromSi(metresPerSecond), unit);
    }

    public Rotation rotation(double radiansPerSecond) {
        return new Rotation(
                RotationUnit.REVOLUTION_PER_MINUTE.fromSi(radiansPerSecond), RotationUnit.REVOLUTION_PER_MINUTE);
    }

    public Torque torque(double newtonMetres) {
        TorqueUnit unit = pick(TorqueUnit.NEWTON_METRE, TorqueUnit.POUND_FORCE_FOOT);
        return new Torque(unit.fromSi(newtonMetres), unit);
    }

    public Power power(double watts) {
        return new Power(watts, PowerUnit.WATT);
    }

    public Power shaftPower(double watts) {
        PowerUnit unit = pick(PowerUnit.WATT, PowerUnit.HORSEPOWER);
        return new Power(unit.fromSi(watts), unit);
    }

    public Energy energy(double joules) {
        return new Energy(EnergyUnit.WATT_HOUR.fromSi(joules), EnergyUnit.WATT_HOUR);
    }

    public Charge charge(double coulombs) {
        return new Charge(ChargeUnit.AMPERE_HOUR.fromSi(coulombs), ChargeUnit.AMPERE_HOUR);
    }

    public Voltage voltage(double volts) {
        return new Voltage(volts, VoltageUnit.VOLT);
    }

    public Current current(double amperes) {
        return new Current(amperes, CurrentUnit.AMPERE);
    }

    public Resistance resistance(double ohms) {
        return new Resistance(ResistanceUnit.MILLIOHM.fromSi(ohms), ResistanceUnit.MILLIOHM);
    }

    public ResistancePerLength resistancePerLength(double ohmsPerMetre) {
        ResistancePerLengthUnit unit =
                pick(ResistancePerLengthUnit.OHM_PER_KILOMETRE, ResistancePerLengthUnit.OHM_PER_KILOFOOT);
        return new ResistancePerLength(unit.fromSi(ohmsPerMetre), unit);
    }

    public Capacitance capacitance(double farads) {
        return new Capacitance(CapacitanceUnit.MICROFARAD.fromSi(farads), CapacitanceUnit.MICROFARAD);
    }

    public Inductance inductance(double henries) {
        return new Inductance(InductanceUnit.MILLIHENRY.fromSi(henries), InductanceUnit.MILLIHENRY);
    }

    public Temperature temperature(double degreesCelsius) {
        TemperatureUnit unit = pick(TemperatureUnit.DEGREE_CELSIUS, TemperatureUnit.DEGREE_FAHRENHEIT);
        return new Temperature(unit.fromSi(degreesCelsius), unit);
    }

    public TemperatureDifference temperatureDifference(double kelvin) {
        return new TemperatureDifference(kelvin, TemperatureDifferenceUnit.KELVIN);
    }

    /** Times of an hour's order: charging, driving. */
    public Time time(double seconds) {
        return new Time(TimeUnit.HOUR.fromSi(seconds), TimeUnit.HOUR);
    }

    /** Short events: pulses, peaks, stops. */
    public Time eventTime(double seconds) {
        return new Time(seconds, TimeUnit.SECOND);
    }

    /** Service life. */
    public Time lifeTime(double seconds) {
        return new Time(TimeUnit.YEAR.fromSi(seconds), TimeUnit.YEAR);
    }

    public Angle angle(double radians) {
        return new Angle(AngleUnit.DEGREE.fromSi(radians), AngleUnit.DEGREE);
    }

    /** A grade, the angle of the slope inside. */
    public Grade grade(double radians) {
        return new Grade(GradeUnit.PERCENT.fromSi(radians), GradeUnit.PERCENT);
    }

    public Acceleration acceleration(double metresPerSecondSquared) {
        AccelerationUnit unit = pick(AccelerationUnit.METRE_PER_SECOND_SQUARED, AccelerationUnit.STANDARD_GRAVITY);
        return new Acceleration(unit.fromSi(metresPerSecondSquared), unit);
    }

    /** Area of a conductor. */
    public Area area(double squareMetres) {
        return new Area(AreaUnit.SQUARE_MILLIMETRE.fromSi(squareMetres), AreaUnit.SQUARE_MILLIMETRE);
    }

    /** Area of a body in the wind. */
    public Area bodyArea(double squareMetres) {
        AreaUnit unit = pick(AreaUnit.SQUARE_METRE, AreaUnit.SQUARE_FOOT);
        return new Area(unit.fromSi(squareMetres), unit);
    }

    public VolumeFlow volumeFlow(double cubicMetresPerSecond) {
        VolumeFlowUnit unit = pick(VolumeFlowUnit.CUBIC_METRE_PER_HOUR, VolumeFlowUnit.CUBIC_FOOT_PER_MINUTE);
        return new VolumeFlow(unit.fromSi(cubicMetresPerSecond), unit);
    }

    public Pressure pressure(double pascals) {
        PressureUnit unit = pick(PressureUnit.KILOPASCAL, PressureUnit.POUND_PER_SQUARE_INCH);
        return new Pressure(unit.fromSi(pascals), unit);
    }

    public Stress stress(double pascals) {
        StressUnit unit = pick(StressUnit.MEGAPASCAL, StressUnit.POUND_PER_SQUARE_INCH);
        return new Stress(unit.fromSi(pascals), unit);
    }

    public SpringRate springRate(double newtonsPerMetre) {
        SpringRateUnit unit = pick(SpringRateUnit.NEWTON_PER_MILLIMETRE, SpringRateUnit.POUND_FORCE_PER_INCH);
        return new SpringRate(unit.fromSi(newtonsPerMetre), unit);
    }

    public RollGradient rollGradient(double si) {
        return new RollGradient(RollGradientUnit.DEGREE_PER_G.fromSi(si), RollGradientUnit.DEGREE_PER_G);
    }

    public Frequency frequency(double hertz) {
        return new Frequency(hertz, FrequencyUnit.HERTZ);
    }

    public Consumption consumption(double joulesPerMetre) {
        ConsumptionUnit unit = pick(ConsumptionUnit.WATT_HOUR_PER_KILOMETRE, ConsumptionUnit.WATT_HOUR_PER_MILE);
        return new Consumption(unit.fromSi(joulesPerMetre), unit);
    }
}
