package org.axlewright.domain.descent;

import static org.axlewright.domain.quantity.Dimension.CHARGE;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.RESISTANCE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE_DIFFERENCE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.descent.Descent.Input;
import org.axlewright.domain.descent.Descent.Leg;
import org.axlewright.domain.descent.Descent.OfState;
import org.axlewright.domain.descent.Descent.Pack;
import org.axlewright.domain.descent.Descent.Resistor;
import org.axlewright.domain.descent.Descent.ResistorNeed;
import org.axlewright.domain.descent.Descent.Result;
import org.axlewright.domain.roadload.BrakeHeat;
import org.axlewright.domain.roadload.SlopeInDegrees;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out on the way down. */
final class DescentFindings {

    private static final double READS_RIGHT = 0.02;

    private static final Source NO_CHARGE_IN_FROST =
            Source.published("module maker's specification: no charge below 0 degC");
    private static final Source FULL_PACK = Source.derived(
            "a full pack takes nothing: battery management opens, braking goes and the voltage at the controller rises");
    static final Source MARGIN = Source.weak(
            "owners' case: thirteen lithium cells, 54.6 V full, destroyed 63 V controllers while braking, twelve did not");
    private static final Source REAR_ONLY = Source.published(
            "Accident Analysis and Prevention, 2006: golf cars braked at the rear wheels only, on steep downgrades");
    private static final Source MOMENTS = Source.derived("force and moment balance of the vehicle");
    private static final Source SENT = Source.derived("comparison of the values sent");
    private static final Source SENSOR =
            Source.weak("owner's case: display at half after a motor swap, regeneration gone on a 3.2 km descent");

    private static final Caution DESCENT = new Caution(
            "descent",
            "On a hill the friction brakes must hold the vehicle alone at any moment. Try them before the top, go down slowly, and have work"
                    + " on brakes and on the traction circuit done by someone trained for it; the makers' ratings bind.");

    private DescentFindings() {}

    static void find(Input input, Result result, Trace trace) {
        trace.caution(DESCENT);
        if (input.legs().isEmpty()) {
            trace.find(Finding.of(
                            "no-downhill",
                            Level.NOTICE,
                            "No stretch of the route falls: there is nothing to hold",
                            SENT)
                    .at("/route")
                    .action("Send a hill, or legs with a grade below zero."));
            return;
        }
        Leg steepest = steepest(input);
        if (input.fallInDegrees()) {
            SlopeInDegrees.find(steepest.fallRad(), steepest.pointer() + "/grade", trace);
        }
        boolean regenerates = input.regeneration().share() > 0;
        boolean held = result.occupied().greatestW() > 0;
        Pack pack = input.pack();
        if (regenerates && held && pack != null) {
            pack(input, pack, result, trace);
        }
        if (regenerates && held) {
            trace.find(
                    Finding.of(
                                    "pack-disconnects",
                                    Level.WARNING,
                                    "When battery management opens, a fuse blows or a lead comes off, regeneration is gone at once and the voltage at"
                                            + " the controller shoots up: the friction brakes must then take {actual} alone",
                                    FULL_PACK)
                            .at("/brakes")
                            .actual(new Measure(result.occupied().greatestW(), POWER))
                            .action(
                                    "Try that the brakes alone hold it; keep the charging current well below where management trips."));
            sensor(input, trace);
        }
        voltage(input, regenerates, trace);
        brakedAxles(input, steepest, held, trace);
        boolean two = result.empty() != null;
        state(input, result.occupied(), two ? "occupied" : null, trace);
        if (result.empty() != null) {
            state(input, result.empty(), "empty", trace);
        }
    }

    private static Leg steepest(Input input) {
        Leg steepest = input.legs().get(0);
        for (Leg leg : input.legs()) {
            if (leg.fallRad() > steepest.fallRad()) {
                steepest = leg;
            }
        }
        return steepest;
    }

    private static void pack(Input input, Pack pack, Result result, Trace trace) {
        OfState state = result.occupied();
        if (pack.cold()) {
            trace.find(Finding.of(
                            "cold-pack",
                            Level.DANGER,
                            "At {actual} a lithium pack takes no charge, and regeneration is charging: it must be off, or metal plates out in"
                                    + " the cells and stays; downhill the friction brakes are alone",
                            NO_CHARGE_IN_FROST)
                    .at("/pack/temperature")
                    .actual(new Measure(pack.temperatureC() == null ? 0 : pack.temperatureC(), TEMPERATURE))
                    .limit(new Measure(Descent.COLD_C, TEMPERATURE))
                    .action("Warm the pack to 5 degC or go down on the friction brakes, slowly."));
        }
        Double headroomC = pack.headroomC();
        Double wantedC = state.wantedC();
        if (headroomC == null) {
            trace.find(Finding.of(
                            "headroom-not-known",
                            Level.CAUTION,
                            "Without capacity and state of charge nobody can say whether the pack has room for the hill; reckoned as if it"
                                    + " had",
                            FULL_PACK)
                    .at("/pack/stateOfCharge"));
        } else if (wantedC != null && wantedC > headroomC) {
            boolean resistor = input.resistor() != null;
            trace.find(
                    Finding.of(
                                    "full-pack",
                                    resistor ? Level.WARNING : Level.DANGER,
                                    "The hill would put {actual} into the pack and {limit} fit: on the way down "
                                            + (resistor
                                                    ? "all of it falls to the braking resistor"
                                                    : "regeneration ends and the braking with it"),
                                    FULL_PACK)
                            .at("/pack/stateOfCharge")
                            .actual(new Measure(wantedC, CHARGE))
                            .limit(new Measure(headroomC, CHARGE))
                            .action(
                                    "Leave the top with less charge, fit a braking resistor, or go down on the friction brakes."));
        }
        if (pack.cold() && pack.stateOfCharge() != null && pack.stateOfCharge() >= 1) {
            trace.find(
                    Finding.of(
                                    "full-pack",
                                    Level.DANGER,
                                    "The pack is full besides: warmed it takes nothing either, and the friction brakes stay alone",
                                    FULL_PACK)
                            .at("/pack/stateOfCharge")
                            .actual(Measure.number(pack.stateOfCharge()))
                            .limit(Measure.number(1))
                            .action(
                                    "Leave the top with less charge, fit a braking resistor, or go down on the friction brakes."));
        }
        if (pack.chargeA() == null && state.wantedA() != null) {
            trace.find(Finding.of(
                            "charge-limit-not-known",
                            Level.CAUTION,
                            "Holding the speed charges with {actual}; what the battery management lets in is not known, and is often a half to"
                                    + " a fifth of what it lets out",
                            Source.weak("owners' case: braking from 40 km/h switched everything off"))
                    .at("/pack/limits/charge")
                    .actual(new Measure(state.wantedA(), CURRENT)));
        } else if (state.wantedA() != null && pack.chargeA() != null && state.wantedA() > pack.chargeA()) {
            Double controllerA = input.regeneration().controllerA();
            boolean bounded = controllerA != null && controllerA <= pack.chargeA();
            trace.find(
                    Finding.of(
                                    "over-charge-limit",
                                    bounded ? Level.CAUTION : Level.WARNING,
                                    "Holding the speed by the motor alone charges with {actual}, the pack takes {limit}: "
                                            + (bounded
                                                    ? "the controller holds back and the friction brakes take the rest"
                                                    : "battery management opens, and the electric brake is gone"),
                                    SENT)
                            .at("/pack/limits/charge")
                            .actual(new Measure(state.wantedA(), CURRENT))
                            .limit(new Measure(pack.chargeA(), CURRENT))
                            .action(
                                    "Set the controller's regeneration current below the limit, go slower, or fit a resistor."));
        }
    }

    private static void sensor(Input input, Trace trace) {
        if (Math.abs(input.sensorFactor() - 1) > READS_RIGHT) {
            trace.find(Finding.of(
                            "speed-setpoints-off",
                            Level.WARNING,
                            "The controller reckons with a wrong speed; the true one is {actual} times as high. Where regeneration begins and"
                                    + " the speed that is held are off by the same factor: expect to go down on the friction brakes",
                            SENSOR)
                    .at("/drive/speedSensor")
                    .actual(Measure.number(input.sensorFactor()))
                    .limit(Measure.number(1))
                    .action("Set the pulses for each turn of the new sensor before relying on regeneration."));
        }
    }

    private static void voltage(Input input, boolean regenerates, Trace trace) {
        Pack pack = input.pack();
        Double bears = input.controllerV();
        if (!regenerates || pack == null || bears == null) {
            return;
        }
        double neededV = Descent.VOLTAGE_MARGIN * pack.fullV();
        if (neededV > bears) {
            trace.find(Finding.of(
                            "controller-voltage-margin",
                            pack.fullV() > bears ? Level.DANGER : Level.WARNING,
                            "Peaks of regeneration need {actual}, 1.2 times the full pack, and the controller bears {limit}: one cell too many"
                                    + " destroys it, and the brake with it",
                            MARGIN)
                    .at("/drive/controller/maximumVoltage")
                    .actual(new Measure(neededV, VOLTAGE))
                    .limit(new Measure(bears, VOLTAGE))
                    .action("Fewer cells, or a controller whose capacitors bear 1.2 times the full voltage."));
        }
    }

    private static void brakedAxles(Input input, Leg steepest, boolean held, Trace trace) {
        AxleSet braked = input.brakes().braked();
        if (braked == null || braked == AxleSet.ALL || !held) {
            return;
        }
        trace.find(Finding.of(
                        "brakes-on-one-axle",
                        Level.DANGER,
                        "Only the " + braked + " wheels brake, down a slope of {actual}: "
                                + (braked == AxleSet.REAR
                                        ? "the slope takes load off them, and locked rear wheels make the vehicle yaw and roll over"
                                        : "the rear wheels do not help, and locked front wheels do not steer"),
                        REAR_ONLY)
                .at("/chassis/braked")
                .actual(new Measure(steepest.fallRad(), GRADE))
                .action("Brakes on all four wheels; until then walking pace downhill, and no braking in turns."));
    }

    private static void state(Input input, OfState state, @Nullable String name, Trace trace) {
        adhesion(state.adhesion().byMotor(), "motor", "/drive", input, name, trace);
        adhesion(state.adhesion().byBrakes(), "brakes", "/chassis/braked", input, name, trace);
        double limitK = BrakeHeat.DESCENT_LIMIT_C - BrakeHeat.START_C;
        hot(state.alone().frontRiseK(), "front", limitK, name, trace);
        hot(state.alone().rearRiseK(), "rear", limitK, name, trace);
        ResistorNeed need = state.resistor();
        Resistor resistor = input.resistor();
        if (need == null || resistor == null) {
            return;
        }
        if (resistor.continuousW() != null && need.powerW() > resistor.continuousW()) {
            trace.find(Finding.of(
                            "resistor-overloaded",
                            Level.WARNING,
                            "With a pack that takes nothing the resistor gets {actual} and may take {limit} for long",
                            SENT)
                    .at("/drive/brakingResistor/continuousPower")
                    .in(name)
                    .actual(new Measure(need.powerW(), POWER))
                    .limit(new Measure(resistor.continuousW(), POWER))
                    .action("Hold it against the maker's curve for the minutes of the hill."));
        }
        if (resistor.ohm() != null && need.ohm() != null && resistor.ohm() > need.ohm()) {
            trace.find(Finding.of(
                            "resistance-too-high",
                            Level.WARNING,
                            "A resistor of {actual} does not take the power at this voltage; {limit} at most would",
                            Source.derived("direct-current circuit: P = U²/R"))
                    .at("/drive/brakingResistor/resistance")
                    .in(name)
                    .actual(new Measure(resistor.ohm(), RESISTANCE))
                    .limit(new Measure(need.ohm(), RESISTANCE)));
        }
    }

    private static void adhesion(
            @Nullable Double needed, String by, String pointer, Input input, @Nullable String name, Trace trace) {
        if (needed == null || !(needed > input.friction())) {
            return;
        }
        trace.find(Finding.of(
                        "adhesion-exceeded",
                        Level.DANGER,
                        "Holding the speed by the " + by
                                + " alone takes a friction of {actual}, the ground has {limit}: the wheels slide and"
                                + " the vehicle runs away",
                        MOMENTS)
                .at(pointer)
                .in(name)
                .actual(Measure.number(needed))
                .limit(Measure.number(input.friction()))
                .action("Keep off this slope on this ground, or brake all wheels."));
    }

    private static void hot(@Nullable Double riseK, String axle, double limitK, @Nullable String name, Trace trace) {
        if (riseK == null || !(riseK > limitK)) {
            return;
        }
        trace.find(Finding.of(
                        "brakes-hot",
                        Level.WARNING,
                        "Held by the friction brakes alone, the " + axle
                                + " drums or discs heat up by {actual} with nothing given off; beyond"
                                + " {limit} linings fade",
                        BrakeHeat.DESCENT_LIMIT)
                .at("/brakes/" + axle + "/mass")
                .in(name)
                .actual(new Measure(riseK, TEMPERATURE_DIFFERENCE))
                .limit(new Measure(limitK, TEMPERATURE_DIFFERENCE))
                .action("Stop to cool on the way, go slower, carry less, or fit heavier drums or discs."));
    }
}
