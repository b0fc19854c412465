package org.axlewright.api.drive;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;

import java.util.Objects;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.calculation.Rises;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Lift;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Ratio;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Tyres;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.drive.Gearing.Wheel;
import org.axlewright.domain.drive.Reduction;
import org.axlewright.domain.drive.Teeth;
import org.axlewright.domain.motor.MotorType;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.axlewright.domain.tyre.TyreRadii;
import org.axlewright.domain.tyre.TyreSize;
import org.jspecify.annotations.Nullable;

/** The driven wheel, the reduction and the pack's voltage, one reading for both questions of the room. */
final class DrivenWheel {

    /** Anything that tells how far the wheel rolls; the axle that does not drive stands in for the other. */
    static final Needs TYRE = Needs.one(
            Needs.value("/tyres/rear/size"),
            Needs.value("/tyres/rear/rollout"),
            Needs.value("/tyres/rear/diameter"),
            Needs.value("/tyres/front/size"),
            Needs.value("/tyres/front/rollout"),
            Needs.value("/tyres/front/diameter"));

    static final Needs RATIO = Needs.value("/drive/ratio");

    private DrivenWheel() {}

    static AxleSet driven(Setup setup, Resolution resolution) {
        AxleSet driven = setup.chassis() == null ? null : setup.chassis().driven();
        return driven != null
                ? driven
                : resolution.assume(
                        "rear-driven",
                        "/chassis/driven",
                        AxleSet.REAR,
                        "the rear axle drives most vehicles of this class",
                        Source.COMMON_PRACTICE);
    }

    /** Null where no tyre tells how far it rolls. */
    static @Nullable Wheel wheel(Setup setup, Resolution resolution) {
        if (!TYRE.missing(setup).isEmpty()) {
            return null;
        }
        Axle axle = driven(setup, resolution) == AxleSet.FRONT ? Axle.FRONT : Axle.REAR;
        if (!rolls(Rises.tyreNow(setup, axle))) {
            axle = axle == Axle.FRONT ? Axle.REAR : Axle.FRONT;
        }
        Tyres.Tyre now = Rises.tyreNow(setup, axle);
        if (now == null) {
            return null;
        }
        String pointer = "/tyres/" + axle;
        Double reckoned = reckonedM(now);
        boolean measured = now.rollout() != null;
        double rollout = now.rollout() != null ? now.rollout().si() : assumed(now, need(reckoned), pointer, resolution);
        Lift.AxleLift lift = Rises.sent(setup, axle);
        Tyres.Tyre before = lift == null ? null : lift.tyreBefore();
        return new Wheel(pointer, rollout, measured, beforeM(before, rollout, measured, reckoned), reckoned);
    }

    /**
     * A size marking tells how the tyre is built and so how far it rolls under load; of a bare diameter nothing more is known than its
     * circumference, from which the printed examples reckon and of which the road takes its few per cent.
     */
    private static double assumed(Tyres.Tyre tyre, double reckonedM, String pointer, Resolution resolution) {
        if (tyre.size() != null) {
            return resolution.assume(
                    "rollout",
                    pointer + "/rollout",
                    new Measure(reckonedM, CLEARANCE),
                    "distance rolled in one turn, " + TyreRadii.ROLLOUT_RADIAL
                            + " times the free diameter of a radial tyre, " + TyreRadii.ROLLOUT_BIAS
                            + " of any other",
                    TyreRadii.ROLLOUT_SOURCE);
        }
        return resolution.assume(
                "rollout-of-free-diameter",
                pointer + "/rollout",
                new Measure(TyreRadii.circumferenceM(need(Rises.diameterM(tyre))), CLEARANCE),
                "circumference of the free diameter, the most it can roll; an air-filled tyre rolls 3 to 5 % less under load: measure it",
                TyreRadii.CIRCUMFERENCE_SOURCE);
    }

    private static boolean rolls(Tyres.@Nullable Tyre tyre) {
        return tyre != null && (tyre.rollout() != null || Rises.diameterM(tyre) != null);
    }

    /** Rollouts are compared as both measured, or by the same rule. */
    private static @Nullable Double beforeM(
            Tyres.@Nullable Tyre before, double rolloutM, boolean measured, @Nullable Double reckonedM) {
        if (before == null) {
            return null;
        }
        if (measured && before.rollout() != null) {
            return before.rollout().si();
        }
        Double reckonedBefore = reckonedM(before);
        if (reckonedBefore != null && reckonedM != null) {
            return reckonedBefore * rolloutM / reckonedM;
        }
        return before.rollout() != null ? (Double) before.rollout().si() : reckonedBefore;
    }

    private static @Nullable Double reckonedM(Tyres.Tyre tyre) {
        Double diameter = Rises.diameterM(tyre);
        if (diameter == null) {
            return null;
        }
        boolean radial = tyre.size() != null && TyreSize.parse(tyre.size()).radial();
        return TyreRadii.rolloutM(diameter, radial);
    }

    static @Nullable Reduction reduction(@Nullable Ratio ratio) {
        return ratio == null
                ? null
                : new Reduction(ratio.value(), ratio.teeth() == null ? null : Teeth.parse(ratio.teeth()));
    }

    static Drive.@Nullable Motor motor(Setup setup) {
        return setup.drive() == null ? null : setup.drive().motor();
    }

    /** Whether the stated speed holds under load; taken to hold without where nothing says it. */
    static boolean loaded(Drive.Motor motor, Resolution resolution) {
        return motor.loaded() != null
                ? motor.loaded()
                : resolution.assume(
                        "speed-without-load",
                        "/drive/motor/loaded",
                        false,
                        "a motor's speed is taken to hold without load unless said: less on the road",
                        Source.COMMON_PRACTICE);
    }

    /** Whether the drive turns the motor beyond its rated speed, up to what the rotor bears. */
    static boolean weakensField(Drive.Motor motor) {
        boolean kind = motor.type() == MotorType.INDUCTION
                || motor.type() == MotorType.PERMANENT_MAGNET_AC
                || motor.type() == MotorType.SEPARATELY_EXCITED_DC;
        return kind && motor.maximumSpeed() != null && (motor.speed() == null || Boolean.TRUE.equals(motor.loaded()));
    }

    /** Null where chemistry or cells are not known. */
    static @Nullable PackVoltages voltages(Setup setup) {
        Pack pack = setup.pack();
        if (pack == null || pack.chemistry() == null) {
            return null;
        }
        Integer cells = PackSections.cellsInSeries(pack);
        return cells == null ? null : PackVoltages.of(pack.chemistry(), cells, Trace.withoutWorking());
    }

    static double need(@Nullable Double value) {
        return Objects.requireNonNull(value);
    }

    static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : quantity.si();
    }
}
