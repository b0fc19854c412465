package org.axlewright.domain.ride;

import java.util.List;
import org.axlewright.domain.quantity.Dimension;
import org.axlewright.domain.ride.RideHeight.AxleInput;
import org.axlewright.domain.ride.RideHeight.AxleRide;
import org.axlewright.domain.ride.RideHeight.Input;
import org.axlewright.domain.ride.RideHeight.Result;
import org.axlewright.domain.ride.RideHeight.State;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out in springs and stance. */
final class RideFindings {

    /** Ride frequencies that riders call comfortable, Hz. */
    static final double SLOWEST_HZ = 1.0;

    static final double FASTEST_HZ = 1.5;

    /** Share of the travel that should be left each way after a change. */
    static final double TRAVEL_KEPT = 2.0 / 3.0;

    /** Change of pitch, as a slope, that lamps bear. */
    static final double NOSE_UP = 0.01;

    /** No suspension of this kind of vehicle moves so far, m. */
    static final double FARTHEST_M = 0.3;

    private static final Source COMFORT = Source.published(
            "training booklet of a car maker on suspension (SSP 242): below 1 Hz riders get sick, above 1.5 Hz comfort suffers; cars,"
                    + " not load carriers");
    private static final Source TRAVEL = Source.weak(
            "two thirds of the suspension travel kept each way: VicRoads VSI 8 and VSB 14 for road vehicles, as quoted by owners");
    private static final Source LAMPS =
            Source.memory("UN R48 par. 6.2.6.1: dipped beams are set 1 to 1.5 % down and stay between 0.5 and 2.5 %");

    private static final Caution SPRUNG_LOAD = new Caution(
            "spring-work",
            "A spring under load and a vehicle on a jack can kill. Support the frame on stands, let the springs hang free before anything is"
                    + " undone, and keep to the maker's ratings of springs, axle and tyres: stiffer springs raise none of them.");

    private RideFindings() {}

    static void find(Input input, Result result, Trace trace) {
        trace.caution(SPRUNG_LOAD);
        for (AxleInput axle : axles(input)) {
            springs(axle, trace);
        }
        boolean told = result.occupied() != null && judge(input, result.occupied(), trace);
        if (result.empty() != null) {
            told |= judge(input, result.empty(), trace);
        }
        if (told) {
            trace.find(Finding.of(
                            "stiffer-springs-cost-comfort",
                            Level.NOTICE,
                            "A rate that holds up the full load rides hard when empty; a helper spring that comes in with the"
                                    + " load does not",
                            Source.COMMON_PRACTICE)
                    .at("/suspension"));
        }
    }

    private static List<AxleInput> axles(Input input) {
        if (input.front() == null) {
            return input.rear() == null ? List.of() : List.of(input.rear());
        }
        return input.rear() == null ? List.of(input.front()) : List.of(input.front(), input.rear());
    }

    private static void springs(AxleInput axle, Trace trace) {
        if (axle.springs().springs() == 1) {
            trace.find(Finding.of(
                            "one-spring",
                            Level.NOTICE,
                            "One spring is taken to carry the whole " + axle.axle()
                                    + " axle; when there is one on each side send springs 2 and the rate of one of them",
                            Source.COMMON_PRACTICE)
                    .at("/suspension/" + axle.axle() + "/springs"));
        }
        if (axle.rates().tyreRate() == null && axle.loadAsFoundN() != null) {
            trace.find(Finding.of(
                            "tyres-not-told-apart",
                            Level.NOTICE,
                            "The rate of the " + axle.axle()
                                    + " tyres isn't known. From springs alone the squat leaves the tyres out, so that the vehicle comes"
                                    + " down a little farther; from a measured drop the travel used counts theirs as well",
                            Source.derived("springs and tyres in series"))
                    .at("/suspension/" + axle.axle() + "/tyreRate")
                    .action("Measure how far the wheel centres come down under a known mass"));
        }
        if (axle.liftM() != 0 && axle.freeTravelM() != null) {
            trace.find(
                    Finding.of(
                                    "travel-after-lift",
                                    Level.CAUTION,
                                    "The free travel of the " + axle.axle()
                                            + " axle is taken as measured, whatever the lift did to it: with springs raised and bump stops left"
                                            + " where they were, dampers, joints and tyres become the stop",
                                    Source.weak("trade magazine: extend the bump stops with the lift"))
                            .at("/suspension/" + axle.axle() + "/freeTravel")
                            .action(
                                    "Measure it on the lifted vehicle, and see that damper and brake hose reach both ends of the travel"));
        }
    }

    /** Whether an axle needs more spring. */
    private static boolean judge(Input input, State state, Trace trace) {
        String name = state.loading().state();
        boolean front = axle(input.front(), state.front(), name, trace);
        boolean rear = axle(input.rear(), state.rear(), name, trace);
        Double pitch = state.pitchRad();
        if (pitch != null && Math.tan(pitch) > NOSE_UP) {
            trace.find(Finding.of(
                            "nose-high",
                            Level.CAUTION,
                            "The nose points up by {actual} against as found: caster grows by as much, and lamps glare",
                            LAMPS)
                    .at("/suspension/rear")
                    .in(name)
                    .actual(new Measure(pitch, Dimension.ANGLE))
                    .limit(new Measure(Math.atan(NOSE_UP), Dimension.ANGLE))
                    .action("Raise the rear by its spacer or springs, or move load forward; aim the lamps again"));
        }
        return front || rear;
    }

    private static boolean axle(@Nullable AxleInput axle, @Nullable AxleRide ride, @Nullable String name, Trace trace) {
        if (axle == null || ride == null) {
            return false;
        }
        String pointer = "/suspension/" + axle.axle();
        if (ride.frequencyHz() == null) {
            trace.find(Finding.of(
                            "springs-unloaded",
                            Level.WARNING,
                            "The " + axle.axle() + " springs carry nothing: the wheels hang or have left the ground",
                            Source.derived("statics"))
                    .at(pointer)
                    .in(name));
        } else {
            frequency(axle, ride.frequencyHz(), pointer, name, trace);
        }
        Double squat = ride.squatM();
        if (squat != null && Math.abs(squat) > FARTHEST_M) {
            trace.find(Finding.of(
                            "squat-implausible",
                            Level.WARNING,
                            "With these springs the frame would move {actual} at the " + axle.axle()
                                    + " axle, farther than any suspension of this kind of vehicle: a rate or a load is wrong",
                            Source.COMMON_PRACTICE)
                    .at(pointer)
                    .in(name)
                    .actual(new Measure(Math.abs(squat), Dimension.CLEARANCE))
                    .limit(new Measure(FARTHEST_M, Dimension.CLEARANCE))
                    .action("Check the unit of the rate, N/mm or lbf/in, and that it is the rate of one spring"));
        }
        return travel(axle, ride, pointer, name, trace);
    }

    private static void frequency(AxleInput axle, double hertz, String pointer, @Nullable String name, Trace trace) {
        boolean soft = hertz < SLOWEST_HZ;
        boolean hard = hertz > FASTEST_HZ && !"empty".equals(name);
        if (!soft && !hard) {
            return;
        }
        trace.find(
                Finding.of(
                                "ride-frequency",
                                Level.NOTICE,
                                soft
                                        ? "The " + axle.axle()
                                                + " end rides at {actual}, softer than {limit}: it wallows, and bottoms soon"
                                        : "The " + axle.axle()
                                                + " end rides at {actual} even as loaded, harder than the {limit} of a comfortable car",
                                COMFORT)
                        .at(pointer)
                        .in(name)
                        .actual(new Measure(hertz, Dimension.FREQUENCY))
                        .limit(new Measure(soft ? SLOWEST_HZ : FASTEST_HZ, Dimension.FREQUENCY))
                        .action(
                                "Check that springRate is the rate of one spring: one rate taken for both together is out by 1.4 in the frequency"));
    }

    private static boolean travel(AxleInput axle, AxleRide ride, String pointer, @Nullable String name, Trace trace) {
        Double left = ride.travelLeftM();
        Double free = axle.freeTravelM();
        if (left == null || free == null) {
            return false;
        }
        if (left <= 0) {
            trace.find(Finding.of(
                            "bottoms-out",
                            Level.WARNING,
                            "The " + axle.axle()
                                    + " axle stands on its bump stops: the springs would need {actual} more travel than"
                                    + " there is, so the height given is lower than it will stand, and every bump goes into the frame",
                            Source.derived("springs without stops"))
                    .at(pointer + "/freeTravel")
                    .in(name)
                    .actual(new Measure(-left, Dimension.CLEARANCE))
                    .limit(new Measure(0, Dimension.CLEARANCE))
                    .action("Take load off, or fit springs of the restoring rate"));
            return true;
        }
        if (left < TRAVEL_KEPT * free) {
            trace.find(Finding.of(
                            "travel-short",
                            "empty".equals(name) ? Level.CAUTION : Level.NOTICE,
                            "Of the bump travel of the " + axle.axle()
                                    + " axle {actual} is left, less than two thirds of what there was",
                            TRAVEL)
                    .at(pointer + "/freeTravel")
                    .in(name)
                    .actual(new Measure(left, Dimension.CLEARANCE))
                    .limit(new Measure(TRAVEL_KEPT * free, Dimension.CLEARANCE))
                    .action("Fit springs of the restoring rate, or a helper spring that comes in with the load"));
            return true;
        }
        return false;
    }
}
