package org.axlewright.domain.lift;

import static org.axlewright.domain.check.Check.positive;

import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.jspecify.annotations.Nullable;

/**
 * A double wishbone in front view: a four-bar linkage of lower arm, knuckle and upper arm, closed by the frame. The upper arm follows
 * the lower one in closed form, on the branch on which the linkage was found: the triangle of lower ball joint, upper ball joint and
 * upper inner joint keeps its sense of turning. Source of the closure and of the construction: four-bar kinematics, [derived].
 */
public final class DoubleWishbone {

    /** Places looked at on the way of the lower arm before the root finder takes over. */
    private static final int SEARCH_STEPS = 180;

    private static final double ANGLE_ACCURACY = 1e-13;
    private static final int LARGEST_NUMBER_OF_EVALUATIONS = 100;

    /** Heights closer than this are the same to a tape measure and to the arithmetic, m. */
    private static final double SAME_HEIGHT = 1e-12;

    /** Sine of the angle between knuckle and upper arm below which the linkage has no branch of its own. */
    private static final double DEAD_POINT = 1e-4;

    private final Point lowerInner;
    private final Point lowerOuter;
    private final Point upperInner;
    private final Point upperOuter;
    private final double lowerLength;
    private final double upperLength;
    private final double knuckleLength;
    private final double foundLowerAngle;
    private final double foundKnuckleAngle;
    private final double sense;
    private final boolean deadPoint;

    /** A linkage as found: inner joints at the frame, outer joints at the knuckle. */
    public DoubleWishbone(Point lowerInner, Point lowerOuter, Point upperInner, Point upperOuter) {
        this.lowerInner = lowerInner;
        this.lowerOuter = lowerOuter;
        this.upperInner = upperInner;
        this.upperOuter = upperOuter;
        lowerLength = positive(lowerInner.distance(lowerOuter), "length of the lower arm");
        upperLength = positive(upperInner.distance(upperOuter), "length of the upper arm");
        knuckleLength = positive(lowerOuter.distance(upperOuter), "length of the knuckle");
        positive(lowerInner.distance(upperInner), "distance of the inner joints");
        foundLowerAngle = lowerInner.directionOf(lowerOuter);
        foundKnuckleAngle = lowerOuter.directionOf(upperOuter);
        double turn = (upperInner.y() - lowerOuter.y()) * (upperOuter.z() - lowerOuter.z())
                - (upperInner.z() - lowerOuter.z()) * (upperOuter.y() - lowerOuter.y());
        sense = Math.signum(turn);
        // twice the area of the triangle is knuckle x upper arm x sine of the angle between them
        deadPoint = !(Math.abs(turn) > DEAD_POINT * knuckleLength * upperLength);
    }

    /** Whether knuckle and upper arm lie in one line as found, so that nothing says which way the linkage goes from there. */
    public boolean isAtDeadPoint() {
        return deadPoint;
    }

    double lowerLength() {
        return lowerLength;
    }

    double upperLength() {
        return upperLength;
    }

    double knuckleLength() {
        return knuckleLength;
    }

    double foundLowerAngle() {
        return foundLowerAngle;
    }

    Point lowerInner() {
        return lowerInner;
    }

    /**
     * The linkage with its lower arm at an angle.
     *
     * @param lowerAngle of the lower arm from its inner joint, rad; 0 is straight outward, positive when the outer joint is higher
     * @return null when the linkage does not close there
     */
    public @Nullable Pose at(double lowerAngle) {
        Point lower = lowerInner.polar(lowerLength, lowerAngle);
        double span = lower.distance(upperInner);
        double along = (knuckleLength * knuckleLength - upperLength * upperLength + span * span) / (2 * span);
        double squared = knuckleLength * knuckleLength - along * along;
        if (!(squared >= 0)) {
            return null;
        }
        double across = sense * Math.sqrt(squared);
        double unitY = (upperInner.y() - lower.y()) / span;
        double unitZ = (upperInner.z() - lower.z()) / span;
        Point upper = new Point(lower.y() + along * unitY - across * unitZ, lower.z() + along * unitZ + across * unitY);
        return new Pose(lowerAngle, lower, upper);
    }

    /** The linkage as found. */
    public Pose asFound() {
        return new Pose(foundLowerAngle, lowerOuter, upperOuter);
    }

    /**
     * The linkage with a point of its knuckle at a height, reached without passing a dead point and with the lower arm pointing outward.
     *
     * @param fixed a point that moves with the knuckle, given where it is as found
     * @param z height it shall have, in the frame's own coordinates
     */
    public Reach withHeight(Point fixed, double z) {
        double start = fixed.z() - z;
        if (Math.abs(start) < SAME_HEIGHT) {
            return new Reach(asFound(), z);
        }
        double end = start > 0 ? lowest() : highest();
        double step = (end - foundLowerAngle) / SEARCH_STEPS;
        double extreme = fixed.z();
        double from = foundLowerAngle;
        for (int i = 1; i <= SEARCH_STEPS; i++) {
            double to = i == SEARCH_STEPS ? end : foundLowerAngle + i * step;
            Pose pose = at(to);
            if (pose == null) {
                break;
            }
            double height = moved(fixed, pose).z();
            if ((height - z) * start <= 0) {
                double angle = new BracketingNthOrderBrentSolver(0, ANGLE_ACCURACY, 0, 5)
                        .solve(
                                LARGEST_NUMBER_OF_EVALUATIONS,
                                candidate -> height(fixed, candidate) - z,
                                Math.min(from, to),
                                Math.max(from, to));
                return new Reach(at(angle), z);
            }
            extreme = start > 0 ? Math.min(extreme, height) : Math.max(extreme, height);
            from = to;
        }
        return new Reach(null, extreme);
    }

    private double height(Point fixed, double lowerAngle) {
        Pose pose = at(lowerAngle);
        return pose == null ? Double.NaN : moved(fixed, pose).z();
    }

    /** Where a point that is fixed to the knuckle has gone. */
    public Point moved(Point fixed, Pose pose) {
        double turned = pose.knuckleAngle() - foundKnuckleAngle;
        double y = fixed.y() - lowerOuter.y();
        double z = fixed.z() - lowerOuter.z();
        return new Point(
                pose.lowerOuter().y() + y * Math.cos(turned) - z * Math.sin(turned),
                pose.lowerOuter().z() + y * Math.sin(turned) + z * Math.cos(turned));
    }

    /** Change of camber since found, rad: negative when the top of the wheel leans in (ISO 8855). */
    public double camberChange(Pose pose) {
        return Math.IEEEremainder(foundKnuckleAngle - pose.knuckleAngle(), 2 * Math.PI);
    }

    /** Where the lines of the two arms meet. */
    public InstantCentre instantCentre(Pose pose) {
        double[] lower = line(lowerInner, pose.lowerOuter());
        double[] upper = line(upperInner, pose.upperOuter());
        return new InstantCentre(
                lower[1] * upper[2] - lower[2] * upper[1],
                lower[2] * upper[0] - lower[0] * upper[2],
                lower[0] * upper[1] - lower[1] * upper[0]);
    }

    private static double[] line(Point one, Point other) {
        return new double[] {
            one.z() - other.z(), other.y() - one.y(), one.y() * other.z() - other.y() * one.z(),
        };
    }

    /** Lowest angle of the lower arm at which the linkage still closes on its branch, pointing outward. */
    private double lowest() {
        return Math.max(foundLowerAngle + range()[0], -Math.PI / 2);
    }

    /** Highest angle of the lower arm at which the linkage still closes on its branch, pointing outward. */
    private double highest() {
        return Math.min(foundLowerAngle + range()[1], Math.PI / 2);
    }

    /**
     * How far the lower arm can turn from where it was found, down and up: between the dead points, where the span from lower ball joint
     * to upper inner joint is the sum or the difference of knuckle and upper arm. Law of cosines in the triangle of lower inner joint,
     * upper inner joint and lower ball joint.
     */
    private double[] range() {
        double frame = lowerInner.distance(upperInner);
        double found = Math.IEEEremainder(foundLowerAngle - lowerInner.directionOf(upperInner), 2 * Math.PI);
        double widest = angleForSpan(upperLength + knuckleLength, frame);
        double narrowest = angleForSpan(upperLength - knuckleLength, frame);
        double low = found < 0 || narrowest == 0 ? -widest : narrowest;
        double high = found > 0 || narrowest == 0 ? widest : -narrowest;
        if (widest == Math.PI) { // nothing stops the arm on that side
            low = found < 0 || narrowest == 0 ? -2 * Math.PI : low;
            high = found > 0 || narrowest == 0 ? 2 * Math.PI : high;
        }
        return new double[] {Math.min(0, low - found), Math.max(0, high - found)};
    }

    /** Angle at the lower inner joint that gives the span; 0 or π when no angle does. */
    private double angleForSpan(double span, double frame) {
        double cosine = (lowerLength * lowerLength + frame * frame - span * span) / (2 * lowerLength * frame);
        return cosine >= 1 ? 0 : cosine <= -1 ? Math.PI : Math.acos(cosine);
    }

    /** The linkage in one place. */
    public record Pose(double lowerAngle, Point lowerOuter, Point upperOuter) {

        /** Direction from lower to upper ball joint, rad. */
        public double knuckleAngle() {
            return lowerOuter.directionOf(upperOuter);
        }
    }

    /**
     * How far a height was reached.
     *
     * @param pose null when the linkage does not go so far
     * @param z the height reached, the nearest there is when {@code pose} is null
     */
    public record Reach(@Nullable Pose pose, double z) {}

    /**
     * Instant centre of the right-hand wheel against the frame, in homogeneous coordinates: it lies at infinity when the arms are
     * parallel.
     *
     * @param y times {@code weight}, m
     * @param z times {@code weight}, m
     * @param weight 0 when the arms are parallel
     */
    public record InstantCentre(double y, double z, double weight) {

        /**
         * Height above the contact patch at which the line from it to the instant centre crosses the centre plane, m: the roll centre of
         * two equal sides.
         *
         * @return null when that line does not cross the centre plane
         */
        public @Nullable Double rollCentreHeight(Point contact) {
            double height = -contact.y() * (z - weight * contact.z()) / (y - weight * contact.y());
            return Math.abs(height) <= HIGHEST_ROLL_CENTRE ? (Double) height : null;
        }

        /** Whether the centre lies inboard of the contact patch at a finite distance. */
        boolean isInboardOf(Point contact) {
            return weight != 0 && y / weight < contact.y();
        }

        /** Beyond this height, m, the line is as good as upright and the construction says nothing. */
        private static final double HIGHEST_ROLL_CENTRE = 100;
    }
}
