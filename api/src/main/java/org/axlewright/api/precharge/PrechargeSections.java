package org.axlewright.api.precharge;

import static org.axlewright.domain.quantity.Dimension.EVENT_TIME;
import static org.axlewright.domain.quantity.Dimension.VOLTAGE;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Precharge;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.precharge.Closer;
import org.axlewright.domain.precharge.PrechargeInput;
import org.axlewright.domain.precharge.PrechargeInput.Attempts;
import org.axlewright.domain.precharge.PrechargeInput.Coil;
import org.axlewright.domain.precharge.PrechargeInput.Held;
import org.axlewright.domain.precharge.PrechargeInput.Reading;
import org.axlewright.domain.precharge.PrechargePart;
import org.axlewright.domain.precharge.PrechargeSizing;
import org.axlewright.domain.precharge.Suppression;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** Reads the precharge path, and of pack and controller what concerns it. */
final class PrechargeSections {

    private static final double CLOSING_SHARE = 0.95;
    private static final double ONE_TIME_CONSTANT = -Math.expm1(-1);
    private static final double TIMEOUT_S = 1;
    private static final double TIMEOUT_FACTOR = 3;
    private static final double DIODE_V = 0.8;

    private static final Source TIMEOUT_PRACTICE = Source.memory("timeout of 2 to 3 times the expected time");

    private PrechargeSections() {}

    static PrechargeInput resolve(Setup setup, Resolution resolution) {
        Pack pack = Objects.requireNonNull(setup.pack());
        Integer cells = PackSections.cellsInSeries(pack);
        if (cells == null) {
            resolution.missing("/pack/cellsInSeries");
        }
        Precharge sent = setup.precharge() != null
                ? setup.precharge()
                : new Precharge(null, null, null, null, null, null, null, null, null, null);
        Precharge.Resistor resistor = sent.resistor();
        Double ohm = resistor == null ? null : si(resistor.resistance());
        Reading reading = reading(sent.measured(), resolution);
        Double farad = capacitance(sent, setup.drive());
        double share = sent.closingShare() != null
                ? sent.closingShare()
                : resolution.assume(
                        "closing-share",
                        "/precharge/closingShare",
                        Measure.number(CLOSING_SHARE),
                        "the contactor closes at 95 to 98 % of the pack",
                        Source.memory("precharge practice, 95 to 98 %"));
        Double known = farad != null ? farad : reading == null ? null : (Double) PrechargeSizing.capacitanceF(reading);
        Double timeout = timeout(sent, ohm, known, share, resolution);
        List<String> lacking = new ArrayList<>();
        if (known == null) {
            lacking.addAll(List.of("/precharge/capacitance", "/drive/controller/capacitance", "/precharge/measured"));
            List.of("/capacitance", "/pulseEnergy", "/mostResistance", "/suggestedResistance", "/suggestedPowerRating")
                    .forEach(result -> resolution.notAnswered(result, lacking));
        }
        if (known == null) {
            List.of("/timeConstant", "/timeTo95", "/timeTo99", "/timeToClosing", "/voltageLeft")
                    .forEach(result -> resolution.notAnswered(result, lacking));
        }
        if (ohm == null && known == null) {
            List.of("/resistance", "/peakCurrent", "/peakPower", "/holdPower", "/holdEnergy")
                    .forEach(result -> resolution.notAnswered(result, "/precharge/resistor/resistance"));
        }
        if (timeout == null && ohm != null) {
            List.of("/timeout", "/holdEnergy").forEach(result -> resolution.notAnswered(result, "/precharge/timeout"));
        }
        if (sent.currentLimit() == null) {
            resolution.notAnswered("/leastResistance", "/precharge/currentLimit");
        }
        if (resistor == null || resistor.resistance() == null || resistor.powerRating() == null) {
            resolution.notAnswered(
                    "/lastingCurrent", "/precharge/resistor/resistance", "/precharge/resistor/powerRating");
        }
        Attempts attempts = attempts(sent.attempts(), resolution);
        if (attempts == null || known == null) {
            resolution.notAnswered("/dutyPower", attempts == null ? List.of("/precharge/attempts") : lacking);
        }
        return new PrechargeInput(
                Objects.requireNonNull(pack.chemistry()),
                cells == null ? 1 : cells,
                farad,
                reading,
                resistor == null || resistor.part() == null ? PrechargePart.RESISTOR : resistor.part(),
                ohm,
                resistor == null ? null : si(resistor.powerRating()),
                resistor == null ? null : si(resistor.pulseEnergy()),
                share,
                timeout,
                sent.timeout() != null,
                si(sent.currentLimit()),
                attempts,
                held(sent.heldLoad(), resolution),
                closers(sent.closedBy()),
                coil(sent.coil(), resolution));
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : (Double) quantity.si();
    }

    private static @Nullable Double capacitance(Precharge sent, @Nullable Drive drive) {
        if (sent.capacitance() != null) {
            return sent.capacitance().si();
        }
        // a reading in place counts everything behind the contactor, a data sheet the controller alone
        if (sent.measured() != null || drive == null || drive.controller() == null) {
            return null;
        }
        return si(drive.controller().capacitance());
    }

    private static @Nullable Double timeout(
            Precharge sent, @Nullable Double ohm, @Nullable Double farad, double share, Resolution resolution) {
        if (sent.timeout() != null) {
            return sent.timeout().si();
        }
        if (ohm == null) {
            return resolution.assume(
                    "timeout",
                    "/precharge/timeout",
                    new Measure(TIMEOUT_S, EVENT_TIME),
                    "a second between key and contactor",
                    Source.COMMON_PRACTICE);
        }
        if (farad == null) {
            return null;
        }
        return resolution.assume(
                "timeout",
                "/precharge/timeout",
                new Measure(TIMEOUT_FACTOR * PrechargeSizing.timeToS(ohm * farad, share), EVENT_TIME),
                "three times the expected time",
                TIMEOUT_PRACTICE);
    }

    private static @Nullable Reading reading(Precharge.@Nullable CapacitorReading sent, Resolution resolution) {
        if (sent == null) {
            return null;
        }
        if (sent.resistance() == null) {
            resolution.missing("/precharge/measured/resistance");
        }
        if (sent.time() == null) {
            resolution.missing("/precharge/measured/time");
        }
        if (sent.resistance() == null || sent.time() == null) {
            return null;
        }
        double share = sent.share() != null
                ? sent.share()
                : resolution.assume(
                        "one-time-constant",
                        "/precharge/measured/share",
                        Measure.number(ONE_TIME_CONSTANT),
                        "the time is taken to be the time constant",
                        Source.derived("1 − 1/e"));
        return new Reading(sent.resistance().si(), sent.time().si(), share);
    }

    private static @Nullable Attempts attempts(Precharge.@Nullable Attempts sent, Resolution resolution) {
        if (sent == null) {
            return null;
        }
        if (sent.count() == null) {
            resolution.missing("/precharge/attempts/count");
        }
        if (sent.period() == null) {
            resolution.missing("/precharge/attempts/period");
        }
        return sent.count() == null || sent.period() == null
                ? null
                : new Attempts(sent.count(), sent.period().si());
    }

    /** Two loads are a contradiction, and refused with the form. */
    private static @Nullable Held held(Precharge.@Nullable HeldLoad sent, Resolution resolution) {
        if (sent == null) {
            return null;
        }
        if (sent.power() == null && sent.resistance() == null) {
            resolution.missing("/precharge/heldLoad/power");
            return null;
        }
        return new Held(si(sent.power()), si(sent.resistance()));
    }

    private static Set<Closer> closers(@Nullable List<Closer> sent) {
        return sent == null || sent.isEmpty() ? Set.of() : EnumSet.copyOf(sent);
    }

    private static @Nullable Coil coil(Precharge.@Nullable Coil sent, Resolution resolution) {
        if (sent == null) {
            return null;
        }
        String pointer = "/precharge/coil";
        Double supply = si(sent.supplyVoltage());
        Double ohm = si(sent.resistance());
        Double current = si(sent.current());
        if (sent.inductance() == null) {
            resolution.missing(pointer + "/inductance");
        }
        if (current == null && ohm == null) {
            resolution.missing(pointer + "/current");
        } else if (current == null && supply == null) {
            resolution.missing(pointer + "/supplyVoltage");
        }
        if (current == null && ohm != null && supply != null) {
            current = supply / ohm;
        } else if (ohm == null && current != null && supply != null) {
            ohm = supply / current;
        }
        if (sent.inductance() == null || current == null) {
            return null;
        }
        Suppression suppression = sent.suppression();
        if (suppression == null) {
            resolution.notAnswered("/coil/peakVoltage", pointer + "/suppression");
            resolution.notAnswered("/coil/release", pointer + "/suppression");
        } else {
            coilUnknown(sent, suppression, ohm, pointer, resolution);
        }
        return new Coil(
                sent.inductance().si(),
                current,
                ohm,
                supply,
                si(sent.openingTime()),
                suppression,
                suppression == null || suppression == Suppression.NONE
                        ? null
                        : clamp(sent, suppression, supply, pointer, resolution));
    }

    private static void coilUnknown(
            Precharge.Coil sent, Suppression suppression, @Nullable Double ohm, String pointer, Resolution resolution) {
        List<String> peak = new ArrayList<>();
        List<String> release = new ArrayList<>();
        if (sent.supplyVoltage() == null) {
            peak.add(pointer + "/supplyVoltage");
        }
        if (suppression == Suppression.NONE) {
            if (sent.openingTime() == null) {
                peak.add(pointer + "/openingTime");
                release.add(pointer + "/openingTime");
            }
        } else {
            if (ohm == null) {
                release.add(pointer + "/resistance");
            }
            if (suppression != Suppression.DIODE && sent.clampVoltage() == null && sent.supplyVoltage() == null) {
                peak.add(pointer + "/clampVoltage");
                release.add(pointer + "/clampVoltage");
            }
        }
        resolution.notAnswered("/coil/peakVoltage", peak);
        resolution.notAnswered("/coil/release", release);
    }

    private static @Nullable Double clamp(
            Precharge.Coil sent,
            Suppression suppression,
            @Nullable Double supply,
            String pointer,
            Resolution resolution) {
        if (sent.clampVoltage() != null) {
            return sent.clampVoltage().si();
        }
        if (suppression == Suppression.DIODE) {
            return resolution.assume(
                    "diode-voltage",
                    pointer + "/clampVoltage",
                    new Measure(DIODE_V, VOLTAGE),
                    "forward voltage of a silicon diode",
                    Source.memory("data sheets of silicon rectifiers, 0.7 to 1 V"));
        }
        return supply == null
                ? null
                : (Double) resolution.assume(
                        "suppressor-voltage",
                        pointer + "/clampVoltage",
                        new Measure(2 * supply, VOLTAGE),
                        "twice the supply, for a fast release",
                        Source.COMMON_PRACTICE);
    }
}
