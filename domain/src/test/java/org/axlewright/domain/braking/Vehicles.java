package org.axlewright.domain.braking;

import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.braking.Braking.Input;
import org.axlewright.domain.braking.Braking.State;
import org.axlewright.domain.trace.Trace;

/** Inputs that the tests of the room share. */
final class Vehicles {

    static final WheelBrakes UNKNOWN = new WheelBrakes(null, null, null, null);

    private Vehicles() {}

    static WheelBrakes brakes(double forceN) {
        return new WheelBrakes(forceN, null, null, null);
    }

    /** The vehicle of the reference arithmetic: wheelbase 1.67 m, centre of gravity 0.95 m behind the front axle and 0.62 m high. */
    static Stance runabout(double massKg) {
        return new Stance(massKg, 1.67, 0.95, 0.62);
    }

    static Input stop(
            State state,
            AxleSet braked,
            WheelBrakes front,
            WheelBrakes rear,
            Double friction,
            Double gradeRad,
            Double v) {
        return new Input(
                state,
                null,
                null,
                braked,
                front,
                rear,
                null,
                0,
                friction,
                friction != null,
                gradeRad,
                false,
                v,
                1,
                null,
                null,
                null,
                null);
    }

    static Stop level(Input input) {
        return Braking.of(input, Trace.withoutWorking()).occupied().level();
    }

    static Stop grade(Input input) {
        return Braking.of(input, Trace.withoutWorking()).occupied().grade();
    }
}
