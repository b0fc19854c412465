package org.axlewright.domain.frame;

import static org.axlewright.domain.quantity.Dimension.ANGLE;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.FORCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.STRESS;

import org.axlewright.domain.axles.Underside;
import org.axlewright.domain.frame.FrameOverhang.Box;
import org.axlewright.domain.frame.FrameOverhang.Input;
import org.axlewright.domain.frame.FrameOverhang.OverhangRail;
import org.axlewright.domain.frame.FrameOverhang.Prop;
import org.axlewright.domain.frame.FrameOverhang.PropForce;
import org.axlewright.domain.frame.FrameOverhang.Result;
import org.axlewright.domain.frame.FrameOverhang.Strength;
import org.axlewright.domain.frame.FrameOverhang.StretchRail;
import org.axlewright.domain.frame.FrameOverhang.Stretched;
import org.axlewright.domain.frame.FrameOverhang.TieForce;
import org.axlewright.domain.frame.FrameOverhang.TwistRail;
import org.axlewright.domain.frame.FrameOverhang.Weld;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;

/** What a foreman would say of these rails, welds and this box. */
final class FrameFindings {

    private static final Source YIELD =
            Source.derived("von Mises stress against the least yield strength of the steel");
    private static final Source MARGIN = Source.memory(
            "1.5 on yield with the dynamic factor, 2 to 3 on the static load alone; welds and fatigue need more");
    private static final Source FACTORS =
            Source.published("open automotive textbook, ch. 9: vertical 2 to 3, higher off road");
    private static final Source WELDS = Source.published("EN 1993-1-8 cl. 4.5.3.3, simplified method, and cl. 4.5.1");
    private static final Source SLENDER =
            Source.memory("EN 1993-1-1 table 5.2, class 3: flat wall 42·ε, round tube 90·ε², ε² = 235 MPa/f_y");
    private static final Source FISH_PLATES =
            Source.weak("truck and four-wheel-drive conversion rules: plates of the same wall, 150 mm past each cut");
    private static final Source TURNING = Source.derived("R = L/sin δ at the same steering angle");

    /** Least effective length of a fillet weld that carries load, m, and as a multiple of its throat: EN 1993-1-8 cl. 4.5.1. */
    private static final double SHORTEST_WELD_M = 0.030;

    private static final double SHORTEST_WELD_THROATS = 6;

    private static final double LOWEST_FACTOR = 2;

    /** Plates over a joint reach so far past each cut, m. */
    private static final double PLATE_M = 0.150;

    private static final Caution ENGINEER = new Caution(
            "engineer-and-welder",
            "A beam sum approves nothing. A licensed engineer must check a cut, stretched or extended frame, and a qualified welder must"
                    + " weld it.");
    private static final Caution HEAT = new Caution(
            "heat-affected-zone",
            "Beside a weld, cold-formed, heat-treated or galvanised tube is weaker and more brittle than the table says, aluminium by about half."
                    + " Keep welds out of the places of largest moment, and never weld straight across a rail.");
    private static final Caution PACK = new Caution(
            "welding-near-packs",
            "Disconnect and take out the pack before welding or grinding: hydrogen over flooded cells explodes, stray current and heat ruin"
                    + " lithium cells and electronics. Earth the welder at the joint.");
    private static final Caution CORROSION = new Caution(
            "corroded-metal",
            "Acid and rust eat racks and rails from inside. Measure the wall that is left, and cut back to sound metal: a patch on thin rust"
                    + " holds nothing. Seal tube after welding.");
    private static final Caution RECALLS = new Caution(
            "recall-check",
            "Factory seat frames, knuckles and arms have failed without any added load. Look the vehicle up in the recall list before"
                    + " adding mass, height or length.");

    private FrameFindings() {}

    static void find(Input input, Result result, Trace trace) {
        trace.caution(ENGINEER);
        trace.caution(HEAT);
        trace.caution(PACK);
        trace.caution(CORROSION);
        trace.caution(RECALLS);
        if (result.overhang() != null
                || (result.stretch() != null && !result.stretch().rails().isEmpty())) {
            if (input.verticalFactor() < LOWEST_FACTOR) {
                trace.find(Finding.of(
                                "factor-below-published",
                                Level.WARNING,
                                "The vertical load factor of {actual} is below the published span, which starts at {limit}: bumps load a"
                                        + " frame more than its weight at rest does",
                                FACTORS)
                        .at("/frame")
                        .actual(Measure.number(input.verticalFactor()))
                        .limit(Measure.number(LOWEST_FACTOR))
                        .action("Ask again with loadCase rough, or with a factor measured on this ground"));
            }
        }
        if (result.overhang() != null) {
            for (OverhangRail rail : result.overhang().rails()) {
                overhang(rail, input, trace);
            }
        }
        Stretched stretch = result.stretch();
        if (stretch != null) {
            stretched(stretch, trace);
            for (StretchRail rail : stretch.rails()) {
                strength(rail.rail(), rail.strength(), "between the axles", input, trace);
            }
        }
        if (result.torsion() != null) {
            for (TwistRail rail : result.torsion().rails()) {
                strength(rail.rail(), rail.strength(), "with one wheel lifted", input, trace);
            }
        }
        input.rails().forEach(rail -> slender(rail, trace));
        Box box = input.box();
        if (box != null && box.ties().size() == 1) {
            trace.find(Finding.of(
                            "single-tie",
                            Level.WARNING,
                            "One row of ties holds the box up and keeps it from turning; the throat of a single weld says nothing about that"
                                    + " moment",
                            Source.derived("statics"))
                    .at("/frame/box/ties")
                    .action("Tie the box to each rail in two places"));
        }
    }

    private static void overhang(OverhangRail rail, Input input, Trace trace) {
        strength(rail.rail(), rail.strength(), "behind the last crossmember", input, trace);
        if (rail.share() < 0) {
            trace.find(Finding.of(
                            "rail-lifted",
                            Level.WARNING,
                            "The box hangs outside the rails: it pulls rail "
                                    + rail.rail().name()
                                    + " up with a share of {actual}, and loads the other with more than its whole weight",
                            Source.derived("moments about the rails"))
                    .at("/frame/box/y")
                    .actual(Measure.number(rail.share()))
                    .limit(Measure.number(0))
                    .action("Bring the box between the rails"));
        }
        for (TieForce tie : rail.ties()) {
            tie(tie, rail.rail(), trace);
        }
        Box box = input.box();
        Prop prop = box == null ? null : box.prop();
        PropForce force = rail.prop();
        if (prop != null && force != null) {
            prop(prop, force, rail.rail(), input, trace);
        }
    }

    private static void strength(Rail rail, Strength strength, String where, Input input, Trace trace) {
        Double yield = rail.yieldPa();
        Double safety = strength.safetyFactor();
        if (yield == null || safety == null) {
            return;
        }
        if (strength.equivalentPa() > yield) {
            trace.find(Finding.of(
                            "over-yield",
                            Level.DANGER,
                            "Rail " + rail.name() + " bends for good " + where
                                    + ": the stress of {actual} is above its yield strength of {limit}",
                            YIELD)
                    .at(rail.pointer())
                    .actual(new Measure(strength.equivalentPa(), STRESS))
                    .limit(new Measure(yield, STRESS))
                    .action("Shorten the arm, lighten the box, take a deeper rail or prop it; an engineer decides"));
        } else if (safety < input.safetyFactor()) {
            trace.find(Finding.of(
                            "little-margin",
                            Level.WARNING,
                            "Rail " + rail.name() + " " + where
                                    + " has a safety factor of {actual} on yield; {limit} is asked for, and welds and fatigue need more",
                            MARGIN)
                    .at(rail.pointer())
                    .actual(Measure.number(safety))
                    .limit(Measure.number(input.safetyFactor()))
                    .action("Shorten the arm, lighten the box, take a deeper rail or prop it"));
        }
    }

    private static void slender(Rail rail, Trace trace) {
        double epsilonSquared = 235e6 / (rail.yieldPa() == null ? 235e6 : rail.yieldPa());
        boolean round = rail.tube().shape() == TubeShape.ROUND;
        double limit = round ? 90 * epsilonSquared : 42 * Math.sqrt(epsilonSquared);
        double actual = rail.tube().slenderness();
        if (actual > limit) {
            trace.find(Finding.of(
                            "thin-wall-buckles",
                            Level.WARNING,
                            "The wall of rail " + rail.name()
                                    + " is so thin that it buckles before it yields: {actual} times its thickness wide, more than {limit};"
                                    + " the stresses shown don't hold",
                            SLENDER)
                    .at(rail.pointer() + "/section/wall")
                    .actual(Measure.number(actual))
                    .limit(Measure.number(limit))
                    .action("Take a thicker wall"));
        }
    }

    private static void tie(TieForce tie, Rail rail, Trace trace) {
        Weld weld = tie.tie().weld();
        if (weld == null) {
            return;
        }
        String pointer = tie.tie().pointer() + "/weld";
        double effective = weld.lengthM() - 2 * weld.throatM();
        double least = Math.max(SHORTEST_WELD_M, SHORTEST_WELD_THROATS * weld.throatM());
        if (effective < least) {
            trace.find(Finding.of(
                            "weld-too-short",
                            Level.WARNING,
                            "The weld is {actual} long without its ends; below {limit} it must not be counted on",
                            WELDS)
                    .at(pointer + "/length")
                    .actual(new Measure(effective, CLEARANCE))
                    .limit(new Measure(least, CLEARANCE))
                    .action("Weld a longer seam"));
        }
        if (weld.throatM() > rail.tube().wallM()) {
            trace.find(Finding.of(
                            "throat-beyond-wall",
                            Level.CAUTION,
                            "A throat of {actual} on a wall of {limit} burns through, and the wall tears before the weld does",
                            Source.COMMON_PRACTICE)
                    .at(pointer + "/throat")
                    .actual(new Measure(weld.throatM(), CLEARANCE))
                    .limit(new Measure(rail.tube().wallM(), CLEARANCE))
                    .action("Make the seam longer instead of thicker, or spread the load with a plate"));
        }
        Double throat = tie.throatPa();
        Double allowable = tie.allowablePa();
        if (throat != null && allowable != null && throat > allowable) {
            trace.find(Finding.of(
                            "weld-overloaded",
                            Level.DANGER,
                            "The weld on rail " + rail.name()
                                    + " carries {actual} in its throat, more than its design strength of {limit}",
                            WELDS)
                    .at(pointer)
                    .actual(new Measure(throat, STRESS))
                    .limit(new Measure(allowable, STRESS))
                    .action("Make the seam longer; a qualified welder decides how"));
        }
    }

    private static void prop(Prop prop, PropForce force, Rail rail, Input input, Trace trace) {
        if (prop.tube() == null) {
            trace.find(Finding.of(
                            "prop-does-not-give",
                            Level.NOTICE,
                            "Without its section the prop counts as one that does not give: a real one gives, and leaves more of the"
                                    + " load to the rail",
                            Source.derived("compatibility at the prop"))
                    .at("/frame/box/prop")
                    .action("Send the section of the prop"));
            return;
        }
        Double utilisation = force.utilisation();
        Double buckling = force.bucklingN();
        if (buckling != null && force.forceN() * input.safetyFactor() > buckling) {
            trace.find(Finding.of(
                            "prop-buckles",
                            Level.DANGER,
                            "The prop under rail " + rail.name()
                                    + " is pressed with {actual}; with the safety factor it buckles at {limit}",
                            Source.published("Euler's formula"))
                    .at("/frame/box/prop")
                    .actual(new Measure(force.forceN(), FORCE))
                    .limit(new Measure(buckling / input.safetyFactor(), FORCE))
                    .action("Take a stouter tube or shorten the prop"));
        } else if (utilisation != null && utilisation > 1) {
            trace.find(Finding.of(
                            "prop-overloaded",
                            Level.WARNING,
                            "The prop under rail " + rail.name()
                                    + " is loaded to {actual} of what it bears with the safety factor",
                            MARGIN)
                    .at("/frame/box/prop")
                    .actual(Measure.number(utilisation))
                    .limit(Measure.number(1))
                    .action("Take a stouter tube"));
        }
    }

    private static void stretched(Stretched stretch, Trace trace) {
        boolean longer = stretch.uniformFactor() > 1;
        trace.find(
                Finding.of(
                                "fish-plates",
                                Level.CAUTION,
                                "An insert has the section and wall of the rail, cut slanting, and plates inside or outside that reach {limit} past each"
                                        + " joint; no upright butt weld, no thick plate on a thin rail",
                                FISH_PLATES)
                        .at("/frame/stretch")
                        .limit(new Measure(PLATE_M, CLEARANCE))
                        .action(
                                "Have an engineer check bending at gross mass, and think of brake lines, cables, driveline and steering"));
        if (longer) {
            trace.find(Finding.of(
                            "softer-frame",
                            Level.CAUTION,
                            "The same load per length now bends the rails {actual} times as far: stiffness falls with the fourth power of the"
                                    + " wheelbase",
                            Source.memory("beam tables of Roark and Gere: 5·w·L⁴/(384·E·I)"))
                    .at("/frame/stretch/lengthAdded")
                    .actual(Measure.number(stretch.uniformFactor()))
                    .limit(Measure.number(1))
                    .action("Stiffen the rails over the whole span, not only at the joints"));
        }
        if (longer && stretch.turningRadiusM() != null) {
            trace.find(Finding.of(
                            "turns-wider",
                            Level.CAUTION,
                            "At the same steering angle the turning radius grows to {actual} from {limit}, and the rear wheels cut in more;"
                                    + " a path or gate that was wide enough may not be",
                            TURNING)
                    .at("/frame/stretch/lengthAdded")
                    .actual(new Measure(stretch.turningRadiusM().after(), LENGTH))
                    .limit(new Measure(stretch.turningRadiusM().before(), LENGTH))
                    .action("Chalk the tightest turn of the route and drive it before painting"));
        }
        FrameOverhang.Change crest =
                stretch.breakoverRad() != null ? stretch.breakoverRad() : stretch.breakoverSimpleRad();
        if (longer && crest != null) {
            trace.find(Finding.of(
                            "grounds-earlier",
                            Level.CAUTION,
                            "Over a crest the frame now touches at {actual}, before it did at {limit}",
                            Underside.DEFINITION)
                    .at("/frame/stretch/lengthAdded")
                    .actual(new Measure(crest.after(), ANGLE))
                    .limit(new Measure(crest.before(), ANGLE))
                    .action("Keep the insert and what hangs on it above the old underside"));
        }
    }
}
