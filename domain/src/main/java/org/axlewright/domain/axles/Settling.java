package org.axlewright.domain.axles;

import static org.axlewright.domain.quantity.Constants.STANDARD_GRAVITY;
import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.LOAD;

import org.axlewright.domain.check.Check;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Step;
import org.axlewright.domain.trace.Symbol;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * How far springs and tyres bring the centre of gravity down, against the vehicle as its heights were measured. What hangs below the
 * springs moves with the tyres only; at the bump stops the springs give no more. Small pitch.
 */
public record Settling(End front, End rear) {

    private static final Step DROP = Step.of(
            "Δh",
            "what springs and tyres take off the height of the centre of gravity",
            "Δh = [W_s,f·s_f + W_f·τ_f + W_s,r·s_r + W_r·τ_r]/(W_f + W_r), W_s the load on the springs, s = ΔW/K up to the bump stop, τ = ΔW/K_t in the tyres",
            CLEARANCE,
            Source.derived("statics of a vehicle on springs"),
            new Symbol("W_s,f", LOAD),
            new Symbol("s_f", CLEARANCE),
            new Symbol("W_f", LOAD),
            new Symbol("τ_f", CLEARANCE),
            new Symbol("W_s,r", LOAD),
            new Symbol("s_r", CLEARANCE),
            new Symbol("W_r", LOAD),
            new Symbol("τ_r", CLEARANCE));

    /**
     * One axle.
     *
     * @param foundN its load when the heights were measured, N
     * @param unsprungKg what the springs don't carry, kg
     * @param freeTravelM wheel travel before the bump stop then, m; null when not known
     */
    public record End(
            AxleSprings springs,
            double foundN,
            double unsprungKg,
            @Nullable Double freeTravelM) {
        public End {
            Check.finite(foundN, "load as found");
            Check.notNegative(unsprungKg, "unsprung mass");
        }

        private double travelM(double loadN) {
            double travel = springs.suspensionTravelM(loadN - foundN);
            return freeTravelM == null ? travel : Math.min(travel, freeTravelM);
        }

        private double sprungN(double loadN) {
            return loadN - unsprungKg * STANDARD_GRAVITY;
        }
    }

    /**
     * Drop of the centre of gravity, m; negative when it rises.
     *
     * @param frontN load of the front axle now, N
     * @param rearN load of the rear axle now, N; above zero with the front one
     */
    public double dropM(double frontN, double rearN, Trace trace) {
        Check.positive(frontN + rearN, "weight");
        double frontSprung = front.sprungN(frontN);
        double rearSprung = rear.sprungN(rearN);
        double frontTravel = front.travelM(frontN);
        double rearTravel = rear.travelM(rearN);
        double frontTyre = front.springs.tyreTravelM(frontN - front.foundN);
        double rearTyre = rear.springs.tyreTravelM(rearN - rear.foundN);
        return trace.note(
                DROP,
                (frontSprung * frontTravel + frontN * frontTyre + rearSprung * rearTravel + rearN * rearTyre)
                        / (frontN + rearN),
                frontSprung,
                frontTravel,
                frontN,
                frontTyre,
                rearSprung,
                rearTravel,
                rearN,
                rearTyre);
    }
}
