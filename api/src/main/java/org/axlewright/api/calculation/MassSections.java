package org.axlewright.api.calculation;

import static org.axlewright.domain.quantity.Dimension.CLEARANCE;
import static org.axlewright.domain.quantity.Dimension.LENGTH;
import static org.axlewright.domain.quantity.Dimension.MASS;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.IntPredicate;
import java.util.stream.Stream;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Bare;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Form;
import org.axlewright.api.section.Item;
import org.axlewright.api.section.Occupant;
import org.axlewright.api.section.Position;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.axles.Axle;
import org.axlewright.domain.axles.AxleLift;
import org.axlewright.domain.axles.LoadedRadii;
import org.axlewright.domain.axles.PointMass;
import org.axlewright.domain.axles.Rise;
import org.axlewright.domain.mass.CentreOfGravity;
import org.axlewright.domain.mass.CentreOfGravity.Laden;
import org.axlewright.domain.mass.CentreOfGravity.Part;
import org.axlewright.domain.mass.CentreOfGravity.Ratings;
import org.axlewright.domain.mass.RaisedAxle;
import org.axlewright.domain.mass.Weighing;
import org.axlewright.domain.mass.Weighing.Tracks;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.Unit;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/**
 * Mass and height, one rule for every question (contract): {@code laden} if sent; else {@code bare} with {@code items} and
 * {@code occupants}, raised by {@code lift} and the change of tyre.
 */
public final class MassSections {

    /** The radius at the weighing, or the tyre that was on then. */
    private static Needs wheelRadius(String axle) {
        return Needs.one(
                Needs.value("/bare/raisedAxle/wheelRadius/" + axle),
                Needs.value("/lift/" + axle + "/tyreBefore/loadedRadius"),
                Needs.value("/lift/" + axle + "/tyreBefore/diameter"),
                Needs.value("/lift/" + axle + "/tyreBefore/size"),
                Needs.value("/tyres/" + axle + "/loadedRadius"),
                Needs.value("/tyres/" + axle + "/diameter"),
                Needs.value("/tyres/" + axle + "/size"));
    }

    private static final Needs SCALES = Needs.all(
            "/bare/scales/frontLeft", "/bare/scales/frontRight", "/bare/scales/rearLeft", "/bare/scales/rearRight");

    private static final Needs AXLES = Needs.all("/bare/axles/front", "/bare/axles/rear");

    /** The bare vehicle on the scales, in plan. */
    public static final Needs AS_WEIGHED = Needs.one(
            SCALES, AXLES, Needs.all("/bare/mass", "/bare/frontShare"), Needs.all("/bare/mass", "/bare/position/x"));

    private static final Pointer RAISED_AXLE = Pointer.of("/bare/raisedAxle");

    /** The bare vehicle, and where every part of it and everybody aboard is. */
    private static final Needs DERIVABLE = Needs.all(
            AS_WEIGHED,
            Needs.completed(
                    RAISED_AXLE.toString(),
                    Needs.all("/bare/raisedAxle/raised", "/bare/raisedAxle/rise", "/bare/raisedAxle/load")),
            Needs.completed(RAISED_AXLE.toString(), Needs.all(wheelRadius("front"), wheelRadius("rear"))),
            Needs.each("/items", Needs.all("/items/0/mass", "/items/0/position/x")),
            Needs.each("/occupants", Needs.value("/occupants/0/position/x")));

    /** Mass and position in plan; needs the wheelbase beside it. */
    public static final Needs POSITION_IN_PLAN = Needs.one(DERIVABLE, Needs.all("/laden/mass", "/laden/position/x"));

    private static final Needs RAISED_WEIGHING = Needs.all(
            Needs.all("/bare/raisedAxle/raised", "/bare/raisedAxle/rise", "/bare/raisedAxle/load"),
            Needs.one(Needs.value("/bare/raisedAxle/wheelRadius/front"), Needs.value("/tyres/front")),
            Needs.one(Needs.value("/bare/raisedAxle/wheelRadius/rear"), Needs.value("/tyres/rear")));

    /** The bare vehicle and every part of it and everybody aboard, heights too: what the fillings of seats and racks need. */
    private static final Needs DERIVABLE_WITH_HEIGHT = Needs.all(
            DERIVABLE,
            Needs.one(Needs.value("/bare/height"), Needs.value("/bare/position/z"), RAISED_WEIGHING),
            Needs.each("/items", Needs.value("/items/0/position/z")),
            Needs.each("/occupants", Needs.value("/occupants/0/position/z")));

    /** Mass and position in plan and height; needs the wheelbase beside it. */
    public static final Needs POSITION =
            Needs.one(DERIVABLE_WITH_HEIGHT, Needs.all(POSITION_IN_PLAN, Needs.value("/laden/position/z")));

    private static final Needs BARE_MASS = Needs.all(
            Needs.one(SCALES, AXLES, Needs.value("/bare/mass")), Needs.each("/items", Needs.value("/items/0/mass")));

    /** Mass alone: a bare mass needs no position. */
    public static final Needs MASS_ONLY = Needs.one(Needs.value("/laden/mass"), BARE_MASS);

    private static final Needs UNLADEN = Needs.all(
            Needs.one(SCALES, AXLES, Needs.value("/bare/mass")), Needs.each("/items", Needs.value("/items/0/mass")));

    /** No vehicle of this kind carries its mass higher; a reading that says so is a mistake. */
    private static final double HIGHEST_M = 3;

    /** Less is no vehicle: the least that can be sent as a mass. */
    private static final double LEAST_MASS_KG = 1;

    private static final Source RIDER_MASS = Source.published(
            "75 kg for the driver: Regulation (EU) 168/2013, definition of actual mass; the same for every seat is common practice");

    private MassSections() {}

    /** The whole of it, for the questions that need a centre of gravity. Call when {@link #POSITION_IN_PLAN} and the wheelbase are met. */
    public static CentreOfGravity.Input resolve(Setup setup, Resolution resolution, boolean answersPosition) {
        Chassis chassis = Objects.requireNonNull(setup.chassis(), "chassis");
        double wheelbaseM =
                Objects.requireNonNull(chassis.wheelbase(), "wheelbase").si();
        Tracks tracks = tracks(chassis);
        Weighing weighing = DERIVABLE.missing(setup).isEmpty() ? weighing(Objects.requireNonNull(setup.bare())) : null;
        List<Part> parts = weighing == null ? List.of() : parts(setup, resolution);
        Rise rise = Rises.resolve(setup, resolution);
        resolution.refuseIfFaulty();
        Double heightM = null;
        RaisedAxle raisedAxle = null;
        if (weighing != null) {
            Bare bare = Objects.requireNonNull(setup.bare());
            heightM = height(bare);
            raisedAxle = raisedAxle(setup, rise, resolution);
            checkRaised(raisedAxle, weighing, wheelbaseM, bare, resolution);
            checkRemoved(bareMassKg(bare), setup, resolution);
        }
        resolution.refuseIfFaulty();
        CentreOfGravity.Input input = new CentreOfGravity.Input(
                wheelbaseM, tracks, weighing, heightM, raisedAxle, rise, parts, laden(setup), ratings(chassis));
        if (answersPosition) {
            notAnswered(input, setup, resolution);
        }
        return input;
    }

    /** Mass without occupants and without what comes and goes, kg; null when the bare vehicle or a part isn't known. */
    public static @Nullable Double unladenMassKg(Setup setup) {
        if (!BARE_MASS.missing(setup).isEmpty()) {
            return null;
        }
        double massKg = bareMassKg(Objects.requireNonNull(setup.bare()));
        for (Item item : setup.items() == null ? List.<Item>of() : setup.items()) {
            massKg += Boolean.TRUE.equals(item.cargo()) ? 0 : itemMassKg(item);
        }
        return massKg;
    }

    /** Mass as driven, kg, noted as an assumption where it is derived. Call when {@link #MASS_ONLY} is met. */
    public static double massAsDrivenKg(Setup setup, Resolution resolution) {
        if (setup.laden() != null && setup.laden().mass() != null) {
            return setup.laden().mass().si();
        }
        double massKg = bareMassKg(Objects.requireNonNull(setup.bare(), "bare"));
        checkRemoved(massKg, setup, resolution);
        resolution.refuseIfFaulty();
        List<Item> items = setup.items() == null ? List.of() : setup.items();
        for (Item item : items) {
            massKg += itemMassKg(item);
        }
        List<Occupant> occupants = setup.occupants() == null ? List.of() : setup.occupants();
        for (int i = 0; i < occupants.size(); i++) {
            massKg += occupantMassKg(occupants.get(i), i, resolution);
        }
        return resolution.assume(
                "mass-as-driven",
                "/laden/mass",
                new Measure(massKg, MASS),
                "bare vehicle with items and occupants",
                Source.derived("sum of the masses"));
    }

    /**
     * Mass ready for use without people and cargo, kg: the bare vehicle with the items that stay on it; null when a mass is not known.
     * Noted as an assumption at the pointer where it could have been sent.
     */
    public static @Nullable Double unladenMassKg(Setup setup, String pointer, Resolution resolution) {
        if (!UNLADEN.missing(setup).isEmpty()) {
            return null;
        }
        double massKg = bareMassKg(Objects.requireNonNull(setup.bare()));
        checkRemoved(massKg, setup, resolution);
        resolution.refuseIfFaulty();
        List<Item> items = setup.items() == null ? List.of() : setup.items();
        for (Item item : items) {
            if (!Boolean.TRUE.equals(item.cargo())) {
                massKg += itemMassKg(item);
            }
        }
        return resolution.assume(
                "unladen-mass",
                pointer,
                new Measure(massKg, MASS),
                "bare vehicle with the items that are no cargo",
                Source.derived("sum of the masses"));
    }

    /**
     * The vehicle as driven and without its occupants, on its lift and tyres.
     *
     * @param occupied as driven: {@code laden} if measured, else derived
     * @param empty without occupants; null when only {@code laden} is known
     */
    public record States(PointMass occupied, @Nullable PointMass empty) {

        /** Mass as driven, kg. */
        public double massKg() {
            return occupied.massKg();
        }

        /** Centre of gravity as driven behind the front axle, m. */
        public double xM() {
            return occupied.xM();
        }

        /** Height of the centre of gravity as driven, m; null when not known. */
        public @Nullable Double heightM() {
            return occupied.zM();
        }

        /** Mass without occupants, kg; null when not known. */
        public @Nullable Double emptyMassKg() {
            return empty == null ? null : (Double) empty.massKg();
        }

        /** Axle loads as driven, standing level. */
        public AxleLoads loads(double wheelbaseM) {
            return loads(occupied, wheelbaseM);
        }

        /** Axle loads without occupants, standing level; null when not known. */
        public @Nullable AxleLoads emptyLoads(double wheelbaseM) {
            return empty == null ? null : loads(empty, wheelbaseM);
        }

        private static AxleLoads loads(PointMass whole, double wheelbaseM) {
            double weightN = whole.massKg() * Constants.STANDARD_GRAVITY;
            double rearN = weightN * whole.xM() / wheelbaseM;
            return new AxleLoads(weightN - rearN, rearN);
        }
    }

    /**
     * Mass and centre of gravity in both states, for the questions that only use them; what is derived is listed as an assumption. Call
     * when {@link #POSITION_IN_PLAN} and the wheelbase are met; y and z are null where they are not known.
     */
    public static States states(Setup setup, Resolution resolution) {
        CentreOfGravity.Input input = resolve(setup, resolution, false);
        CentreOfGravity.Result result = CentreOfGravity.of(input, Trace.withoutWorking());
        PointMass occupied = result.occupied().whole();
        Laden laden = input.laden();
        if (laden == null || laden.massKg() == null) {
            asDriven("mass-as-driven", "/laden/mass", new Measure(occupied.massKg(), MASS), resolution);
        }
        if (laden == null || laden.xM() == null) {
            asDriven("position-as-driven", "/laden/position/x", new Measure(occupied.xM(), LENGTH), resolution);
        }
        if (occupied.zM() != null && (laden == null || laden.zM() == null)) {
            asDriven("height-as-driven", "/laden/position/z", new Measure(occupied.zM(), LENGTH), resolution);
        }
        CentreOfGravity.State empty = result.empty();
        return new States(occupied, empty == null ? null : empty.whole());
    }

    /**
     * What always travels with the vehicle, and who and what comes and goes, on its lift and tyres: for the questions that ask for every
     * filling of seats and racks.
     *
     * @param fixed bare vehicle with every item that is not cargo
     * @param movable occupants, and items marked as cargo, in the order of the request
     */
    public record Loading(PointMass fixed, List<Aboard> movable) {}

    /**
     * Somebody or something that comes and goes, where it sits on the vehicle's lift and tyres.
     *
     * @param pointer where it stands in the request
     */
    public record Aboard(
            String pointer, @Nullable String name, @Nullable String reference, boolean occupant, PointMass mass) {}

    /** What lacks for {@link #loading}; empty when the vehicle is known as the sum of its parts, heights too. */
    public static List<String> loadingMissing(Setup setup) {
        return DERIVABLE_WITH_HEIGHT.missing(setup);
    }

    /**
     * Call when {@link #loadingMissing} is empty and the wheelbase is met. A bare vehicle of no known side is taken to weigh on its
     * centre plane; with four scales and no tracks the side stays unknown and y null.
     */
    public static Loading loading(Setup setup, Resolution resolution) {
        CentreOfGravity.Input whole = resolve(setup, resolution, false);
        List<Item> items = setup.items() == null ? List.of() : setup.items();
        List<Part> raised = CentreOfGravity.raised(whole, Trace.withoutWorking());
        List<Part> fixed = new ArrayList<>();
        List<Aboard> movable = new ArrayList<>();
        for (int i = 0; i < whole.parts().size(); i++) {
            boolean cargo = i < items.size() && Boolean.TRUE.equals(items.get(i).cargo());
            if (cargo || whole.parts().get(i).occupant()) {
                Part part = raised.get(i);
                movable.add(new Aboard(part.pointer(), part.name(), part.reference(), part.occupant(), part.mass()));
            } else {
                fixed.add(whole.parts().get(i));
            }
        }
        CentreOfGravity.Input withoutThem = new CentreOfGravity.Input(
                whole.wheelbaseM(),
                whole.tracks(),
                whole.weighing(),
                whole.heightM(),
                whole.raisedAxle(),
                whole.rise(),
                fixed,
                null,
                whole.ratings());
        PointMass mass = CentreOfGravity.derived(withoutThem, Trace.withoutWorking());
        if (mass.yM() == null && !(whole.weighing() instanceof Weighing.Scales)) {
            resolution.assume(
                    "bare-on-centre-plane",
                    "/bare/position/y",
                    new Measure(0, LENGTH),
                    "a vehicle weighed without its sides is taken to weigh as much left as right",
                    Source.COMMON_PRACTICE);
            double moment = 0;
            for (Part part : fixed) {
                moment += part.mass().massKg()
                        * Objects.requireNonNull(part.mass().yM());
            }
            mass = new PointMass(mass.massKg(), mass.xM(), moment / mass.massKg(), mass.zM());
        }
        return new Loading(mass, movable);
    }

    private static void asDriven(String code, String pointer, Measure value, Resolution resolution) {
        resolution.assume(
                code,
                pointer,
                value,
                "bare vehicle with items and occupants, on its lift and tyres",
                Source.derived("composite centre of gravity; centre-of-gravity shows the working"));
    }

    /** What lacks for the height of the centre of gravity as driven; empty when it is known. */
    public static List<String> heightMissing(Setup setup) {
        if (setup.laden() != null
                && setup.laden().position() != null
                && setup.laden().position().z() != null) {
            return List.of();
        }
        List<String> missing = new ArrayList<>();
        if (!DERIVABLE.missing(setup).isEmpty() || setup.bare() == null) {
            return List.of("/laden/position/z");
        }
        if (height(setup.bare()) == null && !RAISED_AXLE.isIn(setup)) {
            missing.add("/bare/height");
        }
        List<Item> items = setup.items() == null ? List.of() : setup.items();
        for (int i = 0; i < items.size(); i++) {
            if (Objects.requireNonNull(items.get(i).position()).z() == null) {
                missing.add("/items/" + i + "/position/z");
            }
        }
        List<Occupant> occupants = setup.occupants() == null ? List.of() : setup.occupants();
        for (int i = 0; i < occupants.size(); i++) {
            if (Objects.requireNonNull(occupants.get(i).position()).z() == null) {
                missing.add("/occupants/" + i + "/position/z");
            }
        }
        return missing;
    }

    /** Loads of the two axles, N, standing level. */
    public record AxleLoads(double frontN, double rearN) {}

    /** Share of the bare vehicle's weight on its front axle, as weighed; null when that is not known. */
    public static @Nullable Double frontShareAsWeighed(Setup setup) {
        Bare bare = setup.bare();
        if (bare == null) {
            return null;
        }
        if (bare.frontShare() != null) {
            return bare.frontShare();
        }
        Double wheelbaseM = setup.chassis() == null ? null : si(setup.chassis().wheelbase());
        boolean byLoads = bare.scales() != null || bare.axles() != null;
        if (!AS_WEIGHED.missing(setup).isEmpty() || (!byLoads && wheelbaseM == null)) {
            return null;
        }
        double lengthM = wheelbaseM == null ? 1 : wheelbaseM;
        PointMass plan = weighing(bare).inPlan(lengthM, null, Trace.withoutWorking());
        return 1 - plan.xM() / lengthM;
    }

    /** Height of the bare vehicle's centre of gravity, m, as given or from the weighing with one axle raised; null when not known. */
    public static @Nullable Double heightAsWeighedM(Setup setup) {
        Bare bare = setup.bare();
        if (bare == null) {
            return null;
        }
        Double wheelbaseM = setup.chassis() == null ? null : si(setup.chassis().wheelbase());
        Bare.RaisedAxle raised = bare.raisedAxle();
        if (raised == null
                || raised.raised() == null
                || raised.rise() == null
                || raised.load() == null
                || raised.wheelRadius() == null
                || raised.wheelRadius().front() == null
                || raised.wheelRadius().rear() == null
                || wheelbaseM == null
                || !AS_WEIGHED.missing(setup).isEmpty()) {
            return height(bare);
        }
        RaisedAxle weighed = new RaisedAxle(
                raised.raised(),
                raised.rise().si(),
                raised.load().si(),
                raised.wheelRadius().front().si(),
                raised.wheelRadius().rear().si());
        if (!(weighed.riseM() < weighed.maximumRiseM(wheelbaseM))) {
            return null;
        }
        Trace silent = Trace.withoutWorking();
        PointMass plan = weighing(bare).inPlan(wheelbaseM, null, silent);
        return weighed.heightM(plan.massKg() * Constants.STANDARD_GRAVITY, plan.xM(), wheelbaseM, silent);
    }

    /** The bare vehicle as weighed, before lift and parts; null when its mass or position is not known, its height where that is not. */
    public static @Nullable PointMass asWeighed(Setup setup) {
        Double share = frontShareAsWeighed(setup);
        Double wheelbaseM = setup.chassis() == null ? null : si(setup.chassis().wheelbase());
        if (share == null || wheelbaseM == null || setup.bare() == null) {
            return null;
        }
        return AS_WEIGHED.missing(setup).isEmpty()
                ? new PointMass(bareMassKg(setup.bare()), (1 - share) * wheelbaseM, null, heightAsWeighedM(setup))
                : null;
    }

    /** Loads of the two axles, N, standing level, of the bare vehicle as weighed; null when not known. */
    public static @Nullable AxleLoads axleLoadsAsWeighed(Setup setup) {
        Double wheelbaseM = setup.chassis() == null ? null : si(setup.chassis().wheelbase());
        Double frontShare = wheelbaseM == null ? null : frontShareAsWeighed(setup);
        if (frontShare == null || !AS_WEIGHED.missing(setup).isEmpty()) {
            return null;
        }
        double weightN = bareMassKg(Objects.requireNonNull(setup.bare())) * Constants.STANDARD_GRAVITY;
        return new AxleLoads(weightN * frontShare, weightN * (1 - frontShare));
    }

    /**
     * Loads of the two axles, N, standing level, of the bare vehicle with its items and some of what comes and goes. Call when
     * {@link #axleLoadsAsWeighed} is known and {@link #POSITION_IN_PLAN} is met by it.
     *
     * @param cargo whether items that come and go are aboard
     * @param aboard whether the occupant of that index is
     */
    public static AxleLoads axleLoads(Setup setup, Resolution resolution, boolean cargo, IntPredicate aboard) {
        AxleLoads weighed = Objects.requireNonNull(axleLoadsAsWeighed(setup));
        double wheelbaseM = need(Objects.requireNonNull(setup.chassis()).wheelbase());
        double frontN = weighed.frontN();
        double rearN = weighed.rearN();
        List<Item> items = setup.items() == null ? List.of() : setup.items();
        List<Occupant> occupants = setup.occupants() == null ? List.of() : setup.occupants();
        for (int i = 0; i < items.size() + occupants.size(); i++) {
            int person = i - items.size();
            boolean there =
                    person < 0 ? cargo || !Boolean.TRUE.equals(items.get(i).cargo()) : aboard.test(person);
            if (there) {
                double weightN = Constants.STANDARD_GRAVITY
                        * (person < 0
                                ? itemMassKg(items.get(i))
                                : occupantMassKg(occupants.get(person), person, resolution));
                Position position = person < 0
                        ? items.get(i).position()
                        : occupants.get(person).position();
                double onRear = need(Objects.requireNonNull(position).x()) / wheelbaseM;
                frontN += weightN * (1 - onRear);
                rearN += weightN * onRear;
            }
        }
        return new AxleLoads(frontN, rearN);
    }

    /** Whether {@code bare} with items and occupants can be added up, whatever {@code laden} says. */
    public static boolean derivable(Setup setup) {
        return DERIVABLE.missing(setup).isEmpty();
    }

    /** Index of the driver: who is marked, else the first; -1 when nobody is aboard. */
    public static int driver(Setup setup) {
        List<Occupant> occupants = setup.occupants() == null ? List.of() : setup.occupants();
        for (int i = 0; i < occupants.size(); i++) {
            if (Boolean.TRUE.equals(occupants.get(i).driver())) {
                return i;
            }
        }
        return occupants.isEmpty() ? -1 : 0;
    }

    /** Axle loads as driven, N: {@code laden} if measured, else the bare vehicle with items and occupants; null when not known. */
    public static @Nullable AxleLoads axleLoadsAsDriven(Setup setup, Resolution resolution) {
        Double wheelbaseM = setup.chassis() == null ? null : si(setup.chassis().wheelbase());
        if (wheelbaseM == null || !POSITION_IN_PLAN.missing(setup).isEmpty()) {
            return null;
        }
        Laden laden = laden(setup);
        if (laden != null && laden.massKg() != null && laden.xM() != null) {
            double weightN = laden.massKg() * Constants.STANDARD_GRAVITY;
            double rearN = weightN * laden.xM() / wheelbaseM;
            return new AxleLoads(weightN - rearN, rearN);
        }
        if (!DERIVABLE.missing(setup).isEmpty()) {
            return null;
        }
        PointMass plan =
                weighing(Objects.requireNonNull(setup.bare())).inPlan(wheelbaseM, null, Trace.withoutWorking());
        double mass = plan.massKg();
        double moment = plan.massKg() * plan.xM();
        for (Part part : parts(setup, resolution)) {
            mass += part.mass().massKg();
            moment += part.mass().massKg() * part.mass().xM();
        }
        double rearN = Constants.STANDARD_GRAVITY * moment / wheelbaseM;
        return new AxleLoads(Constants.STANDARD_GRAVITY * mass - rearN, rearN);
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

    private static @Nullable RaisedAxle raisedAxle(Setup setup, Rise rise, Resolution resolution) {
        if (!RAISED_AXLE.isIn(setup)) {
            return null;
        }
        Bare.RaisedAxle sent =
                Objects.requireNonNull(Objects.requireNonNull(setup.bare()).raisedAxle());
        Bare.WheelRadius radius = sent.wheelRadius();
        double front =
                wheelRadiusM(radius == null ? null : radius.front(), Axle.FRONT, rise.front(), setup, resolution);
        double rear = wheelRadiusM(radius == null ? null : radius.rear(), Axle.REAR, rise.rear(), setup, resolution);
        resolution.refuseIfFaulty();
        return new RaisedAxle(Objects.requireNonNull(sent.raised()), need(sent.rise()), need(sent.load()), front, rear);
    }

    /** The vehicle was weighed as found, so on the tyres before a change. */
    private static double wheelRadiusM(
            @Nullable Length sent, Axle axle, AxleLift lift, Setup setup, Resolution resolution) {
        if (sent != null) {
            return sent.si();
        }
        String pointer = "/bare/raisedAxle/wheelRadius/" + axle;
        LoadedRadii radii = Rises.radii(lift, setup, axle, resolution);
        if (radii == null) {
            resolution.missing(pointer);
            return Double.NaN;
        }
        return resolution.assume(
                "wheel-radius",
                pointer,
                new Measure(radii.beforeM(), CLEARANCE),
                "loaded radius of the tyre as weighed",
                Source.derived("the wheel centres stood at the loaded radius during the weighing"));
    }

    /** Readings that no vehicle can give are refused: they contradict each other. */
    private static void checkRaised(
            @Nullable RaisedAxle raised, Weighing weighing, double wheelbaseM, Bare bare, Resolution resolution) {
        if (raised == null) {
            return;
        }
        Quantity rise =
                Objects.requireNonNull(Objects.requireNonNull(bare.raisedAxle()).rise());
        double maximumM = raised.maximumRiseM(wheelbaseM);
        if (!(raised.riseM() < maximumM)) {
            resolution.refuse(Form.outOfRange("/bare/raisedAxle/rise/value", rise, maximumM, false));
            return;
        }
        Trace silent = Trace.withoutWorking();
        PointMass plan = weighing.inPlan(wheelbaseM, null, silent);
        double weightN = plan.massKg() * Constants.STANDARD_GRAVITY;
        double height = raised.heightM(weightN, plan.xM(), wheelbaseM, silent);
        if (!(height > 0 && height < HIGHEST_M)) {
            Unit unit = rise.unit();
            String axle = raised.raised() == Axle.REAR ? "front" : "rear";
            resolution.refuse(new Fault(
                    "/bare/raisedAxle/load",
                    "contradiction",
                    "With this reading of the " + axle + " axle the centre of gravity would be "
                            + Shown.readable(unit.fromSi(height)) + " " + unit
                            + " above the ground, and not from 0 to " + Shown.readable(unit.fromSi(HIGHEST_M)) + " "
                            + unit
                            + " as on any vehicle of this kind; check which axle was raised, the rise and the reading",
                    Objects.requireNonNull(bare.raisedAxle()).load(),
                    null));
        }
    }

    /** What was taken off was there at the weighing, so something must remain of the vehicle without it. */
    private static void checkRemoved(double bareMassKg, Setup setup, Resolution resolution) {
        double removedKg = 0;
        List<Item> items = setup.items() == null ? List.of() : setup.items();
        for (Item item : items) {
            removedKg += Boolean.TRUE.equals(item.removed()) ? need(item.mass()) : 0;
        }
        if (removedKg > 0 && !(bareMassKg - removedKg >= LEAST_MASS_KG)) {
            resolution.refuse(Fault.contradiction(
                    "/items",
                    "As much mass or more is removed than the bare vehicle has; what is removed was weighed with it"));
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

    /** Every part of the result that is optional, and what it lacks. */
    private static void notAnswered(CentreOfGravity.Input input, Setup setup, Resolution resolution) {
        Laden laden = input.laden();
        Weighing weighing = input.weighing();
        List<String> height = new ArrayList<>();
        List<String> side = new ArrayList<>();
        List<String> tracks = new ArrayList<>();
        if (weighing != null) {
            if (input.heightM() == null && input.raisedAxle() == null) {
                height.add("/bare/height");
                height.add(RAISED_AXLE.toString());
            }
            if (weighing.yM() == null && weighing.leftLoadN() == null) {
                side.add("/bare/scales");
                side.add("/bare/position/y");
            }
        }
        Stream.of("/chassis/frontTrack", "/chassis/rearTrack")
                .filter(pointer -> !Pointer.of(pointer).isIn(setup))
                .forEach(tracks::add);
        List<Part> empty =
                input.parts().stream().filter(part -> !part.occupant()).toList();
        if (laden == null) {
            derivedNotAnswered("", weighing, input.parts(), height, side, tracks, resolution);
        } else {
            ladenNotAnswered(input, laden, weighing, height, tracks, resolution);
        }
        if (weighing == null) {
            List<String> missing = DERIVABLE.missing(setup);
            resolution.notAnswered("/empty", missing);
            if (!(setup.items() == null || setup.items().isEmpty())
                    || !(setup.occupants() == null || setup.occupants().isEmpty())) {
                resolution.notAnswered("/leverage", missing);
            }
        } else {
            derivedNotAnswered("/empty", weighing, empty, height, side, tracks, resolution);
        }
        if (!(weighing instanceof Weighing.Scales)) {
            resolution.notAnswered("/crossShare", List.of("/bare/scales"));
        }
        for (String rating : List.of("front", "rear", "total")) {
            String pointer = "/chassis/ratings/" + rating;
            if (!Pointer.of(pointer).isIn(setup)) {
                resolution.notAnswered("/payloadLeft/" + rating, List.of(pointer));
            }
        }
    }

    /** What lacks for a vehicle that is the sum of its parts. */
    private static void derivedNotAnswered(
            String state,
            @Nullable Weighing weighing,
            List<Part> parts,
            List<String> height,
            List<String> side,
            List<String> tracks,
            Resolution resolution) {
        List<String> heights = new ArrayList<>(height);
        parts.stream()
                .filter(part -> part.mass().zM() == null)
                .map(part -> part.pointer() + "/position/z")
                .forEach(heights::add);
        resolution.notAnswered(state + "/position/z", heights);
        boolean scales = weighing instanceof Weighing.Scales;
        resolution.notAnswered(state + "/position/y", scales ? tracks : side);
        boolean aside = parts.stream()
                        .anyMatch(
                                part -> part.mass().yM() != null && part.mass().yM() != 0)
                || (!scales && weighing != null && weighing.yM() != null && weighing.yM() != 0);
        resolution.notAnswered(state + "/leftShare", !side.isEmpty() || !aside ? side : tracks);
    }

    /** What lacks for a vehicle that was measured as driven; what it derives from the parts stands behind what was measured. */
    private static void ladenNotAnswered(
            CentreOfGravity.Input input,
            Laden laden,
            @Nullable Weighing weighing,
            List<String> height,
            List<String> tracks,
            Resolution resolution) {
        if (laden.zM() == null) {
            List<String> heights = new ArrayList<>(List.of("/laden/position/z"));
            heights.addAll(height);
            boolean derived = weighing != null
                    && height.isEmpty()
                    && input.parts().stream().noneMatch(part -> part.mass().zM() == null);
            resolution.notAnswered("/position/z", derived ? List.of() : heights);
        }
        Double yM = laden.yM() != null ? laden.yM() : derivedYM(input, weighing);
        if (yM == null) {
            resolution.notAnswered("/position/y", List.of("/laden/position/y"));
            resolution.notAnswered("/leftShare", List.of("/laden/position/y"));
        } else if (yM != 0) {
            resolution.notAnswered("/leftShare", tracks);
        }
    }

    private static @Nullable Double derivedYM(CentreOfGravity.Input input, @Nullable Weighing weighing) {
        return weighing == null
                ? null
                : CentreOfGravity.derived(input, Trace.withoutWorking()).yM();
    }

    private static double need(@Nullable Quantity quantity) {
        return Objects.requireNonNull(quantity).si();
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : quantity.si();
    }
}
