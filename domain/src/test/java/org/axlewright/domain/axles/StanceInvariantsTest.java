package org.axlewright.domain.axles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.axlewright.domain.trace.Trace;

/** What must hold for every vehicle on two axles. */
class StanceInvariantsTest {

    private static final Trace SILENT = Trace.withoutWorking();
    private static final double CLOSE = 1e-6;

    @Provide
    Arbitrary<Stance> stances() {
        return Combinators.combine(
                        Arbitraries.doubles().between(100, 2000),
                        Arbitraries.doubles().between(1, 4),
                        Arbitraries.doubles().between(0.05, 0.95),
                        Arbitraries.doubles().between(0.1, 1.2))
                .as((mass, wheelbase, share, height) -> new Stance(mass, wheelbase, wheelbase * share, height));
    }

    @Property(seed = "20261125", tries = 200)
    void bothAxlesCarryTheWeightAcrossTheSlopeWhateverTheAcceleration(
            @ForAll("stances") Stance stance,
            @ForAll @DoubleRange(min = -0.7, max = 0.7) double grade,
            @ForAll @DoubleRange(min = -8, max = 8) double acceleration) {
        double sum = stance.frontLoadN(grade, acceleration, SILENT) + stance.rearLoadN(grade, acceleration, SILENT);
        assertThat(sum).isCloseTo(stance.weightN() * Math.cos(grade), within(CLOSE));
    }

    /** What was the front load uphill is the rear load downhill. */
    @Property(seed = "20261125", tries = 200)
    void turnedRoundItCarriesAtTheOtherEnd(
            @ForAll("stances") Stance stance,
            @ForAll @DoubleRange(min = -0.7, max = 0.7) double grade,
            @ForAll @DoubleRange(min = -8, max = 8) double acceleration) {
        Stance turned =
                new Stance(stance.massKg(), stance.wheelbaseM(), stance.wheelbaseM() - stance.xM(), stance.heightM());
        assertThat(turned.rearLoadN(-grade, -acceleration, SILENT))
                .isCloseTo(stance.frontLoadN(grade, acceleration, SILENT), within(CLOSE));
    }

    @Property(seed = "20261125", tries = 200)
    void atTheLimitTheDrivenAxlePushesJustItsLoadTimesTheFriction(
            @ForAll("stances") Stance stance,
            @ForAll @DoubleRange(min = 0.1, max = 0.8) double friction,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double grade) {
        double thrust = stance.thrustLimitN(AxleSet.REAR, friction, grade, SILENT);
        Assume.that(Double.isFinite(thrust));
        double acceleration = thrust / stance.massKg() - stance.gravity() * Math.sin(grade);
        assertThat(friction * stance.rearLoadN(grade, acceleration, SILENT))
                .isCloseTo(thrust, within(1e-6 * Math.max(1, Math.abs(thrust))));
    }

    @Property(seed = "20261125", tries = 200)
    void atTheLimitTheBrakedAxleHoldsJustItsLoadTimesTheFriction(
            @ForAll("stances") Stance stance,
            @ForAll @DoubleRange(min = 0.1, max = 0.8) double friction,
            @ForAll @DoubleRange(min = -0.4, max = 0.4) double grade) {
        double force = stance.brakeLimitN(AxleSet.REAR, friction, grade, SILENT);
        double acceleration = -force / stance.massKg() - stance.gravity() * Math.sin(grade);
        assertThat(friction * stance.rearLoadN(grade, acceleration, SILENT)).isCloseTo(force, within(CLOSE));
    }
}
