package org.axlewright.api.repack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.energy.PackRangeCalculation;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.repack.PackWeightChangeCalculation.Question;
import org.axlewright.api.section.Bare;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Item;
import org.axlewright.api.section.Laden;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Position;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.energy.PackRange;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.LengthUnit;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.MassUnit;
import org.axlewright.domain.repack.PackWeightChange;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/**
 * The vehicle with its former pack: as it is, with the pack of now taken off and the former one put where it was. Mass and height by the
 * one rule of {@link MassSections}.
 */
final class PackWeightChangeSections {

    private final Setup setup;
    private final Resolution resolution;

    PackWeightChangeSections(Setup setup, Resolution resolution) {
        this.setup = setup;
        this.resolution = resolution;
    }

    Question resolve() {
        Chassis chassis = Objects.requireNonNull(setup.chassis(), "chassis");
        double wheelbaseM =
                Objects.requireNonNull(chassis.wheelbase(), "wheelbase").si();
        Pack now = Objects.requireNonNull(setup.pack(), "pack");
        Pack former = Objects.requireNonNull(setup.formerPack(), "former pack");
        PointMass after = MassSections.states(setup, resolution).occupied();
        double nowKg = Objects.requireNonNull(now.mass(), "mass of the pack").si();
        if (!(nowKg < after.massKg())) {
            resolution.refuse(Fault.contradiction(
                    "/pack/mass", "The pack is as heavy as the whole vehicle or heavier; the vehicle includes it"));
            resolution.refuseIfFaulty();
        }
        Setup formerly = formerly(now, former, after);
        PointMass before = MassSections.states(formerly, new Resolution()).occupied();
        AxleSet driven = chassis.driven() != null
                ? chassis.driven()
                : resolution.assume(
                        "rear-driven",
                        "/chassis/driven",
                        AxleSet.REAR,
                        "the rear axle drives most vehicles of this class",
                        Source.COMMON_PRACTICE);
        Double friction = setup.ground() == null ? null : setup.ground().friction();
        PackRange.Input rangeAfter = range(setup, "/pack");
        PackRange.Input rangeMixed = rangeAfter == null ? null : range(formerly, "/pack");
        PackRange.Input rangeBefore = range(formerly.with("pack", former), "/formerPack");
        notAnswered(chassis, after, before, friction);
        return new Question(
                new PackWeightChange.Input(
                        wheelbaseM, vehicle(before), vehicle(after), driven, chassis.braked(), friction),
                rangeBefore,
                rangeMixed,
                rangeAfter);
    }

    private static PackWeightChange.Vehicle vehicle(PointMass whole) {
        Double zM = whole.zM();
        return new PackWeightChange.Vehicle(whole.massKg(), whole.xM(), zM == null || zM <= 0 ? null : zM);
    }

    /** A vehicle measured as driven stands for itself: it becomes the bare one, as it stands. */
    private Setup formerly(Pack now, Pack former, PointMass after) {
        Item out = new Item("pack of now", now.mass(), now.position(), true, null, null, null);
        Item in = new Item("former pack", former.mass(), former.position(), null, null, null, null);
        Laden laden = setup.laden();
        if (laden == null) {
            List<Item> items = new ArrayList<>(setup.items() == null ? List.of() : setup.items());
            boolean listed = items.stream().anyMatch(item -> isTheSame(item, now));
            items.removeIf(item -> isTheSame(item, now));
            if (!listed) {
                items.add(out);
            }
            items.add(in);
            return setup.with("items", items);
        }
        Bare measured = new Bare(
                null,
                null,
                new Mass(after.massKg(), MassUnit.KILOGRAM),
                null,
                new Position(metres(after.xM()), metres(after.yM()), metres(after.zM())),
                null,
                null);
        return setup.with("laden", null)
                .with("bare", measured)
                .with("occupants", null)
                .with("lift", null)
                .with("items", List.of(out, in));
    }

    /** An item of the same mass at the same place is the pack itself, and is taken away rather than taken off the bare vehicle. */
    private static boolean isTheSame(Item item, Pack pack) {
        return !Boolean.TRUE.equals(item.removed())
                && item.mass() != null
                && pack.mass() != null
                && item.mass().si() == pack.mass().si()
                && item.position() != null
                && pack.position() != null
                && item.position().x() != null
                && pack.position().x() != null
                && item.position().x().si() == pack.position().x().si();
    }

    private static @Nullable Length metres(@Nullable Double value) {
        return value == null ? null : new Length(value, LengthUnit.METRE);
    }

    /** The range with one of the packs; null and told when it can't be asked. */
    private PackRange.@Nullable Input range(Setup vehicle, String pointer) {
        PackRangeCalculation calculation = new PackRangeCalculation();
        List<String> missing = calculation.needs().missing(vehicle);
        if (missing.isEmpty()) {
            Resolution own = new Resolution();
            try {
                return calculation.resolve(vehicle, own);
            } catch (Refused refused) {
                missing = refused.faults().stream().map(Fault::pointer).toList();
            }
        }
        String state = pointer.equals("/pack") ? "/after" : "/before";
        resolution.notAnswered(
                state + "/usableEnergy",
                missing.stream()
                        .map(lacking -> lacking.replaceFirst("^/pack", pointer))
                        .toList());
        return null;
    }

    private void notAnswered(Chassis chassis, PointMass after, PointMass before, @Nullable Double friction) {
        List<String> height = MassSections.heightMissing(setup);
        if (after.zM() == null) {
            resolution.notAnswered("/after/height", height);
        }
        if (before.zM() == null) {
            List<String> lacking = new ArrayList<>(height);
            lacking.add("/pack/position/z");
            lacking.add("/formerPack/position/z");
            resolution.notAnswered("/before/height", lacking);
        }
        if (friction == null) {
            resolution.notAnswered("/after/launchLimit", "/ground/friction");
            resolution.notAnswered("/after/brakeLimit", "/ground/friction");
        } else if (chassis.braked() == null) {
            resolution.notAnswered("/after/brakeLimit", "/chassis/braked");
        }
        if (setup.route() == null || setup.route().isEmpty()) {
            resolution.notAnswered("/after/range", "/route");
            resolution.notAnswered("/rangeChange", "/route");
        }
    }
}
