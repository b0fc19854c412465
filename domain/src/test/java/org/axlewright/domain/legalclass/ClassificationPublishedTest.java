package org.axlewright.domain.legalclass;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.quantity.LengthUnit;
import org.axlewright.domain.quantity.MassUnit;
import org.axlewright.domain.quantity.PowerUnit;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.quantity.Unit;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ClassificationPublishedTest {

    private static final String CHECKS = "/legalclass/checks.csv";

    private static List<Case> leastRatings() {
        return PublishedChecks.read(CHECKS, "GVWR lower bound");
    }

    @ParameterizedTest
    @MethodSource("leastRatings")
    void theMakerMayStateNoLessThanTheRegulatorAdds(Case one) {
        Vehicle vehicle = new Vehicle(
                5,
                null,
                new Vehicle.Ratings(null, null, null),
                new Vehicle.Masses(one.in("unloaded"), null, one.in("cargo")),
                (int) one.in("seats"),
                4,
                null,
                new Vehicle.Size(null, null, null, null, null, null),
                null,
                Place.PUBLIC_ROAD,
                Carries.BOTH,
                null,
                null,
                null);
        Classification.Result result = Classification.of(vehicle, Trace.withoutWorking());
        one.check("gvwr_min", Objects.requireNonNull(result.leastRatingKg()));
    }

    private static List<Case> printings() {
        return PublishedChecks.read(CHECKS).stream()
                .filter(one -> one.id().startsWith("M52"))
                .toList();
    }

    /** The table carries both printings; the reference pairs them. */
    @ParameterizedTest
    @MethodSource("printings")
    void bothPrintingsOfALimitStandInTheTable(Case one) {
        boolean speed = one.inputs().containsKey("v_us");
        Aspect aspect = speed ? Aspect.TOP_SPEED : Aspect.GROSS_RATING;
        double us = speed ? SpeedUnit.MILE_PER_HOUR.toSi(one.in("v_us")) : MassUnit.POUND.toSi(one.in("gvwr_us"));
        String key = speed ? "v" : "gvwr";
        List<Condition> printed = VehicleClass.all().stream()
                .filter(type -> type.code().startsWith("us-") && type.kind() == VehicleClass.Kind.ROAD)
                .flatMap(type -> type.conditions().stream())
                .filter(condition -> condition.aspect() == aspect
                        && (Math.abs(condition.lowSi() - us) < 1e-9 || Math.abs(condition.highSi() - us) < 1e-9))
                .toList();
        assertThat(printed).isNotEmpty();
        for (Condition condition : printed) {
            double other = Math.abs(condition.lowSi() - us) < 1e-9 ? condition.highSi() : condition.lowSi();
            one.check(key, speed ? SpeedUnit.KILOMETRE_PER_HOUR.fromSi(other) : other);
        }
    }

    private static List<Case> verdicts() {
        return PublishedChecks.read(CHECKS, "verdict");
    }

    @ParameterizedTest
    @MethodSource("verdicts")
    void aVehicleIsJudgedAsTheRulePrints(Case one) {
        Classification.Result result = Classification.of(vehicle(one), Trace.withWorking());
        Classification.JudgedClass judged = result.classes().stream()
                .filter(other -> other.type().code().equals(one.inText("class")))
                .findFirst()
                .orElseThrow();
        assertThat(judged.verdict().toString())
                .as(one.id() + " " + judged.conditions())
                .isEqualTo(one.outText("verdict"));
    }

    @Test
    void everyClassHasConditionsDutiesAndAnEdition() {
        assertThat(VehicleClass.all()).hasSizeGreaterThan(20);
        for (VehicleClass type : VehicleClass.all()) {
            assertThat(type.conditions()).as(type.code()).isNotEmpty();
            assertThat(type.brings()).as(type.code()).isNotEmpty();
            assertThat(type.source().citation()).as(type.code()).isNotBlank();
        }
    }

    @Test
    void aLowSpeedVehicleCarriesTheWholeListOfTheStandard() {
        VehicleClass lowSpeed = VehicleClass.all().stream()
                .filter(type -> type.code().equals("us-low-speed-vehicle"))
                .findFirst()
                .orElseThrow();
        assertThat(lowSpeed.brings().stream().map(duty -> duty.source().citation()))
                .contains(
                        "49 CFR 571.500 S5(b)(1)",
                        "49 CFR 571.500 S5(b)(2)",
                        "49 CFR 571.500 S5(b)(3)",
                        "49 CFR 571.500 S5(b)(4)",
                        "49 CFR 571.500 S5(b)(5)",
                        "49 CFR 571.500 S5(b)(6)",
                        "49 CFR 571.500 S5(b)(7)");
    }

    private static Vehicle vehicle(Case one) {
        Map<String, String> in = one.inputs();
        Integer seats = in.containsKey("seats") ? (Integer) (int) one.in("seats") : null;
        return new Vehicle(
                Objects.requireNonNull(si(one, "v", SpeedUnit.values())),
                null,
                new Vehicle.Ratings(si(one, "gross", MassUnit.values()), null, null),
                new Vehicle.Masses(
                        si(one, "unladen", MassUnit.values()),
                        si(one, "pack", MassUnit.values()),
                        si(one, "cargo", MassUnit.values())),
                seats,
                in.containsKey("wheels") ? (int) one.in("wheels") : 4,
                si(one, "power", PowerUnit.values()),
                new Vehicle.Size(
                        si(one, "length", LengthUnit.values()),
                        si(one, "width", LengthUnit.values()),
                        si(one, "height", LengthUnit.values()),
                        null,
                        null,
                        si(one, "seat_height", LengthUnit.values())),
                in.containsKey("pull") ? (Double) one.in("pull") : null,
                named(Place.values(), in.getOrDefault("place", "public-road")),
                named(Carries.values(), in.getOrDefault("carries", "both")),
                in.containsKey("enclosed") ? (Boolean) in.get("enclosed").equals("yes") : null,
                null,
                null);
    }

    private static @Nullable Double si(Case one, String key, Unit[] units) {
        String text = one.inputs().get(key);
        if (text == null) {
            return null;
        }
        String token = text.substring(text.indexOf(' ') + 1).strip();
        Unit unit = Arrays.stream(units)
                .filter(candidate -> candidate.toString().equals(token))
                .findFirst()
                .orElseThrow();
        return unit.toSi(one.in(key));
    }

    private static <E extends Enum<E>> E named(E[] values, String token) {
        return Arrays.stream(values)
                .filter(value -> value.toString().equals(token))
                .findFirst()
                .orElseThrow();
    }
}
