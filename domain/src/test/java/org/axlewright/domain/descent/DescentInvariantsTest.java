package org.axlewright.domain.descent;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.descent.Descent.OfState;
import org.axlewright.domain.descent.Descent.Regeneration;
import org.axlewright.domain.descent.Descent.Resistor;
import org.axlewright.domain.descent.Descent.State;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.trace.Finding;
import org.axlewright.domain.trace.Trace;
import org.junit.jupiter.api.Test;

/** What holds of any hill. */
class DescentInvariantsTest {

    private static final Regeneration HALF = new Regeneration(0.5, null, null);

    @Property(seed = "20261125")
    void thePartsAddUpToTheHeight(
            @ForAll @DoubleRange(min = 100, max = 2000) double mass,
            @ForAll @DoubleRange(min = 0.2, max = 40) double fall,
            @ForAll @DoubleRange(min = 0.3, max = 20) double speed,
            @ForAll @DoubleRange(min = 0, max = 0.1) double rolling,
            @ForAll @DoubleRange(min = 0, max = 1) double share,
            @ForAll @DoubleRange(min = 0, max = 1) double stateOfCharge,
            @ForAll @DoubleRange(min = 1, max = 200) double chargeA) {
        for (Resistor resistor : new Resistor[] {null, new Resistor(1.0, null, null), new Resistor(null, null, null)}) {
            OfState state = Hills.down(Hills.hill(
                    Hills.placed(mass),
                    1.4,
                    new Regeneration(share, 1500.0, 120.0),
                    Hills.lfp(5, stateOfCharge, 20.0, chargeA),
                    resistor,
                    Hills.leg(700, fall, speed, rolling),
                    Hills.leg(300, fall / 3, speed / 2, rolling)));
            double height = mass
                    * Constants.STANDARD_GRAVITY
                    * (700 * Math.sin(Math.atan(fall / 100)) + 300 * Math.sin(Math.atan(fall / 300)));

            assertThat(state.energyJ()).isCloseTo(height, within(1e-9 * height));
            assertThat(state.split().totalJ()).isCloseTo(height, within(1e-9 * height));
            assertThat(state.split().frictionBrakesJ()).isNotNegative();
            assertThat(state.split().driveLossJ()).isNotNegative();
            assertThat(state.split().packJ() / 51.2)
                    .isLessThanOrEqualTo((1 - stateOfCharge) * 5 * 3600 * (1 + 1e-12) + 1e-9);
            assertThat(state.alone().energyJ())
                    .isCloseTo(
                            state.split().frictionBrakesJ()
                                    + state.split().driveLossJ()
                                    + state.split().packJ()
                                    + state.split().resistorJ(),
                            within(1e-9 * height));
        }
    }

    @Property(seed = "20261125")
    void steeperAndHeavierTakesMoreHolding(
            @ForAll @DoubleRange(min = 200, max = 1500) double mass,
            @ForAll @DoubleRange(min = 2, max = 30) double fall,
            @ForAll @DoubleRange(min = 1, max = 1.5) double more) {
        OfState one = Hills.down(Hills.hill(Hills.placed(mass), 1.4, HALF, null, null, Hills.leg(500, fall, 4, 0.015)));
        OfState steeper = Hills.down(
                Hills.hill(Hills.placed(mass), 1.4, HALF, null, null, Hills.leg(500, fall * more, 4, 0.015)));
        OfState heavier = Hills.down(
                Hills.hill(Hills.placed(mass * more), 1.4, HALF, null, null, Hills.leg(500, fall, 4, 0.015)));

        assertThat(steeper.greatestW()).isGreaterThanOrEqualTo(one.greatestW());
        assertThat(heavier.greatestW()).isGreaterThanOrEqualTo(one.greatestW());
        assertThat(heavier.alone().rearRiseK())
                .isGreaterThanOrEqualTo(one.alone().rearRiseK());
    }

    @Property(seed = "20261125")
    void fasterDownPutsLessIntoTheBrakesAndMoreIntoTheAir(
            @ForAll @DoubleRange(min = 1, max = 10) double speed,
            @ForAll @DoubleRange(min = 1, max = 1.5) double more) {
        OfState slow =
                Hills.down(Hills.hill(Hills.placed(600), 1.4, HALF, null, null, Hills.leg(500, 12, speed, 0.015)));
        OfState fast = Hills.down(
                Hills.hill(Hills.placed(600), 1.4, HALF, null, null, Hills.leg(500, 12, speed * more, 0.015)));

        assertThat(fast.split().dragJ()).isGreaterThanOrEqualTo(slow.split().dragJ());
        assertThat(fast.alone().energyJ()).isLessThanOrEqualTo(slow.alone().energyJ());
    }

    @Property(seed = "20261125")
    void cuttingTheHillInTwoChangesNothing(
            @ForAll @DoubleRange(min = 0.05, max = 0.95) double cut,
            @ForAll @DoubleRange(min = 0, max = 1) double stateOfCharge) {
        OfState whole = Hills.down(Hills.hill(
                Hills.placed(600),
                1.4,
                HALF,
                Hills.lfp(2, stateOfCharge, 20.0, 40.0),
                null,
                Hills.leg(1000, 12, 4, 0.015)));
        OfState parts = Hills.down(Hills.hill(
                Hills.placed(600),
                1.4,
                HALF,
                Hills.lfp(2, stateOfCharge, 20.0, 40.0),
                null,
                Hills.leg(1000 * cut, 12, 4, 0.015),
                Hills.leg(1000 * (1 - cut), 12, 4, 0.015)));

        assertThat(parts.split().packJ()).isCloseTo(whole.split().packJ(), within(1e-6 * whole.energyJ()));
        assertThat(parts.split().frictionBrakesJ())
                .isCloseTo(whole.split().frictionBrakesJ(), within(1e-6 * whole.energyJ()));
    }

    /** Who leaves the top with the state of charge advised arrives full, and no charge is turned away. */
    @Property(seed = "20261125")
    void theStateOfChargeAdvisedFits(@ForAll @DoubleRange(min = 3, max = 30) double fall) {
        OfState asked = Hills.down(Hills.hill(
                Hills.placed(600), 1.4, HALF, Hills.lfp(20, 0.5, 20.0, null), null, Hills.leg(1000, fall, 4, 0.015)));
        OfState followed = Hills.down(Hills.hill(
                Hills.placed(600),
                1.4,
                HALF,
                Hills.lfp(20, asked.pack().topShare(), 20.0, null),
                null,
                Hills.leg(1000, fall, 4, 0.015)));

        assertThat(followed.pack().bottomShare()).isCloseTo(1, within(1e-12));
        assertThat(followed.split().frictionBrakesJ()).isCloseTo(0, within(1e-9 * followed.energyJ()));
    }

    @Test
    void aFullColdOrMissingPackLeavesItAllToTheBrakes() {
        for (Descent.Pack pack :
                new Descent.Pack[] {Hills.lfp(105, 1.0, 20.0, null), Hills.lfp(105, 0.5, -4.0, null)}) {
            Descent.Input input = Hills.hill(Hills.placed(600), 1.4, HALF, pack, null, Hills.leg(1000, 12, 4, 0.015));
            OfState state = Hills.down(input);

            assertThat(state.split().packJ()).isZero();
            assertThat(state.brakes().energyJ()).isEqualTo(state.alone().energyJ());
        }
    }

    @Test
    void aResistorTakesWhatTheFullPackDoesNot() {
        OfState state = Hills.down(Hills.hill(
                Hills.placed(600),
                1.4,
                HALF,
                Hills.lfp(105, 1.0, 20.0, null),
                new Resistor(1.0, null, 5.0),
                Hills.leg(1000, 12, 4, 0.015)));

        assertThat(state.split().frictionBrakesJ()).isCloseTo(0, within(1e-9 * state.energyJ()));
        assertThat(state.split().resistorJ()).isCloseTo(state.resistor().energyJ(), within(1e-9 * state.energyJ()));
    }

    @Test
    void namesTheFullAndTheColdPack() {
        assertThat(codes(Hills.lfp(105, 0.999, 20.0, 50.0))).contains("full-pack", "pack-disconnects");
        assertThat(codes(Hills.lfp(105, 0.5, -1.0, 50.0))).contains("cold-pack");
        assertThat(codes(Hills.lfp(105, 0.5, 10.0, 10.0))).contains("over-charge-limit");
        assertThat(codes(Hills.lfp(105, null, 10.0, null))).contains("headroom-not-known", "charge-limit-not-known");
        assertThat(codes(Hills.lfp(105, 0.5, 10.0, 100.0)))
                .doesNotContain("full-pack", "cold-pack", "over-charge-limit")
                .contains("brakes-on-one-axle");
    }

    private static List<String> codes(Descent.Pack pack) {
        Trace trace = Trace.withoutWorking();
        Descent.of(Hills.hill(Hills.placed(600), 1.4, HALF, pack, null, Hills.leg(2000, 12, 4, 0.015)), trace);
        return trace.findings().stream().map(Finding::code).toList();
    }

    @Test
    void aHillThatHardlyFallsNeedsTheMotor() {
        OfState state =
                Hills.down(Hills.hill(new State(600, null), 1.4, HALF, null, null, Hills.leg(1000, 1, 5, 0.03)));

        assertThat(state.split().motorAddsJ()).isPositive();
        assertThat(state.greatestW()).isZero();
        assertThat(state.runaway()).isNull();
    }
}
