package org.axlewright.domain.descent;

import java.util.List;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.descent.Descent.FrictionBrakes;
import org.axlewright.domain.descent.Descent.Input;
import org.axlewright.domain.descent.Descent.Leg;
import org.axlewright.domain.descent.Descent.OfState;
import org.axlewright.domain.descent.Descent.Pack;
import org.axlewright.domain.descent.Descent.Regeneration;
import org.axlewright.domain.descent.Descent.Resistor;
import org.axlewright.domain.descent.Descent.State;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.trace.Trace;

/** Inputs that the tests of the room share. */
final class Hills {

    static final FrictionBrakes ON_THE_REAR = new FrictionBrakes(AxleSet.REAR, 0.0, null, 5.0);

    private Hills() {}

    static Leg leg(double distanceM, double fallPercent, double speedMPS, double rolling) {
        return new Leg(distanceM, Math.atan(fallPercent / 100), speedMPS, rolling, "/hill");
    }

    static State placed(double massKg) {
        return new State(massKg, new Stance(massKg, 1.67, 0.95, 0.62));
    }

    static Pack lfp(double ampereHours, Double stateOfCharge, Double celsius, Double chargeA) {
        return new Pack(Chemistry.LFP, 16, 51.2, 58.4, ampereHours * 3600, stateOfCharge, celsius, chargeA);
    }

    static Input hill(
            State state, double dragAreaM2, Regeneration regeneration, Pack pack, Resistor resistor, Leg... legs) {
        return new Input(
                state,
                null,
                List.of(legs),
                dragAreaM2,
                0,
                0.7,
                AxleSet.REAR,
                regeneration,
                pack,
                null,
                resistor,
                ON_THE_REAR,
                1,
                false);
    }

    static OfState down(Input input) {
        return Descent.of(input, Trace.withoutWorking()).occupied();
    }
}
