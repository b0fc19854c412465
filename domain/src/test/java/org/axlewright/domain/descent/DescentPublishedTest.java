package org.axlewright.domain.descent;

import java.util.List;
import org.axlewright.domain.PublishedChecks;
import org.axlewright.domain.PublishedChecks.Case;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.descent.Descent.FrictionBrakes;
import org.axlewright.domain.descent.Descent.Leg;
import org.axlewright.domain.descent.Descent.OfState;
import org.axlewright.domain.descent.Descent.Pack;
import org.axlewright.domain.descent.Descent.Regeneration;
import org.axlewright.domain.descent.Descent.Resistor;
import org.axlewright.domain.descent.Descent.State;
import org.axlewright.domain.pack.Chemistry;
import org.axlewright.domain.quantity.EnergyUnit;
import org.axlewright.domain.quantity.SpeedUnit;
import org.axlewright.domain.roadload.BrakeHeat;
import org.axlewright.domain.roadload.RoadLoad;
import org.axlewright.domain.roadload.SpeedPolynomial;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Hills against what is printed. */
class DescentPublishedTest {

    private static final Regeneration NONE = new Regeneration(0, null, null);

    private static List<Case> of(String topic) {
        return PublishedChecks.read("/descent/checks.csv", topic);
    }

    static List<Case> powers() {
        return of("grade power and energy");
    }

    static List<Case> held() {
        return of("held on a grade");
    }

    static List<Case> resistors() {
        return of("resistor");
    }

    static List<Case> longHills() {
        return of("charge of a long hill");
    }

    static List<Case> heats() {
        return of("heat of a hill");
    }

    static List<Case> coasting() {
        return of("steady coasting");
    }

    static List<Case> forces() {
        return of("force at another speed");
    }

    static List<Case> terminals() {
        return of("terminal speed");
    }

    static List<Case> frictions() {
        return of("friction to hold");
    }

    static List<Case> fades() {
        return of("fade voltages");
    }

    static List<Case> bearing() {
        return of("voltage to bear");
    }

    private static Leg fall(Case row, double rolling) {
        double fallRad = Math.atan(row.in("grade") / 100);
        return new Leg(row.in("h") / Math.sin(fallRad), fallRad, row.in("v"), rolling, "/hill");
    }

    @ParameterizedTest
    @MethodSource("powers")
    void heightGivesPowerAndEnergy(Case row) {
        OfState state = Hills.down(Hills.hill(new State(row.in("m"), null), 0, NONE, null, null, fall(row, 0)));
        row.check("p", state.greatestW());
        row.check("e", EnergyUnit.WATT_HOUR.fromSi(state.energyJ()));
    }

    @ParameterizedTest
    @MethodSource("held")
    void rollingTakesItsPart(Case row) {
        OfState state =
                Hills.down(Hills.hill(new State(row.in("m"), null), 0, NONE, null, null, fall(row, row.in("f_r"))));
        row.check("hold", state.greatestW());
        row.check("rolling", state.split().rollingJ() / state.durationS());
        row.check("e", EnergyUnit.WATT_HOUR.fromSi(state.energyJ()));
    }

    @ParameterizedTest
    @MethodSource("resistors")
    void theResistorFollowsFromPowerAndVoltage(Case row) {
        // a hill that pulls with just that power at 5 m/s and all of it coming back
        double fallRad = Math.asin(row.in("p") / 5 / (600 * 9.80665));
        Pack pack = new Pack(Chemistry.LFP, 16, 51.2, row.in("v_max"), null, null, null, null);
        OfState state = Hills.down(Hills.hill(
                new State(600, null),
                0,
                new Regeneration(1, null, null),
                pack,
                new Resistor(null, null, null),
                new Leg(100, fallRad, 5, 0, "/hill")));
        row.check("r", state.resistor().ohm());
    }

    @ParameterizedTest
    @MethodSource("longHills")
    void aLongHillFillsAPack(Case row) {
        double fallRad = 0.05;
        Pack pack = new Pack(Chemistry.NMC, 96, 345.6, 403.2, null, null, null, null);
        OfState state = Hills.down(Hills.hill(
                new State(row.in("m"), null),
                0,
                new Regeneration(row.in("share"), null, null),
                pack,
                null,
                new Leg(1000 * row.in("h") / Math.sin(fallRad), fallRad, 10, 0, "/hill")));
        row.check("e", EnergyUnit.WATT_HOUR.fromSi(state.split().packJ()) / 1000);
    }

    @ParameterizedTest
    @MethodSource("heats")
    void theBrakesTakeTheHeight(Case row) {
        double fallRad = 0.06;
        Descent.Input input = new Descent.Input(
                new State(row.in("m"), null),
                null,
                List.of(new Leg(row.in("h") / Math.sin(fallRad), fallRad, 10, 0, "/hill")),
                0,
                0,
                0.7,
                AxleSet.REAR,
                NONE,
                null,
                null,
                null,
                new FrictionBrakes(AxleSet.REAR, 0.0, null, null),
                1,
                false);
        double heatJ = Hills.down(input).alone().energyJ() * row.in("share");
        Datum metal = new Datum(row.in("c"), Source.COMMON_PRACTICE);
        row.check("rise", BrakeHeat.riseK(heatJ, row.in("m_b"), metal, Trace.withoutWorking()));
    }

    @ParameterizedTest
    @MethodSource("coasting")
    void airHoldsACoastingCyclist(Case row) {
        double pullN = RoadLoad.gradeN(row.in("m"), Math.toRadians(row.in("theta")), row.in("g"));
        double v = SpeedUnit.KILOMETRE_PER_HOUR.toSi(row.in("v"));
        double c = pullN / (v * v);
        row.check("c", c);
    }

    @ParameterizedTest
    @MethodSource("forces")
    void fasterTakesAPush(Case row) {
        double pullN = RoadLoad.gradeN(row.in("m"), Math.toRadians(row.in("theta")), row.in("g"));
        SpeedPolynomial load = new SpeedPolynomial(-pullN, 0, row.in("c"));
        row.check("f", load.forceN(SpeedUnit.KILOMETRE_PER_HOUR.toSi(row.in("v"))));
    }

    @ParameterizedTest
    @MethodSource("terminals")
    void runsAwayToTheSpeedThatTheAirHolds(Case row) {
        OfState state = Hills.down(Hills.hill(
                new State(row.in("m"), null),
                row.in("cda"),
                NONE,
                null,
                null,
                new Leg(500, Math.toRadians(row.in("theta")), 2, row.in("f_r"), "/hill")));
        row.check("v", state.runaway().terminalMPS());
    }

    @ParameterizedTest
    @MethodSource("frictions")
    void oneAxleTakesItsFriction(Case row) {
        State state = new State(650, new Stance(650, row.in("l"), row.in("l_f"), row.in("h")));
        OfState down = Hills.down(Hills.hill(state, 0, NONE, null, null, Hills.leg(100, row.in("grade"), 4, 0)));
        row.check("mu", down.adhesion().byMotor());
        row.check("mu", down.adhesion().byBrakes());
    }

    @ParameterizedTest
    @MethodSource("fades")
    void regenerationFadesByTheCell(Case row) {
        OfState state = Hills.down(Hills.hill(
                Hills.placed(600), 0, NONE, Hills.lfp(105, 0.9, 20.0, null), null, Hills.leg(100, 10, 4, 0)));
        row.check("from", state.pack().fadeFromV());
        row.check("to", state.pack().fadeToV());
    }

    @ParameterizedTest
    @MethodSource("bearing")
    void oneCellTooManyIsTooMuch(Case row) {
        Pack pack = new Pack(Chemistry.NMC, 12, 43.2, row.in("full"), null, null, null, null);
        OfState state = Hills.down(Hills.hill(Hills.placed(600), 0, NONE, pack, null, Hills.leg(100, 10, 4, 0)));
        row.check("bear", state.pack().toBearV());
    }
}
