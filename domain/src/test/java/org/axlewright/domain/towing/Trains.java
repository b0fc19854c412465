package org.axlewright.domain.towing;

import java.util.List;
import java.util.Objects;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.Drawbar;
import org.axlewright.domain.axles.Stance;
import org.axlewright.domain.towing.Towing.Bound;
import org.axlewright.domain.towing.Tug.Engine;
import org.axlewright.domain.towing.Tug.Footing;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Trains for the tests. */
final class Trains {

    static final double G = 9.80665;

    /** Rolls so easily that it does not count. */
    static final double SMOOTH = 1e-9;

    private Trains() {}

    static Trailers trailers(double massKg, double rolling, double hitchLoadN) {
        return new Trailers(massKg, 1, rolling, 1, false, null, hitchLoadN, 0);
    }

    static Footing footing(Stance stance, AxleSet driven, AxleSet braked, double friction, Drawbar drawbar) {
        return new Footing(stance, drawbar, driven, braked, friction, null, null);
    }

    static Tug tug(double massKg, double rolling, @Nullable Footing footing, @Nullable Engine engine) {
        return new Tug(massKg, null, rolling, null, footing, engine);
    }

    static Engine engine(double ratio, double radiusM, double efficiency, double ratedTorqueNm) {
        return new Engine(
                ratio,
                radiusM,
                efficiency,
                ratedTorqueNm,
                null,
                ratedTorqueNm,
                27.0,
                27.0,
                false,
                null,
                true,
                150.0,
                200.0,
                0.06);
    }

    static Towing.Result ask(Trailers trailers, @Nullable Tug tug, double acceleration, @Nullable Double gradeRad) {
        return Towing.of(new Towing.Input(trailers, tug, 1.2, acceleration, gradeRad, false), Trace.withoutWorking());
    }

    static double bound(Towing.Result result, Limit limit) {
        List<Bound> found =
                result.bounds().stream().filter(bound -> bound.limit() == limit).toList();
        return found.get(0).massKg();
    }

    static double need(@Nullable Double value) {
        return Objects.requireNonNull(value);
    }
}
