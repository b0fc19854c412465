package org.axlewright.domain.pack;

import java.util.List;
import java.util.Map;
import org.axlewright.domain.trace.Datum;
import org.axlewright.domain.trace.Source;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;

/** At which temperature a lead-acid cell freezes: by its state of charge, or by the gravity of its acid where that was measured. */
public final class FreezingPoint {

    public static final Source BY_CHARGE_SOURCE = Source.weak(
            "utility-vehicle manual: freezes at -4 degC flat, -18 degC at half, -51 degC full; another: -6 degC at 20 %; straight lines between");

    public static final Source BY_GRAVITY_SOURCE = Source.published(
            "US Army Ordnance course OD1002: freezing point by specific gravity; straight lines between");

    /** Range of the table of gravities. */
    public static final double LEAST_GRAVITY = 1.000;

    public static final double MOST_GRAVITY = 1.280;

    private static final PolynomialSplineFunction BY_CHARGE =
            new LinearInterpolator().interpolate(new double[] {0, 0.20, 0.50, 1}, new double[] {-4, -6, -18, -51});

    private static final PolynomialSplineFunction BY_GRAVITY = read();

    private FreezingPoint() {}

    /** By the state of charge, 0 to 1, degC. */
    public static double ofChargeC(double stateOfCharge) {
        return BY_CHARGE.value(stateOfCharge);
    }

    /** By the specific gravity, {@link #LEAST_GRAVITY} to {@link #MOST_GRAVITY}, degC. */
    public static double ofGravityC(double specificGravity) {
        return BY_GRAVITY.value(specificGravity);
    }

    private static PolynomialSplineFunction read() {
        Map<String, Datum> acid = Datum.table("/pack/freezing.csv").getOrDefault("acid", Map.of());
        List<Map.Entry<String, Datum>> rows = List.copyOf(acid.entrySet());
        double[] gravities = rows.stream()
                .mapToDouble(row -> Double.parseDouble(row.getKey()))
                .toArray();
        double[] points =
                rows.stream().mapToDouble(row -> row.getValue().value()).toArray();
        return new LinearInterpolator().interpolate(gravities, points);
    }
}
