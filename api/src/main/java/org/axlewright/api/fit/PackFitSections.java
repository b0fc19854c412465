package org.axlewright.api.fit;

import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Accessories;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.fit.CellCounts;
import org.axlewright.domain.fit.CoilSupply;
import org.axlewright.domain.fit.FitInput;
import org.axlewright.domain.pack.AtTemperature;
import org.axlewright.domain.pack.CellData;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.pack.ResistanceMethod;
import org.axlewright.domain.pack.Sag;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From the sections pack, drive, charger and accessories to the parts that are to fit, with every default noted. */
final class PackFitSections {

    private static final double DRIVE_EFFICIENCY = 0.70;
    private static final double CONVERTER_EFFICIENCY = 0.90;
    private static final double LEAST_COIL = 0.85;
    private static final double MOST_COIL = 1.10;
    private static final Source COIL =
            Source.memory("IEC 60947-4-1: contactors close from 85 to 110 % of the rated coil voltage");

    private final Setup setup;
    private final Resolution resolution;

    PackFitSections(Setup setup, Resolution resolution) {
        this.setup = setup;
        this.resolution = resolution;
    }

    FitInput resolve() {
        Pack sent = Objects.requireNonNull(setup.pack(), "pack");
        Integer cells = PackSections.cellsInSeries(sent);
        if (cells == null) {
            resolution.refuse(cellsDecide(sent));
        }
        Double ohm = resistanceOhm(sent, cells);
        resolution.refuseIfFaulty();
        FitInput.Pack pack = pack(sent, Objects.requireNonNull(cells), ohm);
        Drive drive = setup.drive();
        FitInput.Controller controller = drive == null ? null : controller(drive);
        FitInput.Motor motor = drive == null ? null : motor(drive);
        Accessories accessories = setup.accessories();
        FitInput.Converter converter =
                accessories == null || accessories.converter() == null ? null : converter(accessories.converter());
        FitInput input = new FitInput(
                pack,
                controller,
                motor,
                motor == null || motor.powerW() == null ? null : (Double) efficiency(drive),
                setup.charger() == null
                        ? null
                        : new FitInput.Charger(
                                si(setup.charger().endVoltage()),
                                setup.charger().profile(),
                                si(setup.charger().startVoltage()),
                                si(setup.charger().current()),
                                si(setup.charger().power())),
                converter,
                accessories == null || accessories.contactor() == null
                        ? null
                        : contactor(accessories.contactor(), pack, converter),
                accessories == null || accessories.tap() == null
                        ? null
                        : new FitInput.Tap(
                                accessories.tap().blocks(),
                                si(accessories.tap().current()),
                                si(accessories.tap().timePerDay())));
        notAnswered(input);
        return input;
    }

    /** Lithium blocks have a voltage by their maker's taste: what is known of it is told with the question. */
    private static Fault cellsDecide(Pack pack) {
        Chemistry chemistry = Objects.requireNonNull(pack.chemistry(), "chemistry");
        String message =
                "/pack/cellsInSeries is needed and missing: the voltage on a lithium block does not tell its cells";
        if (pack.blocks() != null
                && pack.blocks().voltage() != null
                && pack.blocks().count() != null) {
            double labelV = pack.blocks().voltage().si();
            int count = pack.blocks().count();
            double fullV = CellData.of(chemistry).fullV().value();
            String counts = CellCounts.soldAs(chemistry, labelV).stream()
                    .map(perBlock -> perBlock * count + " cells (" + hundredths(perBlock * count * fullV) + " V full)")
                    .collect(Collectors.joining(" or "));
            if (!counts.isEmpty()) {
                message += ", here " + counts;
            }
        }
        return new Fault("/pack/cellsInSeries", "missing", message + "; count the cells in series", null, null);
    }

    private static double hundredths(double volts) {
        return Math.rint(volts * 100) / 100;
    }

    private @Nullable Double resistanceOhm(Pack pack, @Nullable Integer cells) {
        Pack.InternalResistance sent = pack.resistance();
        if (sent == null || sent.value() == null || cells == null) {
            return null;
        }
        if (sent.of() == null) {
            resolution.missing("/pack/resistance/of");
            return null;
        }
        int strings = pack.strings() == null ? 1 : pack.strings();
        double ohm = sent.value().si();
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

    private FitInput.Pack pack(Pack pack, int cells, @Nullable Double ohm) {
        return new FitInput.Pack(
                Objects.requireNonNull(pack.chemistry(), "chemistry"),
                cells,
                PackSections.strings(pack, resolution),
                pack.blocks() == null
                        ? null
                        : new FitInput.Blocks(
                                pack.blocks().count(), si(pack.blocks().voltage())),
                capacityC(pack),
                ohm,
                pack.resistance() != null && pack.resistance().method() == ResistanceMethod.AC_1KHZ,
                si(pack.temperature()),
                pack.limits() == null ? FitInput.Limits.NONE : limits(pack.limits()),
                si(pack.mass()),
                pack.mixed() != null && Boolean.TRUE.equals(pack.mixed().ages()),
                pack.mixed() != null && Boolean.TRUE.equals(pack.mixed().types()));
    }

    /** What the label says; of a maker's rows the one that gives most. */
    private static @Nullable Double capacityC(Pack pack) {
        if (pack.capacity() != null) {
            return pack.capacity().si();
        }
        double mostC = 0;
        for (Pack.CapacityRow row : pack.capacityRows() == null ? List.<Pack.CapacityRow>of() : pack.capacityRows()) {
            if (row.current() != null && row.time() != null) {
                mostC = Math.max(mostC, row.current().si() * row.time().si());
            }
        }
        return mostC > 0 ? (Double) mostC : null;
    }

    private FitInput.Limits limits(Pack.Limits limits) {
        List<AtTemperature> rows = PackSections.byTemperature(limits, resolution);
        resolution.refuseIfFaulty();
        Pack.Peak peak = limits.peakDischarge();
        return new FitInput.Limits(
                si(limits.continuousDischarge()),
                peak == null ? null : si(peak.current()),
                peak == null ? null : si(peak.duration()),
                si(limits.charge()),
                si(limits.minimumChargeTemperature()),
                si(limits.maximumChargeTemperature()),
                rows,
                limits.seriesLimit(),
                si(limits.overVoltage()),
                si(limits.underVoltage()));
    }

    private static FitInput.@Nullable Controller controller(Drive drive) {
        Drive.Controller controller = drive.controller();
        if (controller == null) {
            return null;
        }
        Double regenerationA = si(controller.regenerationCurrent());
        boolean regenerates = regenerationA != null
                ? regenerationA > 0
                : (controller.regenerationTorque() != null
                                && controller.regenerationTorque().si() > 0)
                        || (drive.regenerationShare() != null && drive.regenerationShare() > 0);
        return new FitInput.Controller(
                si(controller.batteryCurrent()),
                si(controller.motorCurrent()),
                si(controller.minimumVoltage()),
                si(controller.maximumVoltage()),
                si(controller.capacitorVoltage()),
                regenerates,
                regenerationA);
    }

    private static FitInput.@Nullable Motor motor(Drive drive) {
        Drive.Motor motor = drive.motor();
        return motor == null
                ? null
                : new FitInput.Motor(
                        si(motor.voltage()),
                        si(motor.power()),
                        si(motor.ratedCurrent()),
                        si(motor.speed()),
                        si(motor.maximumSpeed()),
                        drive.controller() == null
                                ? null
                                : si(drive.controller().speedCap()));
    }

    /** Up to the wheel: the loss of the reduction is counted in, so the current errs to the high side. */
    private double efficiency(@Nullable Drive drive) {
        return drive != null && drive.efficiency() != null
                ? drive.efficiency()
                : resolution.assume(
                        "drive-efficiency",
                        "/drive/efficiency",
                        Measure.number(DRIVE_EFFICIENCY),
                        "controller, motor and axle together, 0.60 to 0.85",
                        Source.memory(
                                "brushed motor with a worn axle to a new permanent-magnet drive; no source for this class"));
    }

    private FitInput.Converter converter(Accessories.Converter converter) {
        boolean loaded =
                converter.load() != null || (converter.loadCurrent() != null && converter.outputVoltage() != null);
        double efficiency = CONVERTER_EFFICIENCY;
        if (converter.efficiency() != null) {
            efficiency = converter.efficiency();
        } else if (loaded) {
            resolution.assume(
                    "converter-efficiency",
                    "/accessories/converter/efficiency",
                    Measure.number(CONVERTER_EFFICIENCY),
                    "usual for a switching converter at half load",
                    Source.memory("usual in makers' data sheets: 0.85 to 0.95"));
        }
        return new FitInput.Converter(
                si(converter.minimumVoltage()),
                si(converter.maximumVoltage()),
                si(converter.outputVoltage()),
                si(converter.outputCurrent()),
                efficiency,
                si(converter.load()),
                si(converter.loadCurrent()));
    }

    private FitInput.Contactor contactor(
            Accessories.Contactor contactor, FitInput.Pack pack, FitInput.@Nullable Converter converter) {
        Double coilV = si(contactor.coilVoltage());
        return new FitInput.Contactor(
                coilEnd(contactor.minimumCoilVoltage(), coilV, LEAST_COIL, "minimumCoilVoltage"),
                coilEnd(contactor.maximumCoilVoltage(), coilV, MOST_COIL, "maximumCoilVoltage"),
                supply(contactor, coilV, pack, converter),
                si(contactor.ratedVoltage()),
                si(contactor.ratedCurrent()));
    }

    private @Nullable Double coilEnd(@Nullable Quantity sent, @Nullable Double coilV, double share, String field) {
        if (sent != null || coilV == null) {
            return si(sent);
        }
        return resolution.assume(
                share < 1 ? "least-coil-voltage" : "most-coil-voltage",
                "/accessories/contactor/" + field,
                new Measure(share * coilV, VOLTAGE),
                "of the rated coil voltage",
                COIL);
    }

    private CoilSupply supply(
            Accessories.Contactor contactor,
            @Nullable Double coilV,
            FitInput.Pack pack,
            FitInput.@Nullable Converter converter) {
        if (contactor.coilSupply() != null) {
            return contactor.coilSupply();
        }
        Double outputV = converter == null ? null : converter.outputV();
        double nominalV =
                pack.cells() * CellData.of(pack.chemistry()).nominalV().value();
        boolean fromConverter =
                coilV != null && outputV != null && Math.abs(coilV - outputV) < Math.abs(coilV - nominalV);
        return resolution.assume(
                "coil-supply",
                "/accessories/contactor/coilSupply",
                fromConverter ? CoilSupply.CONVERTER : CoilSupply.PACK,
                "the nearer in voltage of pack and converter",
                Source.COMMON_PRACTICE);
    }

    private void notAnswered(FitInput input) {
        FitInput.Controller controller = input.controller();
        FitInput.Pack pack = input.pack();
        List<String> sag = new ArrayList<>();
        if (pack.resistanceOhm() == null) {
            sag.add("/pack/resistance");
        }
        List<String> loaded = new ArrayList<>(sag);
        if (controller == null || controller.batteryA() == null) {
            loaded.add("/drive/controller/batteryCurrent");
        }
        resolution.notAnswered("/voltages/loaded", loaded);
        if (controller != null && controller.regenerates()) {
            List<String> regenerating = new ArrayList<>(sag);
            if (controller.regenerationA() == null) {
                regenerating.add("/drive/controller/regenerationCurrent");
            }
            resolution.notAnswered("/voltages/regenerating", regenerating);
        }
        if (pack.stringCapacityC() == null) {
            for (String result : List.of("/energy", "/mass", "/currents/dischargeRate")) {
                resolution.notAnswered(result, "/pack/capacity");
            }
        }
        if (input.motor() != null && input.motor().powerW() == null) {
            resolution.notAnswered("/currents/ratedPower", "/drive/motor/power");
        }
        if (!pack.limits().byTemperature().isEmpty() && pack.temperatureC() == null) {
            resolution.notAnswered("/currents/chargeLimit", "/pack/temperature");
            resolution.notAnswered("/currents/continuousLimit", "/pack/temperature");
        }
        List<String> parts = new ArrayList<>();
        if (controller == null) {
            parts.add("/drive/controller");
        }
        if (input.motor() == null) {
            parts.add("/drive/motor");
        }
        if (input.charger() == null) {
            parts.add("/charger");
        }
        if (input.converter() == null) {
            parts.add("/accessories/converter");
        }
        if (input.contactor() == null) {
            parts.add("/accessories/contactor");
        }
        resolution.notAnswered("/pairs", parts);
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : (Double) quantity.si();
    }
}
