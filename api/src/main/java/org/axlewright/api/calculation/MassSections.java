package org.axlewright.api.calculation;

import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Bare;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Item;
import org.axlewright.api.section.Occupant;
import org.axlewright.api.section.Position;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.mass.CentreOfGravity;
import org.axlewright.domain.mass.CentreOfGravity.Laden;
import org.axlewright.domain.mass.CentreOfGravity.Part;
import org.axlewright.domain.mass.CentreOfGravity.Raise;
import org.axlewright.domain.mass.CentreOfGravity.Ratings;
import org.axlewright.domain.mass.PointMass;
import org.axlewright.domain.mass.RaisedAxle;
import org.axlewright.domain.mass.Weighing;
import org.axlewright.domain.mass.Weighing.Tracks;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Mass and height, one rule for every question (contract): {@code laden} if sent; else {@code bare} with {@code items} and
 * {@code occupants}, raised by {@code lift} and the change of tyre.
 */
public final class MassSections {

    private static final Needs AS_WEIGHED = Needs.one(
            Needs.all(
                    "/bare/scales/frontLeft",
                    "/bare/scales/frontRight",
                    "/bare/scales/rearLeft",
                    "/bare/scales/rearRight"),
            Needs.all("/bare/axles/front", "/bare/axles/rear"),
            Needs.all("/bare/mass", "/bare/frontShare"),
            Needs.all("/bare/mass", "/bare/position/x"));

    /** Mass and position in plan; needs the wheelbase beside it. */
    public static final Needs POSITION_IN_PLAN = Needs.one(AS_WEIGHED, Needs.all("/laden/mass", "/laden/position/x"));

    /** Mass alone: a bare mass needs no position. */
    public static final Needs MASS_ONLY = Needs.one(
            Needs.value("/laden/mass"),
            Needs.all(
                    Needs.one(
                            Needs.all(
                                    "/bare/scales/frontLeft",
                                    "/bare/scales/frontRight",
                                    "/bare/scales/rearLeft",
                                    "/bare/scales/rearRight"),
                            Needs.all("/bare/axles/front", "/bare/axles/rear"),
                            Needs.value("/bare/mass")),
                    Needs.each("/items", Needs.value("/items/0/mass"))));

    private static final Source RIDER_MASS = Source.published(
            "75 kg for the driver: Regulation (EU) 168/2013, definition of actual mass; the same for every seat is common practice");

    private MassSections() {}

    /** The whole of it, for the questions that need a centre of gravity. Call when {@link #POSITION_IN_PLAN} and the wheelbase are met. */
    public static CentreOfGravity.Input resolve(Setup setup, Resolution resolution, boolean answersPosition) {
        Chassis chassis = Objects.requireNonNull(setup.chassis(), "chassis");
        double wheelbaseM =
                Objects.requireNonNull(chassis.wheelbase(), "wheelbase").si();
        Tracks tracks = tracks(chassis);
        Weighing weighing = AS_WEIGHED.missing(setup).isEmpty() ? weighing(Objects.requireNonNull(setup.bare())) : null;
        List<Part> parts = parts(setup, resolution);
        resolution.refuseIfFaulty();
        Double heightM = null;
        RaisedAxle raisedAxle = null;
        if (weighing != null) {
            Bare bare = Objects.requireNonNull(setup.bare());
            heightM = height(bare);
            raisedAxle = raisedAxle(bare, resolution);
            checkRaised(raisedAxle, weighing, wheelbaseM, bare, resolution);
            checkRemoved(weighing, wheelbaseM, parts, resolution);
        }
        resolution.refuseIfFaulty();
        CentreOfGravity.Input input = new CentreOfGravity.Input(
                wheelbaseM, tracks, weighing, heightM, raisedAxle, Raise.NONE, parts, laden(setup), ratings(chassis));
        if (answersPosition) {
            notAnswered(input, resolution);
        }
        return input;
    }

    /** Mass as driven, kg, noted as an assumption where it is derived. Call when {@link #MASS_ONLY} is met. */
    public static double massAsDrivenKg(Setup setup, Resolution resolution) {
        if (setup.laden() != null && setup.laden().mass() != null) {
            return setup.laden().mass().si();
        }
        double massKg = bareMassKg(Objects.requireNonNull(setup.bare(), "bare"));
        List<Item> items = setup.items() == null ? List.of() : setup.items();
        for (Item item : items) {
            massKg += itemMassKg(item);
        }
        List<Occupant> occupants = setup.occupants() == null ? List.of() : setup.occupants();
        for (int i = 0; i < occupants.size(); i++) {
            massKg += occupantMassKg(occupants.get(i), i, resolution);
        }
        if (!(massKg > 0)) {
            resolution.refuse(Fault.contradiction("/items", "More mass is removed than the vehicle has"));
            resolution.refuseIfFaulty();
        }
        return resolution.assume(
                "mass-as-driven",
                "/laden/mass",
                new Measure(massKg, MASS),
                "bare vehicle with items and occupants",
                Source.derived("sum of the masses"));
    }

    private static double bareMassKg(Bare bare) {
        if (bare.mass() != null) {
            return bare.mass().si();
        }
        return Objects.requireNonNull(weighing(bare))
                .inPlan(1, null, Trace.withoutWorking())
                .massKg();
    }

    private static @Nullable Tracks tracks(Chassis chassis) {
        return chassis.frontTrack() == null || chassis.rearTrack() == null
                ? null
                : new Tracks(chassis.frontTrack().si(), chassis.rearTrack().si());
    }

    private static Weighing weighing(Bare bare) {
        Position position = bare.position();
        Double yM = position == null ? null : si(position.y());
        if (bare.scales() != null) {
            Bare.Scales scales = bare.scales();
            return new Weighing.Scales(
                    need(scales.frontLeft()),
                    need(scales.frontRight()),
                    need(scales.rearLeft()),
                    need(scales.rearRight()));
        }
        if (bare.axles() != null) {
            return new Weighing.AxleLoads(
                    need(bare.axles().front()), need(bare.axles().rear()), yM);
        }
        if (bare.frontShare() != null) {
            return new Weighing.FrontShare(need(bare.mass()), bare.frontShare(), yM);
        }
        return new Weighing.Placed(
                need(bare.mass()), need(Objects.requireNonNull(position).x()), yM);
    }

    private static @Nullable Double height(Bare bare) {
        if (bare.height() != null) {
            return bare.height().si();
        }
        return bare.position() == null ? null : si(bare.position().z());
    }

    private static @Nullable RaisedAxle raisedAxle(Bare bare, Resolution resolution) {
        Bare.RaisedAxle sent = bare.raisedAxle();
        if (sent == null) {
            return null;
        }
        requirePart(sent.raised(), "/bare/raisedAxle/raised", resolution);
        requirePart(sent.rise(), "/bare/raisedAxle/rise", resolution);
        requirePart(sent.load(), "/bare/raisedAxle/load", resolution);
        Double front = sent.wheelRadius() == null ? null : si(sent.wheelRadius().front());
        Double rear = sent.wheelRadius() == null ? null : si(sent.wheelRadius().rear());
        if (front == null) {
            resolution.missing("/bare/raisedAxle/wheelRadius/front");
        }
        if (rear == null) {
            resolution.missing("/bare/raisedAxle/wheelRadius/rear");
        }
        resolution.refuseIfFaulty();
        return new RaisedAxle(
                Objects.requireNonNull(sent.raised()),
                need(sent.rise()),
                need(sent.load()),
                Objects.requireNonNull(front),
                Objects.requireNonNull(rear));
    }

    private static void requirePart(@Nullable Object part, String pointer, Resolution resolution) {
        if (part == null) {
            resolution.missing(pointer);
        }
    }

    /** Readings that no vehicle can give are refused: they contradict each other. */
    private static void checkRaised(
            @Nullable RaisedAxle raised, Weighing weighing, double wheelbaseM, Bare bare, Resolution resolution) {
        if (raised == null) {
            return;
        }
        Quantity rise =
                Objects.requireNonNull(Objects.requireNonNull(bare.raisedAxle()).rise());
        if (!(raised.riseM() < wheelbaseM)) {
            resolution.refuse(Form.outOfRange("/bare/raisedAxle/rise/value", rise, wheelbaseM, false));
            return;
        }
        Trace silent = Trace.withoutWorking();
        PointMass plan = weighing.inPlan(wheelbaseM, null, silent);
        double weightN = plan.massKg() * Constants.STANDARD_GRAVITY;
        double height = raised.heightM(weightN, plan.xM(), wheelbaseM, silent);
        if (!(height > 0 && height < 3)) {
            String axle = raised.raised() == Axle.REAR ? "front" : "rear";
            resolution.refuse(new Fault(
                    "/bare/raisedAxle/load",
                    "contradiction",
                    "With this reading of the " + axle + " axle the centre of gravity would be "
                            + Shown.readable(height)
                            + " m above the ground, which no vehicle of this kind has; check which axle was raised, the rise and the reading",
                    Objects.requireNonNull(bare.raisedAxle()).load(),
                    null));
        }
    }

    private static void checkRemoved(Weighing weighing, double wheelbaseM, List<Part> parts, Resolution resolution) {
        double massKg =
                weighing.inPlan(wheelbaseM, null, Trace.withoutWorking()).massKg();
        for (Part part : parts) {
            massKg += part.occupant() ? 0 : part.mass().massKg();
        }
        if (!(massKg > 0)) {
            resolution.refuse(Fault.contradiction("/items", "More mass is removed than the vehicle has"));
        }
    }

    private static List<Part> parts(Setup setup, Resolution resolution) {
        List<Part> parts = new ArrayList<>();
        List<Item> items = setup.items() == null ? List.of() : setup.items();
        for (int i = 0; i < items.size(); i++) {
            Item item = items.get(i);
            String pointer = "/items/" + i;
            PointMass mass = placed(itemMassKg(item), item.position(), pointer, resolution);
            parts.add(new Part(pointer, item.name(), item.reference(), false, mass));
        }
        List<Occupant> occupants = setup.occupants() == null ? List.of() : setup.occupants();
        for (int i = 0; i < occupants.size(); i++) {
            Occupant occupant = occupants.get(i);
            String pointer = "/occupants/" + i;
            double massKg = occupantMassKg(occupant, i, resolution);
            PointMass mass = placed(massKg, occupant.position(), pointer, resolution);
            parts.add(new Part(pointer, occupant.name(), occupant.reference(), true, mass));
        }
        return parts;
    }

    /** Negative when the part was taken off. */
    private static double itemMassKg(Item item) {
        double massKg = need(item.mass());
        return Boolean.TRUE.equals(item.removed()) ? -massKg : massKg;
    }

    private static double occupantMassKg(Occupant occupant, int index, Resolution resolution) {
        return occupant.mass() != null
                ? occupant.mass().si()
                : resolution.assume(
                        "occupant-mass",
                        "/occupants/" + index + "/mass",
                        new Measure(75, MASS),
                        "usual mass of a person on board",
                        RIDER_MASS);
    }

    private static PointMass placed(double massKg, @Nullable Position sent, String pointer, Resolution resolution) {
        Position position = Objects.requireNonNull(sent);
        double yM = position.y() != null
                ? position.y().si()
                : resolution.assume(
                        "on-centre-plane",
                        pointer + "/position/y",
                        new Measure(0, LENGTH),
                        "a part without a sideways position is taken to sit in the middle",
                        Source.COMMON_PRACTICE);
        return new PointMass(massKg, need(position.x()), yM, si(position.z()));
    }

    private static @Nullable Laden laden(Setup setup) {
        if (setup.laden() == null) {
            return null;
        }
        Position position = setup.laden().position();
        Laden laden = new Laden(
                si(setup.laden().mass()),
                position == null ? null : si(position.x()),
                position == null ? null : si(position.y()),
                position == null ? null : si(position.z()));
        boolean nothing = laden.massKg() == null && laden.xM() == null && laden.yM() == null && laden.zM() == null;
        return nothing ? null : laden;
    }

    private static Ratings ratings(Chassis chassis) {
        return chassis.ratings() == null
                ? new Ratings(null, null, null)
                : new Ratings(
                        si(chassis.ratings().front()),
                        si(chassis.ratings().rear()),
                        si(chassis.ratings().total()));
    }

    private static void notAnswered(CentreOfGravity.Input input, Resolution resolution) {
        Laden laden = input.laden();
        Weighing weighing = input.weighing();
        if (laden == null || laden.zM() == null) {
            heightNotAnswered(input, resolution);
        }
        if (weighing == null) {
            if (laden != null && laden.yM() == null) {
                resolution.notAnswered("/position/y", "/laden/position/y");
                resolution.notAnswered("/leftShare", "/laden/position/y");
            }
        } else {
            sidesNotAnswered(input, weighing, resolution);
        }
    }

    private static void heightNotAnswered(CentreOfGravity.Input input, Resolution resolution) {
        List<String> missing = new ArrayList<>();
        if (input.weighing() == null) {
            missing.add("/laden/position/z");
        } else if (input.heightM() == null && input.raisedAxle() == null) {
            missing.add("/bare/height");
            missing.add("/bare/raisedAxle");
        }
        input.parts().stream()
                .filter(part -> part.mass().zM() == null)
                .map(part -> part.pointer() + "/position/z")
                .forEach(missing::add);
        if (!missing.isEmpty()) {
            resolution.notAnswered("/position/z", missing.toArray(String[]::new));
        }
    }

    private static void sidesNotAnswered(CentreOfGravity.Input input, Weighing weighing, Resolution resolution) {
        String[] tracks = {"/chassis/frontTrack", "/chassis/rearTrack"};
        Double yM = weighing.inPlan(input.wheelbaseM(), input.tracks(), Trace.withoutWorking())
                .yM();
        boolean scales = weighing.leftLoadN() != null;
        if (!scales && yM == null) {
            resolution.notAnswered("/position/y", "/bare/scales", "/bare/position/y");
            resolution.notAnswered("/leftShare", "/bare/scales", "/bare/position/y");
        } else if (input.tracks() == null) {
            boolean partsAside = input.parts().stream()
                    .anyMatch(part -> part.mass().yM() != null && part.mass().yM() != 0);
            boolean bareAside = !scales && yM != null && yM != 0;
            if (scales) {
                resolution.notAnswered("/position/y", tracks);
            }
            if (partsAside || bareAside) {
                resolution.notAnswered("/leftShare", tracks);
            }
        }
        if (!scales) {
            resolution.notAnswered("/crossShare", "/bare/scales");
        }
    }

    private static double need(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : quantity.si();
    }
}
