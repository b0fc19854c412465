package org.axlewright.api.ride;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.IntPredicate;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.MassSections.AxleLoads;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.calculation.Rises;
import org.axlewright.api.calculation.SpringSections;
import org.axlewright.api.ride.RideHeightResult.AxleRates;
import org.axlewright.api.ride.RideHeightResult.AxleRide;
import org.axlewright.api.ride.RideHeightResult.RideState;
import org.axlewright.api.ride.RideHeightResult.Springs;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Suspension;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.axles.SpringData;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.ride.RideHeight;
import org.axlewright.domain.ride.RideHeight.AxleInput;
import org.axlewright.domain.ride.RideHeight.Input;
import org.axlewright.domain.ride.RideHeight.Loading;
import org.axlewright.domain.ride.RideHeight.Result;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Ride height: squat, travel left, ride frequency, and the spring that stands as before. */
public final class RideHeightCalculation implements Calculation<Input, Result, RideHeightResult> {

    private static final Needs NEEDS = Needs.one(SpringSections.known(Axle.REAR), SpringSections.known(Axle.FRONT));

    private static final Needs LOADS = Needs.all(Needs.value("/chassis/wheelbase"), MassSections.POSITION_IN_PLAN);

    private static final Needs LOADS_AS_FOUND = Needs.all(Needs.value("/chassis/wheelbase"), MassSections.AS_WEIGHED);

    @Override
    public String name() {
        return "ride-height";
    }

    @Override
    public String question() {
        return "How much does it squat, how much travel is left, how does it ride, and which spring stands as before?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/rear/squat",
                "/front/squat",
                "/rear/travelLeft",
                "/front/travelLeft",
                "/rear/restoringRate",
                "/rear/rideFrequency",
                "/front/rideFrequency",
                "/pitchChange");
    }

    @Override
    public Class<RideHeightResult> resultType() {
        return RideHeightResult.class;
    }

    @Override
    public Input resolve(Setup setup, Resolution resolution) {
        AxleLoads found = MassSections.axleLoadsAsWeighed(setup);
        Loading occupied = null;
        Loading empty = null;
        List<Loading> others = new ArrayList<>();
        Rise rise = Rises.resolve(setup, resolution);
        resolution.refuseIfFaulty();
        if (LOADS.missing(setup).isEmpty()) {
            double wheelbaseM = Objects.requireNonNull(
                            Objects.requireNonNull(setup.chassis()).wheelbase())
                    .si();
            MassSections.States states = MassSections.states(setup, resolution);
            occupied = loading("occupied", states.loads(wheelbaseM));
            AxleLoads emptyLoads = states.emptyLoads(wheelbaseM);
            if (emptyLoads != null) {
                empty = loading("empty", emptyLoads);
            }
            others(setup, resolution, found, others);
        } else if (found != null) {
            others.add(new Loading("as found", null, found.frontN(), found.rearN()));
        }
        AxleInput front = axle(setup, Axle.FRONT, found == null ? null : found.frontN(), rise, resolution);
        AxleInput rear = axle(setup, Axle.REAR, found == null ? null : found.rearN(), rise, resolution);
        resolution.refuseIfFaulty();
        Length wheelbase = setup.chassis() == null ? null : setup.chassis().wheelbase();
        Input input = new Input(wheelbase == null ? null : wheelbase.si(), front, rear, occupied, empty, others);
        notAnswered(input, setup, resolution);
        return input;
    }

    private static Loading loading(String state, AxleLoads loads) {
        return new Loading(state, state, loads.frontN(), loads.rearN());
    }

    /** What a sum of bare vehicle, items and occupants gives besides everybody and nobody; the same loading is not told twice. */
    private static void others(Setup setup, Resolution resolution, @Nullable AxleLoads found, List<Loading> others) {
        if (found == null) {
            return;
        }
        Set<AxleLoads> told = new LinkedHashSet<>();
        others.add(new Loading("as found", null, found.frontN(), found.rearN()));
        told.add(found);
        if (!MassSections.derivable(setup)) {
            return;
        }
        int driver = MassSections.driver(setup);
        told.add(MassSections.axleLoads(setup, resolution, true, person -> true));
        told.add(MassSections.axleLoads(setup, resolution, true, person -> false));
        IntPredicate alone = person -> person == driver;
        tell("driver alone", MassSections.axleLoads(setup, resolution, true, alone), told, others);
        tell("driver alone, without cargo", MassSections.axleLoads(setup, resolution, false, alone), told, others);
        tell("empty, without cargo", MassSections.axleLoads(setup, resolution, false, person -> false), told, others);
        tell("occupied, without cargo", MassSections.axleLoads(setup, resolution, false, person -> true), told, others);
    }

    private static void tell(String name, AxleLoads loads, Set<AxleLoads> told, List<Loading> others) {
        if (told.add(loads)) {
            others.add(new Loading(name, null, loads.frontN(), loads.rearN()));
        }
    }

    private static @Nullable AxleInput axle(
            Setup setup, Axle axle, @Nullable Double foundN, Rise rise, Resolution resolution) {
        SpringData springs = SpringSections.springs(setup, axle, resolution);
        if (springs == null) {
            return null;
        }
        Suspension.AxleSuspension sent = Objects.requireNonNull(SpringSections.sent(setup, axle));
        return new AxleInput(
                axle,
                springs,
                SpringSections.unsprungKg(setup, axle, foundN, resolution),
                sent.freeTravel() == null ? null : sent.freeTravel().si(),
                rollBaseM(setup, axle, sent),
                foundN,
                axle == Axle.FRONT ? rise.front().frameM() : rise.rear().frameM());
    }

    /** Track of wheels that move by themselves, spacing of the springs on a solid axle; null when neither is known. */
    private static @Nullable Double rollBaseM(Setup setup, Axle axle, Suspension.AxleSuspension sent) {
        if (sent.springSpacing() != null) {
            return sent.springSpacing().si();
        }
        Length track = setup.chassis() == null
                ? null
                : axle == Axle.FRONT
                        ? setup.chassis().frontTrack()
                        : setup.chassis().rearTrack();
        return track != null && independent(sent) ? (Double) track.si() : null;
    }

    private static boolean independent(Suspension.AxleSuspension sent) {
        boolean wishbones = sent.lowerOuter() != null && sent.upperOuter() != null;
        return sent.independent() == null ? wishbones : sent.independent();
    }

    private static void notAnswered(Input input, Setup setup, Resolution resolution) {
        List<String> loads = LOADS.missing(setup);
        boolean asFound = MassSections.axleLoadsAsWeighed(setup) != null;
        List<String> missing = LOADS_AS_FOUND.missing(setup);
        for (Axle axle : Axle.values()) {
            AxleInput known = axle == Axle.FRONT ? input.front() : input.rear();
            Suspension.AxleSuspension sent = SpringSections.sent(setup, axle);
            if (known == null) {
                resolution.notAnswered("/" + axle, SpringSections.known(axle).missing(setup));
                continue;
            }
            if (!loads.isEmpty()) {
                resolution.notAnswered("/" + axle, loads);
            } else if (!asFound) {
                resolution.notAnswered("/" + axle + "/squat", missing);
            }
            if (known.freeTravelM() == null) {
                resolution.notAnswered("/" + axle + "/travelLeft", "/suspension/" + axle + "/freeTravel");
            }
            if (known.rollBaseM() == null) {
                boolean independent = sent != null && independent(sent);
                boolean solid = sent != null && Boolean.FALSE.equals(sent.independent());
                resolution.notAnswered(
                        "/springs/" + axle + "/rollMomentPerDegree",
                        independent
                                ? List.of("/chassis/" + axle + "Track")
                                : solid
                                        ? List.of("/suspension/" + axle + "/springSpacing")
                                        : List.of(
                                                "/suspension/" + axle + "/independent",
                                                "/suspension/" + axle + "/springSpacing"));
            }
        }
        if (loads.isEmpty() && input.empty() == null) {
            resolution.notAnswered("/empty", missing);
        }
    }

    @Override
    public Result calculate(Input input, Trace trace) {
        return RideHeight.of(input, trace);
    }

    @Override
    public RideHeightResult show(Result result, UnitSystem units) {
        RideHeight.State occupied = result.occupied();
        RideHeight.State empty = result.empty();
        return new RideHeightResult(
                occupied == null ? null : ride(occupied.front(), units),
                occupied == null ? null : ride(occupied.rear(), units),
                occupied == null || occupied.pitchRad() == null ? null : units.angle(occupied.pitchRad()),
                occupied == null ? null : clearance(occupied.centreOfGravityDropM(), units),
                new Springs(rates(result.front(), units), rates(result.rear(), units)),
                empty == null
                        ? null
                        : new RideState(
                                ride(empty.front(), units),
                                ride(empty.rear(), units),
                                empty.pitchRad() == null ? null : units.angle(empty.pitchRad()),
                                clearance(empty.centreOfGravityDropM(), units)),
                result.others().stream()
                        .map(state -> new RideHeightResult.Loading(
                                state.loading().name(),
                                ride(state.front(), units),
                                ride(state.rear(), units),
                                state.pitchRad() == null ? null : units.angle(state.pitchRad())))
                        .toList());
    }

    private static @Nullable AxleRide ride(RideHeight.@Nullable AxleRide axle, UnitSystem units) {
        return axle == null
                ? null
                : new AxleRide(
                        units.load(axle.loadN()),
                        axle.loadChangeN() == null ? null : units.load(axle.loadChangeN()),
                        clearance(axle.squatM(), units),
                        clearance(axle.riseM(), units),
                        clearance(axle.travelLeftM(), units),
                        axle.frequencyHz() == null ? null : units.frequency(axle.frequencyHz()),
                        axle.restoring() == null
                                ? null
                                : units.springRate(axle.restoring().springRate()),
                        axle.restoring() == null
                                ? null
                                : (Double) axle.restoring().factor(),
                        clearance(axle.spacerM(), units));
    }

    private static @Nullable AxleRates rates(RideHeight.@Nullable Rates rates, UnitSystem units) {
        return rates == null
                ? null
                : new AxleRates(
                        units.springRate(rates.springRate()),
                        units.springRate(rates.wheelRate()),
                        units.springRate(rates.axleRate()),
                        rates.rollStiffness() == null ? null : units.torque(Math.toRadians(rates.rollStiffness())));
    }

    private static @Nullable Length clearance(@Nullable Double metres, UnitSystem units) {
        return metres == null ? null : units.clearance(metres);
    }
}
