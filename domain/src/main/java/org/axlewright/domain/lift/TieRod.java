package org.axlewright.domain.lift;

import static org.axlewright.domain.check.Check.finite;
import static org.axlewright.domain.check.Check.positive;

import org.axlewright.domain.lift.DoubleWishbone.Pose;
import org.jspecify.annotations.Nullable;

/**
 * The tie rod of the right-hand wheel in front view.
 *
 * @param inner joint at the rack or drag link, fixed to the frame
 * @param outer joint at the steering arm, moving with the knuckle
 * @param armM distance of the outer joint behind the line through the ball joints in plan, m; negative when it lies ahead
 */
public record TieRod(Point inner, Point outer, double armM) {

    public TieRod {
        finite(armM, "armM");
        positive(Math.abs(armM), "size of armM");
    }

    double lengthM() {
        return inner.distance(outer);
    }

    /**
     * How far outward the rod holds its outer joint from where the knuckle alone would carry it, m. The steering axis being nearly
     * upright, the joint keeps its height while it turns.
     *
     * @return null when the rod is too short to reach that height
     */
    @Nullable
    Double push(DoubleWishbone linkage, Pose pose) {
        Point carried = linkage.moved(outer, pose);
        double rise = carried.z() - inner.z();
        double squared = lengthM() * lengthM() - rise * rise;
        if (!(squared >= 0)) {
            return null;
        }
        double side = outer.y() < inner.y() ? -1 : 1;
        return inner.y() + side * Math.sqrt(squared) - carried.y();
    }

    /**
     * Change of toe of one wheel since found, rad: positive when the front of the wheel turns in (ISO 8855).
     *
     * @return null when the rod can't follow
     */
    @Nullable
    Double toeChange(DoubleWishbone linkage, Pose pose) {
        Double push = push(linkage, pose);
        if (push == null || !(Math.abs(push) <= Math.abs(armM))) {
            return null;
        }
        return Math.asin(push / armM);
    }
}
