package org.axlewright.api.calculation;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;

import java.util.Objects;
import org.axlewright.api.section.Lift;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Tyres;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleLift;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.lift.LiftKind;
import org.axlewright.domain.lift.MeasuredAt;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.tyre.TyreRadii;
import org.axlewright.domain.tyre.TyreSize;
import org.jspecify.annotations.Nullable;

/** What {@code lift} and the change of {@code tyres} did to the heights of the vehicle: one reading for every question. */
public final class Rises {

    private static final Source MOTION_RATIO = Source.derived(
            "block between axle and spring: one to one; shackle: the axle sits midway between the fixed eye and the shackle");

    private static final Source SAME_DEFLECTION =
            Source.derived("same deflection under the same load: half the change of diameter");

    private Rises() {}

    /** What was done to each axle; what is missing or makes no sense is noted as a fault. */
    public static Rise resolve(Setup setup, Resolution resolution) {
        return new Rise(axle(setup, Axle.FRONT, resolution), axle(setup, Axle.REAR, resolution));
    }

    /**
     * Loaded radii of an axle whether its tyre changed or not; null when nothing says how large the tyre is.
     *
     * @param lift what {@link #resolve} made of the axle
     */
    public static @Nullable LoadedRadii radii(AxleLift lift, Setup setup, Axle axle, Resolution resolution) {
        if (lift.radii() != null) {
            return lift.radii();
        }
        Tyres.Tyre now = tyreNow(setup, axle);
        Double diameter = diameterM(now);
        if (now == null || (now.loadedRadius() == null && diameter == null)) {
            return null;
        }
        double radius = now.loadedRadius() != null
                ? now.loadedRadius().si()
                : loaded(need(diameter), pointer(axle), resolution);
        return new LoadedRadii(radius, radius);
    }

    /** What was sent about the lift of an axle. */
    public static Lift.@Nullable AxleLift sent(Setup setup, Axle axle) {
        Lift lift = setup.lift();
        return lift == null ? null : axle == Axle.FRONT ? lift.front() : lift.rear();
    }

    /** The tyre on an axle now. */
    public static Tyres.@Nullable Tyre tyreNow(Setup setup, Axle axle) {
        Tyres tyres = setup.tyres();
        return tyres == null ? null : axle == Axle.FRONT ? tyres.front() : tyres.rear();
    }

    /** Free diameter, measured or from the size, m. */
    public static @Nullable Double diameterM(Tyres.@Nullable Tyre tyre) {
        if (tyre == null) {
            return null;
        }
        if (tyre.diameter() != null) {
            return tyre.diameter().si();
        }
        return tyre.size() == null ? null : (Double) TyreSize.parse(tyre.size()).diameterM();
    }

    private static String pointer(Axle axle) {
        return "/tyres/" + axle;
    }

    private static AxleLift axle(Setup setup, Axle axle, Resolution resolution) {
        Lift.AxleLift sent = sent(setup, axle);
        if (sent == null) {
            return AxleLift.none(null);
        }
        String pointer = "/lift/" + axle;
        LoadedRadii radii = sent.tyreBefore() == null
                ? null
                : changed(sent.tyreBefore(), tyreNow(setup, axle), pointer + "/tyreBefore", pointer(axle), resolution);
        Quantity amount = sent.amount();
        if (amount == null) {
            if (sent.kind() != null || sent.measuredAt() != null || sent.motionRatio() != null) {
                resolution.missing(pointer + "/amount");
            }
            return AxleLift.none(radii);
        }
        Double motionRatio = motionRatio(sent, pointer, resolution);
        if (motionRatio == null) {
            return AxleLift.none(radii);
        }
        double sprungShare = sent.sprungShare() != null
                ? sent.sprungShare()
                : resolution.assume(
                        "all-sprung",
                        pointer + "/sprungShare",
                        Measure.number(1),
                        "all of the axle's load is taken to ride on its springs: the highest the centre of gravity can rise",
                        Source.derived("upper bound"));
        return new AxleLift(amount.si(), motionRatio, sent.kind() == LiftKind.BODY, sprungShare, radii);
    }

    /** Travel where the amount was measured for travel of the wheel; null when a fault was noted. */
    private static @Nullable Double motionRatio(Lift.AxleLift sent, String pointer, Resolution resolution) {
        LiftKind kind = sent.kind();
        MeasuredAt measuredAt = sent.measuredAt();
        if (measuredAt == null) {
            measuredAt = resolution.assume(
                    "measured-at-wheel",
                    pointer + "/measuredAt",
                    MeasuredAt.WHEEL,
                    "kits are sold by the rise they give over the wheel",
                    Source.COMMON_PRACTICE);
        }
        if (kind == null && measuredAt == MeasuredAt.WHEEL) {
            kind = resolution.assume(
                    "suspension-lift",
                    pointer + "/kind",
                    LiftKind.SPACER,
                    "a lift of no said kind is taken to raise the frame on its springs",
                    Source.COMMON_PRACTICE);
        }
        if (measuredAt == MeasuredAt.WHEEL) {
            return 1.0;
        }
        if (kind == null) {
            resolution.missing(pointer + "/kind");
            return null;
        }
        if (sent.motionRatio() != null) {
            return sent.motionRatio();
        }
        String at = pointer + "/motionRatio";
        return switch (kind) {
            case BLOCK ->
                resolution.assume(
                        "block-motion-ratio", at, Measure.number(1), "a block moves with the axle", MOTION_RATIO);
            case SHACKLE ->
                resolution.assume(
                        "shackle-motion-ratio",
                        at,
                        Measure.number(2),
                        "a shackle moves twice as far as the axle",
                        MOTION_RATIO);
            default -> {
                resolution.missing(at);
                yield null;
            }
        };
    }

    /** Loaded radii before and after a change of tyre, as far as they were measured; null when a fault was noted. */
    private static @Nullable LoadedRadii changed(
            Tyres.Tyre before,
            Tyres.@Nullable Tyre now,
            String beforePointer,
            String nowPointer,
            Resolution resolution) {
        Double diameterBefore = diameterM(before);
        Double diameterNow = diameterM(now);
        Double radiusBefore =
                before.loadedRadius() == null ? null : before.loadedRadius().si();
        Double radiusNow = now == null || now.loadedRadius() == null
                ? null
                : now.loadedRadius().si();
        boolean lacking = false;
        if (diameterBefore == null && radiusBefore == null) {
            resolution.missing(beforePointer + "/size");
            lacking = true;
        }
        if (diameterNow == null && radiusNow == null) {
            resolution.missing(nowPointer + "/size");
            lacking = true;
        }
        if (lacking) {
            return null;
        }
        if (radiusBefore == null && radiusNow == null) {
            radiusBefore = loaded(need(diameterBefore), beforePointer, resolution);
        }
        if (radiusNow == null) {
            radiusNow = diameterBefore != null
                    ? sameDeflection(
                            need(radiusBefore) + (need(diameterNow) - diameterBefore) / 2, nowPointer, resolution)
                    : (Double) loaded(need(diameterNow), nowPointer, resolution);
        }
        if (radiusNow != null && radiusBefore == null) {
            radiusBefore = diameterNow != null
                    ? sameDeflection(radiusNow + (need(diameterBefore) - diameterNow) / 2, beforePointer, resolution)
                    : (Double) loaded(need(diameterBefore), beforePointer, resolution);
        }
        return radiusBefore == null || radiusNow == null ? null : new LoadedRadii(radiusBefore, radiusNow);
    }

    private static double loaded(double diameterM, String tyre, Resolution resolution) {
        return resolution.assume(
                "loaded-radius",
                tyre + "/loadedRadius",
                new Measure(TyreRadii.loadedM(diameterM), CLEARANCE),
                "0.96 of half the free diameter",
                TyreRadii.LOADED_SOURCE);
    }

    /** Null, and a fault, when so much smaller a tyre can't deflect as the other does. */
    private static @Nullable Double sameDeflection(double radiusM, String tyre, Resolution resolution) {
        if (!(radiusM > 0)) {
            resolution.missing(tyre + "/loadedRadius");
            return null;
        }
        return resolution.assume(
                "same-deflection",
                tyre + "/loadedRadius",
                new Measure(radiusM, CLEARANCE),
                "both tyres are taken to deflect alike, so that half the change of diameter is the change of loaded radius",
                SAME_DEFLECTION);
    }

    private static double need(@Nullable Double value) {
        return Objects.requireNonNull(value);
    }
}
