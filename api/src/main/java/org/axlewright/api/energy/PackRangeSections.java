package org.axlewright.api.energy;

import static org.axlewright.domain.quantity.Dimension.BODY_AREA;
import static org.axlewright.domain.quantity.Dimension.GRADE;
import static org.axlewright.domain.quantity.Dimension.POWER;
import static org.axlewright.domain.quantity.Dimension.TEMPERATURE;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.section.ConstantLoad;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Leg;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.RoadLoad;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Tyres;
import org.axlewright.domain.energy.PackRange;
import org.axlewright.domain.energy.PackRange.Band;
import org.axlewright.domain.energy.PackRange.ConstantCurrent;
import org.axlewright.domain.energy.PackRange.ConstantPower;
import org.axlewright.domain.energy.PackRange.Duty;
import org.axlewright.domain.energy.PackRange.Limits;
import org.axlewright.domain.energy.PackRange.Route;
import org.axlewright.domain.energy.RouteLeg;
import org.axlewright.domain.energy.Vehicle;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.ResistanceMethod;
import org.axlewright.domain.pack.Sag;
import org.axlewright.domain.pack.TemperatureFactor;
import org.axlewright.domain.quantity.GradeUnit;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.roadload.RollingResistance;
import org.axlewright.domain.roadload.Surface;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections of one request to the checked question, with every default noted. */
final class PackRangeSections {

    /** What is assumed of road and drive, with the ends it may have. */
    private record Span(double typical, double low, double high) {
        static Span known(double value) {
            return new Span(value, value, value);
        }

        boolean assumed() {
            return low < high;
        }
    }

    private static final Span EFFICIENCY = new Span(0.70, 0.60, 0.85);
    private static final Span DRAG_AREA_M2 = new Span(1.4, 1.0, 1.8);

    private final Setup setup;
    private final Resolution resolution;
    private final Set<Surface> noted = EnumSet.noneOf(Surface.class);

    PackRangeSections(Setup setup, Resolution resolution) {
        this.setup = setup;
        this.resolution = resolution;
    }

    PackRange.Input resolve() {
        Pack pack = Objects.requireNonNull(setup.pack(), "pack");
        boolean routed = setup.route() != null && !setup.route().isEmpty();
        ConstantLoad load = setup.load();
        boolean loaded = load != null && (load.current() != null || load.power() != null);
        Integer cells = PackSections.cellsInSeries(pack);
        if (cells == null && (routed || load == null || load.current() == null)) {
            resolution.missing("/pack/cellsInSeries");
        }
        PackRange.Pack checked = pack(pack, cells);
        Duty duty = null;
        if (routed) {
            duty = route();
        } else if (load != null && load.current() != null) {
            duty = new ConstantCurrent(load.current().si());
        } else if (load != null && load.power() != null) {
            duty = new ConstantPower(load.power().si());
        }
        notAnswered(checked, duty);
        resolution.refuseIfFaulty();
        return new PackRange.Input(checked, duty, routed && loaded);
    }

    private PackRange.Pack pack(Pack pack, @Nullable Integer cells) {
        Chemistry chemistry = Objects.requireNonNull(pack.chemistry(), "chemistry");
        CellData cell = CellData.of(chemistry);
        int strings = PackSections.strings(pack, resolution);
        double usableShare = pack.usableShare() != null
                ? pack.usableShare()
                : resolution.assume(
                        "usable-share",
                        "/pack/usableShare",
                        Measure.number(cell.usableShare().value()),
                        "daily use that " + chemistry + " bears for long",
                        cell.usableShare().source());
        double reserveShare = pack.reserveShare() != null
                ? pack.reserveShare()
                : resolution.assume(
                        "no-reserve",
                        "/pack/reserveShare",
                        Measure.number(0),
                        "nothing is kept back unless sent",
                        Source.COMMON_PRACTICE);
        return new PackRange.Pack(
                chemistry,
                cells,
                strings,
                PackSections.string(pack, resolution),
                PackSections.health(pack, resolution),
                usableShare,
                reserveShare,
                resistanceOhm(pack, cells, strings),
                pack.resistance() != null && pack.resistance().method() == ResistanceMethod.AC_1KHZ,
                temperatureC(pack, chemistry),
                limits(pack));
    }

    private double temperatureC(Pack pack, Chemistry chemistry) {
        if (pack.temperature() == null) {
            return resolution.assume(
                    "rated-temperature",
                    "/pack/temperature",
                    new Measure(TemperatureFactor.RATED_C, TEMPERATURE),
                    "temperature at which capacities are printed",
                    Source.COMMON_PRACTICE);
        }
        double celsius = pack.temperature().si();
        TemperatureFactor.Range range = TemperatureFactor.range(chemistry);
        boolean below = celsius < range.fromC();
        if (below || celsius > range.toC()) {
            resolution.refuse(Form.outOfRange(
                    "/pack/temperature/value", pack.temperature(), below ? range.fromC() : range.toC(), below));
        }
        return celsius;
    }

    /** Of the whole pack; null when not sent, or when without cells there is no voltage it could act on. */
    private @Nullable Double resistanceOhm(Pack pack, @Nullable Integer cells, int strings) {
        Pack.InternalResistance sent = pack.resistance();
        if (sent == null || sent.value() == null || cells == null) {
            return null;
        }
        double ohm = sent.value().si();
        if (sent.of() == null) {
            resolution.missing("/pack/resistance/of");
            return null;
        }
        return switch (sent.of()) {
            case CELL -> Sag.packOhm(ohm, cells, strings);
            case BLOCK -> {
                if (pack.blocks() == null || pack.blocks().count() == null) {
                    resolution.missing("/pack/blocks/count");
                    yield null;
                }
                yield Sag.packOhm(ohm, pack.blocks().count(), strings);
            }
            case PACK -> Sag.packOhm(ohm, 1, 1);
        };
    }

    private static Limits limits(Pack pack) {
        Pack.Limits limits = pack.limits();
        if (limits == null) {
            return new Limits(null, null, null, null);
        }
        Pack.Peak peak = limits.peakDischarge();
        return new Limits(
                si(limits.continuousDischarge()),
                peak == null ? null : si(peak.current()),
                peak == null ? null : si(peak.duration()),
                si(limits.charge()));
    }

    private Route route() {
        Span efficiency = efficiency();
        Span dragAreaM2 = dragArea();
        List<Leg> sent = Objects.requireNonNull(setup.route(), "route");
        List<Span> rolling = new ArrayList<>();
        List<Double> grades = new ArrayList<>();
        for (int i = 0; i < sent.size(); i++) {
            rolling.add(rolling(sent.get(i), i));
            grades.add(gradeRad(sent.get(i), i));
        }
        Vehicle vehicle = vehicle(efficiency.typical(), dragAreaM2.typical());
        List<RouteLeg> legs = new ArrayList<>();
        List<RouteLeg> easy = new ArrayList<>();
        List<RouteLeg> hard = new ArrayList<>();
        boolean assumed = efficiency.assumed() || dragAreaM2.assumed();
        for (int i = 0; i < sent.size(); i++) {
            Span span = rolling.get(i);
            assumed |= span.assumed();
            legs.add(leg(sent.get(i), grades.get(i), span.typical()));
            easy.add(leg(sent.get(i), grades.get(i), span.low()));
            hard.add(leg(sent.get(i), grades.get(i), span.high()));
        }
        Band band = assumed
                ? new Band(
                        vehicle.with(efficiency.high(), dragAreaM2.low()),
                        easy,
                        vehicle.with(efficiency.low(), dragAreaM2.high()),
                        hard)
                : null;
        return new Route(vehicle, legs, band);
    }

    private Vehicle vehicle(double efficiency, double dragAreaM2) {
        Drive drive = setup.drive();
        RoadLoad roadLoad = setup.roadLoad();
        double rotating = roadLoad != null && roadLoad.rotatingMassShare() != null
                ? roadLoad.rotatingMassShare()
                : resolution.assume(
                        "rotating-mass",
                        "/roadLoad/rotatingMassShare",
                        Measure.number(0.05),
                        "what wheels, gears and rotor add when the speed changes",
                        Source.published("NPTEL Electric Vehicles, week 4: 5 %"));
        double regeneration = drive != null && drive.regenerationShare() != null
                ? drive.regenerationShare()
                : resolution.assume(
                        "no-regeneration",
                        "/drive/regenerationShare",
                        Measure.number(0),
                        "nothing comes back unless the drive is known to regenerate",
                        Source.COMMON_PRACTICE);
        double accessoriesW = setup.accessories() != null && setup.accessories().power() != null
                ? setup.accessories().power().si()
                : resolution.assume(
                        "no-accessories",
                        "/accessories/power",
                        new Measure(0, POWER),
                        "nothing else on board unless sent; lights alone take 50 to 150 W",
                        Source.memory("lights of this class"));
        Drive.Controller controller = drive == null ? null : drive.controller();
        return new Vehicle(
                MassSections.massAsDrivenKg(setup, resolution),
                rotating,
                dragAreaM2,
                efficiency,
                regeneration,
                accessoriesW,
                controller == null ? null : si(controller.batteryCurrent()),
                drive == null ? null : si(drive.speedLimit()));
    }

    private Span efficiency() {
        Drive drive = setup.drive();
        if (drive != null && drive.efficiency() != null) {
            return Span.known(drive.efficiency());
        }
        resolution.assume(
                "drive-efficiency",
                "/drive/efficiency",
                Measure.number(EFFICIENCY.typical()),
                "controller, motor and axle together, 0.60 to 0.85",
                Source.memory(
                        "brushed motor with a worn axle to a new permanent-magnet drive; no source for this class"));
        return EFFICIENCY;
    }

    private Span dragArea() {
        RoadLoad roadLoad = setup.roadLoad();
        if (roadLoad != null && roadLoad.dragArea() != null) {
            return Span.known(roadLoad.dragArea().si());
        }
        resolution.assume(
                "drag-area",
                "/roadLoad/dragArea",
                new Measure(DRAG_AREA_M2.typical(), BODY_AREA),
                "open vehicle with roof and screen, 1.0 to 1.8 m2; matters little below 25 km/h",
                Source.memory(
                        "frontal area 1.8 to 2.4 m2, drag coefficient 0.6 to 0.8; none published for this class"));
        return DRAG_AREA_M2;
    }

    private Span rolling(Leg leg, int index) {
        RoadLoad roadLoad = setup.roadLoad();
        if (roadLoad != null && roadLoad.rollingResistance() != null) {
            return Span.known(roadLoad.rollingResistance());
        }
        Surface surface = leg.surface() != null
                ? leg.surface()
                : resolution.assume(
                        "surface",
                        "/route/" + index + "/surface",
                        Surface.WORN_ASPHALT,
                        "an ordinary road unless sent",
                        Source.COMMON_PRACTICE);
        Double pressurePa = lowerPressurePa();
        if (surface == Surface.ASPHALT && pressurePa != null) {
            double coefficient = RollingResistance.paved(pressurePa, need(leg.speed()));
            if (noted.add(surface)) {
                note(
                        coefficient,
                        "asphalt, from the lower tyre pressure and the speed",
                        RollingResistance.PRESSURE_AND_SPEED);
            }
            return Span.known(coefficient);
        }
        RollingResistance row = RollingResistance.of(surface);
        Datum typical = row.typical();
        if (noted.add(surface)) {
            note(
                    typical.value(),
                    "surface " + surface + "; sources print " + row.low().value() + " to "
                            + row.high().value(),
                    typical.source());
        }
        return new Span(typical.value(), row.low().value(), row.high().value());
    }

    private void note(double coefficient, String reason, Source source) {
        resolution.assume(
                "rolling-resistance", "/roadLoad/rollingResistance", Measure.number(coefficient), reason, source);
    }

    /** Both axles must be known: the softer tyre rolls harder. */
    private @Nullable Double lowerPressurePa() {
        Tyres tyres = setup.tyres();
        Double front =
                tyres == null || tyres.front() == null ? null : si(tyres.front().pressure());
        Double rear =
                tyres == null || tyres.rear() == null ? null : si(tyres.rear().pressure());
        return front == null || rear == null ? null : (Double) Math.min(front, rear);
    }

    private double gradeRad(Leg leg, int index) {
        return leg.grade() != null
                ? leg.grade().si()
                : resolution.assume(
                        "level",
                        "/route/" + index + "/grade",
                        new Measure(0, GRADE),
                        "a leg without a grade is level",
                        Source.COMMON_PRACTICE);
    }

    private static RouteLeg leg(Leg leg, double gradeRad, double rollingResistance) {
        return new RouteLeg(
                need(leg.distance()),
                gradeRad,
                leg.grade() != null && leg.grade().unit() == GradeUnit.DEGREE,
                need(leg.speed()),
                rollingResistance,
                leg.stops() == null ? 0 : leg.stops(),
                leg.waiting() == null ? 0 : leg.waiting().si(),
                leg.reference());
    }

    private void notAnswered(PackRange.Pack pack, @Nullable Duty duty) {
        if (pack.cellsInSeries() == null) {
            for (String result : List.of(
                    "/nominalVoltage",
                    "/fullVoltage",
                    "/cutOffVoltage",
                    "/nominalEnergy",
                    "/usableEnergy",
                    "/averagePower",
                    "/peakPower")) {
                resolution.notAnswered(result, "/pack/cellsInSeries");
            }
        }
        if (!(duty instanceof Route)) {
            resolution.notAnswered("/range", "/route");
            resolution.notAnswered("/consumption", "/route");
        }
        if (duty == null) {
            for (String result : List.of(
                    "/runtime", "/averagePower", "/averageCurrent", "/dischargeRate", "/peakPower", "/peakCurrent")) {
                resolution.notAnswered(result, "/route", "/load/current", "/load/power");
            }
        } else if (pack.resistanceOhm() == null) {
            resolution.notAnswered("/peakVoltage", "/pack/resistance");
        }
    }

    private static double need(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : quantity.si();
    }
}
