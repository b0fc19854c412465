package org.axlewright.domain.frame;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.notNegative;
import static org.axlewright.domain.check.Check.positive;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What the rails of a frame bear: a box hung behind them, a stretch between the axles, one wheel lifted; and what holds the box. */
public final class FrameOverhang {

    private FrameOverhang() {}

    /**
     * The frame and what it carries; null what is not known.
     *
     * @param rails at least one for anything but the hold-down
     * @param elasticModulusPa Young's modulus E; shear modulus is E/2.6
     * @param verticalFactor multiple of the weight, both wheels over a bump
     * @param torsionFactor multiple of the weight, one wheel over a bump
     * @param safetyFactor asked of the yield strength
     * @param gravity acceleration of free fall, m/s²; {@link Constants#STANDARD_GRAVITY} but for textbook cases
     */
    public record Input(
            List<Rail> rails,
            double elasticModulusPa,
            double verticalFactor,
            double torsionFactor,
            double safetyFactor,
            @Nullable Box box,
            @Nullable Stretch stretch,
            @Nullable LiftedWheel liftedWheel,
            double gravity) {

        public Input {
            rails = List.copyOf(rails);
            positive(elasticModulusPa, "elasticModulusPa");
            positive(verticalFactor, "verticalFactor");
            positive(torsionFactor, "torsionFactor");
            positive(safetyFactor, "safetyFactor");
            positive(gravity, "gravity");
        }

        /** Shear modulus with Poisson's ratio 0.3, Pa. */
        double shearModulusPa() {
            return elasticModulusPa / 2.6;
        }
    }

    /**
     * A box hung behind the last crossmember.
     *
     * @param armM its centre behind the last crossmember, m; null when only its hold-down is asked for
     * @param yM its centre to the right of the centre plane, m
     * @param backSpanM distance to the support ahead of the last crossmember, m; 0 is built in
     * @param ties where it sits on the rails, none to two; none is a load at its centre
     */
    public record Box(
            double massKg,
            @Nullable Double armM,
            double yM,
            double backSpanM,
            List<Tie> ties,
            @Nullable Prop prop) {
        public Box {
            positive(massKg, "massKg");
            if (armM != null) {
                notNegative(armM, "armM");
            }
            finite(yM, "yM");
            notNegative(backSpanM, "backSpanM");
            ties = List.copyOf(ties);
        }
    }

    /**
     * A place where the box is tied to every rail.
     *
     * @param xM behind the last crossmember, m
     * @param weld what holds it to each rail; null when not known
     */
    public record Tie(
            String pointer,
            @Nullable String name,
            double xM,
            @Nullable Weld weld) {
        public Tie {
            notNegative(xM, "xM");
        }
    }

    /** Fillet weld: throat and whole length, m. */
    public record Weld(double throatM, double lengthM) {
        public Weld {
            positive(throatM, "throatM");
            positive(lengthM, "lengthM");
        }
    }

    /**
     * A tube under every rail, pinned at both ends.
     *
     * @param xM where it meets the rail, behind the last crossmember, m
     * @param footXM its foot, behind the last crossmember, m; negative ahead of it
     * @param dropM how far the foot lies below the rail, m; negative above it; not 0
     * @param tube its section; null is a prop that does not give
     * @param yieldPa null when not known
     */
    public record Prop(
            double xM,
            double footXM,
            double dropM,
            @Nullable Tube tube,
            @Nullable Double yieldPa) {
        public Prop {
            positive(xM, "xM");
            finite(footXM, "footXM");
            positive(Math.abs(dropM), "dropM");
        }

        double lengthM() {
            return Math.hypot(xM - footXM, dropM);
        }

        double sine() {
            return dropM / lengthM();
        }

        double cosine() {
            return (xM - footXM) / lengthM();
        }
    }

    /**
     * A wheelbase made longer.
     *
     * @param wheelbaseBeforeM before, m
     * @param addedM the insert, m
     * @param cutXM where the frame was cut, behind the front axle, m, within the former wheelbase
     * @param spread mass spread evenly between the axles after; null is none
     * @param points masses at places behind the front axle
     * @param turningRadiusM of the outer front wheel before, m, above the wheelbase; null when not known
     * @param steeringRad steering angle of that wheel, where its radius was not measured, rad; null when not known
     * @param crest what a ramp's crest meets; null when not known
     */
    public record Stretch(
            double wheelbaseBeforeM,
            double addedM,
            double cutXM,
            @Nullable Spread spread,
            List<PlacedMass> points,
            @Nullable Double turningRadiusM,
            @Nullable Double steeringRad,
            @Nullable Crest crest) {
        public Stretch {
            positive(wheelbaseBeforeM, "wheelbaseBeforeM");
            positive(wheelbaseBeforeM + addedM, "wheelbase after");
            notNegative(cutXM, "cutXM");
            points = List.copyOf(points);
        }

        double wheelbaseAfterM() {
            return wheelbaseBeforeM + addedM;
        }
    }

    /** A mass spread evenly over the wheelbase, its centre {@code yM} to the right. */
    public record Spread(double massKg, double yM) {}

    /** A mass at a place: behind the front axle and to the right, m. */
    public record PlacedMass(@Nullable String name, double massKg, double xM, double yM) {}

    /**
     * The underside as it stands now.
     *
     * @param clearanceM at mid-wheelbase, m
     * @param frontRadiusM loaded radius, m; null when not known
     * @param rearRadiusM loaded radius, m; null when not known
     */
    public record Crest(
            double clearanceM,
            @Nullable Double frontRadiusM,
            @Nullable Double rearRadiusM) {}

    /**
     * One wheel of the lighter axle over a bump, the other in the air.
     *
     * @param axle front or rear
     * @param loadN load on that axle, N
     * @param trackM its track, m
     * @param lengthM length that twists: the wheelbase as it is, m
     */
    public record LiftedWheel(String axle, double loadN, double trackM, double lengthM) {
        public LiftedWheel {
            notNegative(loadN, "loadN");
            positive(trackM, "trackM");
            positive(lengthM, "lengthM");
        }
    }

    /**
     * The answer; null what can't be given.
     *
     * @param worst rail and case with the least left of its strength, by stress where a yield strength lacks
     * @param holdDown what the box must be held with
     */
    public record Result(
            @Nullable Worst worst,
            @Nullable Overhang overhang,
            @Nullable Stretched stretch,
            @Nullable Twist torsion,
            List<HoldDown> holdDown) {}

    /** The rail and case to look at first. */
    public record Worst(Rail rail, String in, Strength strength) {}

    /**
     * Stress against strength.
     *
     * @param equivalentPa von Mises
     * @param safetyFactor yield strength over it; null without a yield strength, or without a stress
     * @param utilisation stress times the safety factor asked for, over the yield strength; null without a yield strength
     */
    public record Strength(
            double equivalentPa,
            @Nullable Double safetyFactor,
            @Nullable Double utilisation) {}

    /** The hung box: moment and shear of all rails together at the last crossmember, with the dynamic factor. */
    public record Overhang(double momentNm, double shearN, List<OverhangRail> rails) {}

    /**
     * One rail under the hung box.
     *
     * @param momentNm largest by its size
     * @param momentAtM where, behind the last crossmember, m
     * @param axialPa from the prop, tension positive
     * @param torqueNm of a box beside a single rail
     * @param deflectionM at the rearmost place where it is loaded
     */
    public record OverhangRail(
            Rail rail,
            double share,
            double momentNm,
            double momentAtM,
            double shearN,
            double bendingPa,
            double axialPa,
            double averageShearPa,
            double peakShearPa,
            @Nullable Double torqueNm,
            @Nullable Double torsionPa,
            @Nullable Double twistRad,
            double deflectionM,
            Strength strength,
            List<TieForce> ties,
            @Nullable PropForce prop) {}

    /**
     * What a tie passes to one rail.
     *
     * @param downN down positive
     * @param throatPa null without a weld, or where a single tie also holds a moment
     * @param allowablePa null without the steel
     */
    public record TieForce(
            Tie tie,
            double downN,
            @Nullable Double throatPa,
            @Nullable Double allowablePa,
            @Nullable Double utilisation) {}

    /**
     * What the prop under one rail carries.
     *
     * @param forceN pressed positive, pulled negative
     * @param axialPa its size; null without a section
     * @param bucklingN at which it buckles; null without a section
     * @param utilisation force with the safety factor over what it bears; null without section and yield strength
     */
    public record PropForce(
            double forceN,
            @Nullable Double axialPa,
            @Nullable Double bucklingN,
            @Nullable Double utilisation) {}

    /** Before and after. */
    public record Change(double before, double after) {}

    /**
     * What the stretch did.
     *
     * @param uniformFactor deflection now over before, the same load per length
     * @param pointFactor deflection now over before, the same load at the same share of the span
     * @param turningRadiusM of the outer front wheel at the same steering angle
     * @param offTrackingM how much the rear wheel cuts in
     * @param breakoverRad by the tangent to both tyres; null where a radius is not known
     * @param breakoverSimpleRad from under the wheel centres
     * @param rails none where no load was told
     */
    public record Stretched(
            Change wheelbaseM,
            double uniformFactor,
            double pointFactor,
            @Nullable Change turningRadiusM,
            @Nullable Change offTrackingM,
            @Nullable Change breakoverRad,
            @Nullable Change breakoverSimpleRad,
            List<StretchRail> rails) {}

    /**
     * One rail between the axles.
     *
     * @param momentAtM where the moment is largest, behind the front axle, m
     * @param jointMomentNm the larger of the moments at the two joints of the insert
     */
    public record StretchRail(
            Rail rail,
            double loadN,
            double momentNm,
            double momentAtM,
            double momentBeforeNm,
            double jointMomentNm,
            double shearN,
            double bendingPa,
            double jointBendingPa,
            double averageShearPa,
            double peakShearPa,
            double deflectionM,
            double deflectionBeforeM,
            Strength strength) {}

    /** One wheel lifted: the couple on the frame, and how far it twists between the axles. */
    public record Twist(String axle, double torqueNm, double lengthM, double twistRad, List<TwistRail> rails) {}

    /** One rail of the twisted frame. */
    public record TwistRail(Rail rail, double torqueNm, double shearPa, double twistRad, Strength strength) {}

    /** What the box must be held with in one case. */
    public record HoldDown(String in, double factor, double forceN, String source) {}

    /** Works out the whole room. Pure. */
    public static Result of(Input input, Trace trace) {
        List<Trace> traces = input.rails().stream()
                .map(rail -> trace.of("rail " + rail.name()))
                .toList();
        for (int i = 0; i < traces.size(); i++) {
            input.rails().get(i).tube().note(traces.get(i));
        }
        Box box = input.box();
        Stretch stretch = input.stretch();
        LiftedWheel lifted = input.liftedWheel();
        boolean rails = !input.rails().isEmpty();
        Overhang overhang =
                rails && box != null && box.armM() != null ? HungBox.of(input, box, box.armM(), trace, traces) : null;
        Stretched stretched = stretch == null ? null : LongerWheelbase.of(input, stretch, trace, traces);
        Twist twist = rails && lifted != null ? FrameTwist.of(input, lifted, trace, traces) : null;
        List<HoldDown> holdDown = box == null ? List.of() : HoldDowns.of(input, box, trace);
        Result result = new Result(worst(overhang, stretched, twist), overhang, stretched, twist, holdDown);
        FrameFindings.find(input, result, trace);
        return result;
    }

    private static @Nullable Worst worst(
            @Nullable Overhang overhang, @Nullable Stretched stretched, @Nullable Twist twist) {
        List<Worst> all = new ArrayList<>();
        if (overhang != null) {
            overhang.rails().forEach(rail -> all.add(new Worst(rail.rail(), "overhang", rail.strength())));
        }
        if (stretched != null) {
            stretched.rails().forEach(rail -> all.add(new Worst(rail.rail(), "stretch", rail.strength())));
        }
        if (twist != null) {
            twist.rails().forEach(rail -> all.add(new Worst(rail.rail(), "torsion", rail.strength())));
        }
        Stream<Worst> known =
                all.stream().anyMatch(one -> one.strength().utilisation() == null) ? Stream.empty() : all.stream();
        return known.max(Comparator.comparingDouble(one -> utilisation(one.strength())))
                .orElseGet(() -> all.stream()
                        .max(Comparator.comparingDouble(one -> one.strength().equivalentPa()))
                        .orElse(null));
    }

    private static double utilisation(Strength strength) {
        return strength.utilisation() == null ? 0 : strength.utilisation();
    }
}
