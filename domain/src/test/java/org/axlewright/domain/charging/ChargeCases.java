package org.axlewright.domain.charging;

import org.axlewright.domain.cable.Conductor;
import org.axlewright.domain.cable.ConductorSize;
import org.axlewright.domain.cable.SizeSeries;
import org.axlewright.domain.charging.ChargeTime.Input;
import org.axlewright.domain.charging.ChargeTime.PackOnCharge;
import org.axlewright.domain.charging.ChargeTime.Plate;
import org.axlewright.domain.charging.ChargeTime.Window;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.ChargeUnit;
import org.axlewright.domain.quantity.TimeUnit;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;

/** Short ways to write the inputs of the tests. */
final class ChargeCases {

    private ChargeCases() {}

    static PackOnCharge pack(Chemistry chemistry, double capacityAh, Integer cells) {
        return new PackOnCharge(chemistry, ChargeUnit.AMPERE_HOUR.toSi(capacityAh), 1, cells, null, 25);
    }

    static Plate current(double currentA) {
        return new Plate(ChargerType.SWITCH_MODE, currentA, null, 0.92, 0.98, null);
    }

    static Window window(Chemistry chemistry, double from, double to) {
        ChargeProfile profile = ChargeProfile.of(chemistry);
        return new Window(
                from,
                to,
                profile.chargeFactor().value(),
                profile.constantVoltageTimeS().value());
    }

    static Mains outlet(Outlet outlet) {
        OutletRating rating = OutletRating.of(outlet);
        return new Mains(rating, rating.nominalVoltageV().value(), null, null, 0, null);
    }

    static Input input(Chemistry chemistry, double capacityAh, Integer cells, double from, double to, double currentA) {
        return new Input(
                pack(chemistry, capacityAh, cells), current(currentA), window(chemistry, from, to), null, null, null);
    }

    /** A cord of any resistance. */
    static Cord cord(double resistanceOhmPerM, double lengthM, double ampacityA) {
        Source made = Source.derived("made for the test");
        ConductorSize size = new ConductorSize(SizeSeries.AWG, "14");
        return new Cord(
                new Conductor(size, 2e-6, resistanceOhmPerM, 20, made), 20, lengthM, new Datum(ampacityA, made), false);
    }

    static double hours(double seconds) {
        return TimeUnit.HOUR.fromSi(seconds);
    }
}
