package org.axlewright.domain.energy;

import static org.axlewright.domain.quantity.Dimension.CONSUMPTION;
import static org.axlewright.domain.quantity.Dimension.CURRENT;
import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.SPEED;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.axlewright.domain.energy.PackRange.ConstantCurrent;
import org.axlewright.domain.energy.PackRange.Input;
import org.axlewright.domain.energy.PackRange.Limits;
import org.axlewright.domain.energy.PackRange.Pack;
import org.axlewright.domain.energy.PackRange.Result;
import org.axlewright.domain.energy.PackRange.Route;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.pack.Sag;
import org.axlewright.domain.pack.TemperatureFactor;
import org.axlewright.domain.quantity.ConsumptionUnit;
import org.axlewright.domain.roadload.SlopeInDegrees;
import org.axlewright.domain.trace.Caution;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Level;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** What stands out in a pack and in what is asked of it. */
final class PackFindings {

    /** Highest direct voltage of the lower class, V. */
    static final double CLASS_LIMIT_V = 60;

    private static final double DEEP_SHARE = 0.8;
    private static final double HIGH_RATE = 1;

    private static final Source VOLTAGE_CLASS = Source.weak(
            "ISO 6469-3 and UN R100: class B above 60 V DC; IEC 60364-4-41 cl. 414.4.5; as quoted in trade articles");
    private static final Source CIRCUIT =
            Source.derived("direct-current circuit: at most E²/(4·r), at half the voltage");
    private static final Source MAKER = Source.derived("comparison with the limit sent");
    private static final Source PEUKERT =
            Source.published("battery-monitor maker's manual: Peukert's law from two discharges that bracket the use");

    /** Cell counts that belong to the other lithium chemistry at the same system voltage. */
    private static final Map<Chemistry, Set<Integer>> COUNTS_OF_ANOTHER =
            Map.of(Chemistry.LFP, Set.of(10, 13, 14), Chemistry.NMC, Set.of(12, 15, 16, 23, 24));

    private static final Caution DC_ARC = new Caution(
            "dc-arc",
            "A direct-current arc does not go out by itself. Open the pack under load only with a contactor or breaker rated for it,"
                    + " take off jewellery, use insulated tools and cover one terminal.");
    private static final Caution LEAD_ACID = new Caution(
            "hydrogen",
            "Lead-acid cells give off hydrogen, which explodes from 4 % in air, and hold acid: ventilate, keep flame and sparks away, wear"
                    + " eye protection.");
    private static final Caution LITHIUM = new Caution(
            "lithium",
            "A lithium pack that is crushed, overcharged, overheated or charged frozen can burn and burns again. It needs battery"
                    + " management that can disconnect it; the maker's limits bind.");

    private PackFindings() {}

    static void find(Input input, Result result, Trace trace) {
        Pack pack = input.pack();
        trace.caution(DC_ARC);
        trace.caution(pack.chemistry().isLeadAcid() ? LEAD_ACID : LITHIUM);
        if (input.loadUnused()) {
            trace.find(Finding.of(
                            "load-not-used",
                            Level.NOTICE,
                            "Both a route and a constant load were sent; the route is answered",
                            Source.derived("a constant load stands in place of a route"))
                    .at("/load")
                    .action("Leave out the route to ask for the constant load."));
        }
        if (input.duty() instanceof Route route) {
            slopes(route, trace);
        }
        voltages(pack, result.voltages(), trace);
        temperature(input, trace);
        capacity(pack, result, trace);
        if (pack.acMeasured() && pack.resistanceOhm() != null) {
            trace.find(Finding.of(
                            "resistance-reads-low",
                            Level.NOTICE,
                            "A 1 kHz meter reads less than the resistance under load: the voltage will sag further than shown",
                            Source.memory("a 1 kHz reading leaves out the slow part of the resistance"))
                    .at("/pack/resistance/method")
                    .action("Measure the voltage step after ten seconds of a known current and send it as dc-10s."));
        }
        if (result.averageCurrentA() != null) {
            limits(input, result, trace);
            sag(pack, result, trace);
        }
        if (input.duty() instanceof Route route && result.averageCurrentA() != null) {
            route(pack, route, result, trace);
        }
    }

    private static void slopes(Route route, Trace trace) {
        for (int i = 0; i < route.legs().size(); i++) {
            RouteLeg leg = route.legs().get(i);
            if (leg.inDegrees()) {
                SlopeInDegrees.find(leg.gradeRad(), "/route/" + i + "/grade", trace);
            }
        }
    }

    static void powerBeyondPack(double powerW, double emfV, double ohm, String pointer, Trace trace) {
        trace.find(
                Finding.of(
                                "power-beyond-pack",
                                Level.WARNING,
                                "The load takes {actual}; with this internal resistance the pack can give {limit} at most, so nothing that"
                                        + " depends on the load is answered",
                                CIRCUIT)
                        .at(pointer)
                        .actual(new Measure(powerW, POWER))
                        .limit(new Measure(Sag.greatestPowerW(emfV, ohm), POWER))
                        .action(
                                "Check the unit of the resistance and what it belongs to; a pack like this needs less load or more strings."));
    }

    static void currentBeyondPack(double currentA, double emfV, double ohm, Trace trace) {
        trace.find(Finding.of(
                        "current-beyond-pack",
                        Level.WARNING,
                        "The load takes {actual}; with this internal resistance a short circuit would draw {limit}, so nothing that"
                                + " depends on the load is answered",
                        Source.derived("direct-current circuit: short-circuit current E/r"))
                .at("/load/current")
                .actual(new Measure(currentA, CURRENT))
                .limit(new Measure(emfV / ohm, CURRENT))
                .action("Check the unit of the resistance and what it belongs to."));
    }

    static void gainsOnBalance(Trace trace) {
        trace.find(Finding.of(
                        "no-net-consumption",
                        Level.CAUTION,
                        "Over the whole route the pack gains as much as it spends: there is no range to give",
                        Source.derived("sum over the legs"))
                .at("/route")
                .action("A route that ends lower than it starts can't be repeated: add the way back."));
    }

    private static void voltages(Pack pack, @Nullable PackVoltages voltages, Trace trace) {
        Integer cells = pack.cellsInSeries();
        if (voltages == null || cells == null) {
            return;
        }
        if (voltages.fullV() > CLASS_LIMIT_V) {
            trace.find(Finding.of(
                            "above-60-v",
                            Level.WARNING,
                            "Fully charged the pack has {actual}, above {limit} DC: touching both poles can kill",
                            VOLTAGE_CLASS)
                    .at("/pack")
                    .actual(new Measure(voltages.fullV(), VOLTAGE))
                    .limit(new Measure(CLASS_LIMIT_V, VOLTAGE))
                    .action(
                            "Covers that need a tool, orange cable, warning signs, no bare terminals; have it built or checked by"
                                    + " someone trained for such voltages."));
        } else {
            equalising(pack, cells, trace);
        }
        if (COUNTS_OF_ANOTHER.getOrDefault(pack.chemistry(), Set.of()).contains(cells)) {
            String other = pack.chemistry() == Chemistry.LFP ? "nmc" : "lfp";
            trace.find(Finding.of(
                            "cells-of-another-chemistry",
                            Level.CAUTION,
                            "{actual} cells in series are usual for " + other + ", not for " + pack.chemistry()
                                    + ": with the limits of the wrong chemistry the pack is overcharged or stays nearly empty",
                            Source.weak("owners' case: 14 cells with lithium iron phosphate limits gave 5.5 of 20 Ah"))
                    .at("/pack/cellsInSeries")
                    .actual(Measure.number(cells))
                    .action("Read the chemistry on the cells and count the cells, not the label of the pack."));
        }
    }

    private static void equalising(Pack pack, int cells, Trace trace) {
        Datum equalise = CellData.of(pack.chemistry()).equaliseV();
        if (equalise != null && cells * equalise.value() > CLASS_LIMIT_V) {
            trace.find(
                    Finding.of(
                                    "equalising-above-60-v",
                                    Level.CAUTION,
                                    "An equalising charge can take the pack to {actual}, above {limit} DC and above what 60 V parts bear",
                                    equalise.source())
                            .at("/pack")
                            .actual(new Measure(cells * equalise.value(), VOLTAGE))
                            .limit(new Measure(CLASS_LIMIT_V, VOLTAGE))
                            .action(
                                    "Disconnect controller and converter before equalising, unless their makers allow the voltage."));
        }
    }

    private static void temperature(Input input, Trace trace) {
        Pack pack = input.pack();
        double celsius = pack.temperatureC();
        Measure actual = new Measure(celsius, TEMPERATURE);
        if (pack.chemistry() == Chemistry.NMC && celsius != TemperatureFactor.RATED_C) {
            trace.find(Finding.of(
                            "temperature-not-counted",
                            Level.CAUTION,
                            "No published law for nmc: the capacity is that of {limit}, at {actual} it may be less",
                            TemperatureFactor.range(pack.chemistry()).source())
                    .at("/pack/temperature")
                    .actual(actual)
                    .limit(new Measure(TemperatureFactor.RATED_C, TEMPERATURE))
                    .action("Take the capacity at this temperature from the maker's sheet."));
        }
        if (pack.chemistry() == Chemistry.LFP && celsius != TemperatureFactor.RATED_C) {
            trace.find(Finding.of(
                            "least-capacity-at-temperature",
                            Level.NOTICE,
                            "At {actual} the capacity is the least that a module maker guarantees; there may be more",
                            TemperatureFactor.range(pack.chemistry()).source())
                    .at("/pack/temperature")
                    .actual(actual));
        }
        if (celsius < 0 && pack.chemistry().isLeadAcid()) {
            trace.find(Finding.of(
                            "below-freezing",
                            Level.CAUTION,
                            "At {actual} the acid of a discharged cell can freeze and burst the case",
                            Source.memory("dilute acid freezes a few degrees below zero, full-strength acid far lower"))
                    .at("/pack/temperature")
                    .actual(actual)
                    .limit(new Measure(0, TEMPERATURE))
                    .action("Use less of the charge and recharge at once."));
        }
        if (celsius < 0
                && !pack.chemistry().isLeadAcid()
                && input.duty() instanceof Route route
                && route.vehicle().regenerationShare() > 0) {
            trace.find(
                    Finding.of(
                                    "regeneration-below-freezing",
                                    Level.WARNING,
                                    "Regeneration charges the pack, and at {actual} lithium cells must not be charged: below {limit} metal"
                                            + " plates out inside them",
                                    Source.published("module maker's specification: no charge below 0 degC"))
                            .at("/drive/regenerationShare")
                            .actual(actual)
                            .limit(new Measure(0, TEMPERATURE))
                            .action(
                                    "Regeneration off, or cells warmed, until they are above freezing; the brakes must hold alone."));
        }
    }

    private static void capacity(Pack pack, Result result, Trace trace) {
        if (pack.chemistry().isLeadAcid() && pack.usableShare() > DEEP_SHARE) {
            trace.find(Finding.of(
                            "deep-discharge",
                            Level.CAUTION,
                            "A share of {actual} of the capacity is used; more than {limit} wears lead-acid out fast",
                            Source.weak(
                                    "trade figures: 0.8 at the most; a vehicle maker's service manual says the same"))
                    .at("/pack/usableShare")
                    .actual(Measure.number(pack.usableShare()))
                    .limit(Measure.number(DEEP_SHARE))
                    .action("Plan daily use on half of the capacity."));
        }
        Double averageA = result.averageCurrentA();
        if (averageA == null) {
            return;
        }
        double stringA = averageA / pack.strings();
        if (pack.string().fitted() && stringA > pack.string().fastestA()) {
            trace.find(
                    Finding.of(
                                    "beyond-capacity-rows",
                                    Level.CAUTION,
                                    "A string gives {actual} on average, the fastest row is {limit}: the capacity is carried on with the last"
                                            + " two rows, and is too high if the exponent grows",
                                    PEUKERT)
                            .at("/pack/capacityRows")
                            .actual(new Measure(stringA, CURRENT))
                            .limit(new Measure(pack.string().fastestA(), CURRENT))
                            .action(
                                    "Add a row of the maker, or a timed discharge of your own, at the current of the vehicle."));
        }
        if (stringA < pack.string().slowestA() && pack.string().exponentBeyond() > 1) {
            trace.find(Finding.of(
                            "below-rated-current",
                            Level.NOTICE,
                            "A string gives {actual} on average, less than the {limit} its capacity is printed for: the printed capacity"
                                    + " is taken, there may be more",
                            PEUKERT)
                    .at("/pack")
                    .actual(new Measure(stringA, CURRENT))
                    .limit(new Measure(pack.string().slowestA(), CURRENT)));
        }
    }

    private static void limits(Input input, Result result, Trace trace) {
        Pack pack = input.pack();
        Limits limits = pack.limits();
        if (!(input.duty() instanceof Route)) {
            double currentA = result.averageCurrentA() == null ? 0 : result.averageCurrentA();
            String pointer = input.duty() instanceof ConstantCurrent ? "/load/current" : "/load/power";
            // a constant load outlasts every peak rating
            over(
                    "over-continuous-discharge",
                    currentA,
                    limits.continuousA(),
                    "for as long as it lasts",
                    pointer,
                    trace);
            if (limits.continuousA() == null) {
                over("over-peak-discharge", currentA, limits.peakA(), "and that is a peak rating", pointer, trace);
            }
        }
        List<LegDemand> legs = result.legs();
        for (int i = 0; i < legs.size(); i++) {
            LegDemand leg = legs.get(i);
            String pointer = "/route/" + i;
            double currentA = leg.drivingCurrentA();
            if (!over("over-peak-discharge", currentA, limits.peakA(), "on this leg", pointer, trace)) {
                sustained(leg, limits, pointer, trace);
            }
            over("over-charge-limit", -currentA, limits.chargeA(), "coming back downhill", pointer, trace);
        }
        Double peakA = result.peakCurrentA();
        double rate = peakA == null ? 0 : peakA * 3600 / pack.ratedC();
        if (!pack.chemistry().isLeadAcid()
                && limits.continuousA() == null
                && limits.peakA() == null
                && rate > HIGH_RATE) {
            trace.find(
                    Finding.of(
                                    "discharge-limit-unknown",
                                    Level.NOTICE,
                                    "The load reaches {actual} times the capacity per hour; many packs cut out above {limit}",
                                    Source.memory("usual continuous rating of battery management in this class"))
                            .at("/pack/limits/continuousDischarge")
                            .actual(Measure.number(rate))
                            .limit(Measure.number(HIGH_RATE))
                            .action(
                                    "Read continuous and peak current, with its seconds, on the maker's sheet and send them as limits."));
        }
    }

    /** A current above the continuous rating is allowed for the seconds of the peak rating. */
    private static void sustained(LegDemand leg, Limits limits, String pointer, Trace trace) {
        Double continuousA = limits.continuousA();
        if (continuousA == null || leg.drivingCurrentA() <= continuousA) {
            return;
        }
        Double seconds = limits.peakS();
        if (limits.peakA() != null && seconds != null && leg.movingTimeS() <= seconds) {
            return;
        }
        over("over-continuous-discharge", leg.drivingCurrentA(), continuousA, "on this leg", pointer, trace);
        if (seconds != null) {
            trace.find(Finding.of(
                            "peak-too-long",
                            Level.WARNING,
                            "The leg takes {actual}, the peak is allowed for {limit}",
                            MAKER)
                    .at(pointer)
                    .actual(new Measure(leg.movingTimeS(), EVENT_TIME))
                    .limit(new Measure(seconds, EVENT_TIME))
                    .action("Slower up this leg, less load, or a pack for more current."));
        }
    }

    private static boolean over(
            String code, double currentA, @Nullable Double limitA, String when, String pointer, Trace trace) {
        if (limitA == null || !(currentA > limitA)) {
            return false;
        }
        boolean charge = code.equals("over-charge-limit");
        trace.find(
                Finding.of(
                                code,
                                Level.WARNING,
                                charge
                                        ? "{actual} " + when
                                                + ", above the {limit} the pack may be charged with: battery management opens, and"
                                                + " with it the electric brake is gone"
                                        : "{actual} " + when
                                                + ", above the {limit} the pack allows: battery management opens and the vehicle"
                                                + " stops with charge left",
                                MAKER)
                        .at(pointer)
                        .actual(new Measure(currentA, CURRENT))
                        .limit(new Measure(limitA, CURRENT))
                        .action(
                                charge
                                        ? "Less regeneration; the mechanical brake must hold alone."
                                        : "Size the pack for discharge current, not only for capacity; or less speed or load."));
        return true;
    }

    private static void sag(Pack pack, Result result, Trace trace) {
        PackVoltages voltages = result.voltages();
        Double volts = result.peakVoltageV();
        Integer cells = pack.cellsInSeries();
        if (voltages == null || volts == null || cells == null || volts >= voltages.cutOffV()) {
            return;
        }
        Integer leg = result.peakLeg();
        trace.find(Finding.of(
                        "cut-off-under-load",
                        Level.WARNING,
                        "Half full, the greatest steady load pulls the pack down to {actual}, below its cut-off of {limit}: it stops"
                                + " there with charge left",
                        Source.derived("V = E - I·r with the nominal voltage; cut-off from the cell data"))
                .at(leg == null ? "/load" : "/route/" + leg)
                .actual(new Measure(volts, VOLTAGE))
                .limit(new Measure(voltages.cutOffV(), VOLTAGE))
                .action("Lower resistance (more strings, larger cells, clean joints) or less power on that stretch."));
    }

    private static void route(Pack pack, Route route, Result result, Trace trace) {
        Vehicle vehicle = route.vehicle();
        List<LegDemand> legs = result.legs();
        for (int i = 0; i < legs.size(); i++) {
            LegDemand leg = legs.get(i);
            Double controllerA = vehicle.controllerA();
            if (controllerA != null && leg.drivingCurrentA() > controllerA) {
                trace.find(Finding.of(
                                "over-controller-limit",
                                Level.CAUTION,
                                "This leg takes {actual}, the controller lets {limit} through: the vehicle goes slower than asked",
                                MAKER)
                        .at("/route/" + i + "/speed")
                        .actual(new Measure(leg.drivingCurrentA(), CURRENT))
                        .limit(new Measure(controllerA, CURRENT))
                        .action("Plan a lower speed on this leg."));
            }
            Double limitMPS = vehicle.speedLimitMPS();
            if (limitMPS != null && leg.leg().speedMPS() > limitMPS) {
                trace.find(Finding.of(
                                "faster-than-limiter",
                                Level.CAUTION,
                                "This leg is planned at {actual}, the controller is set to hold {limit}",
                                MAKER)
                        .at("/route/" + i + "/speed")
                        .actual(new Measure(leg.leg().speedMPS(), SPEED))
                        .limit(new Measure(limitMPS, SPEED)));
            }
        }
        double spentC = 0;
        for (int i = 0; i < legs.size() && spentC >= 0; i++) {
            spentC += legs.get(i).movingChargeC();
            if (spentC < 0) {
                trace.find(
                        Finding.of(
                                        "regeneration-into-full-pack",
                                        Level.CAUTION,
                                        "The route begins downhill: a full pack can't take the {actual} that come back, and must get none",
                                        Source.memory(
                                                "battery management opens on over-voltage: sudden loss of the electric brake"))
                                .at("/route/" + i)
                                .actual(new Measure(-legs.get(i).drivingCurrentA(), CURRENT))
                                .action(
                                        "Start less than full, or set the drive not to regenerate on a full pack; the brakes must hold alone."));
            }
            spentC += legs.get(i).waitingChargeC();
        }
        if (pack.string().exponentBeyond() > 1 && legs.size() > 1) {
            trace.find(Finding.of(
                            "peukert-on-a-mixed-load",
                            Level.NOTICE,
                            "The capacity is taken at the mean current of the route. Peukert's law is for constant current: it makes too"
                                    + " much of the loss where the pack can rest, too little where single legs draw far more",
                            Source.weak("limits of Peukert's law: over-predicts the loss under intermittent load"))
                    .at("/pack"));
        }
        estimate(result, trace);
    }

    private static void estimate(Result result, Trace trace) {
        Double consumption = result.consumptionJPerM();
        if (consumption == null) {
            return;
        }
        double gentle = ConsumptionUnit.WATT_HOUR_PER_KILOMETRE.toSi(62);
        boolean low = consumption < gentle;
        Finding finding = Finding.of(
                        "range-is-an-estimate",
                        Level.NOTICE,
                        low
                                ? "{actual} is less than the {limit} that owners of light, gently driven vehicles get: expect less range"
                                        + " than shown"
                                : "{actual} from rolling resistance, drag and drive efficiency: each can be a third off",
                        Source.weak(
                                "owners' figures for this class: 62 Wh/km gentle and light; 93 to 139 Wh/km on the street"))
                .at("/route")
                .actual(new Measure(consumption, CONSUMPTION))
                .action(
                        "The one measurement that helps most: clamp-meter amperes on the battery cable at steady speed on the level."
                                + " Set drive efficiency and rolling resistance so that the leg's current agrees.");
        trace.find(low ? finding.limit(new Measure(gentle, CONSUMPTION)) : finding);
    }
}
