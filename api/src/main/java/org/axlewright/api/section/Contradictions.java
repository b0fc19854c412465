package org.axlewright.api.section;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.axlewright.api.problem.Fault;
import org.axlewright.domain.axles.AxleSet;
import org.axlewright.domain.check.Unreadable;
import org.axlewright.domain.lift.LiftKind;
import org.axlewright.domain.lift.MeasuredAt;
import org.axlewright.domain.pack.DischargeCapacity;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.LoadUnit;
import org.axlewright.domain.quantity.Mass;
import org.axlewright.domain.quantity.Quantity;
import org.jspecify.annotations.Nullable;

/** Two answers for one thing are a contradiction, not a choice; each room's pairs stand here together. */
final class Contradictions {

    /** A measured tyre may stand over its nominal size by this factor before the two contradict each other; common practice, no source. */
    private static final double OVER_NOMINAL = 1.05;

    /** Sine of the steepest slope that can be sent. */
    private static final double HIGHEST_HILL_SINE = Math.sin(Math.PI / 4);

    private Contradictions() {}

    static void find(Setup setup, List<Fault> faults) {
        bare(setup.bare(), faults);
        charge(setup.charge(), faults);
        Lift lift = setup.lift();
        if (lift != null) {
            lift(lift.front(), "/lift/front", faults);
            lift(lift.rear(), "/lift/rear", faults);
        }
        if (setup.chassis() != null && setup.chassis().wheelChanges() != null) {
            wheelChange(setup.chassis().wheelChanges().front(), "/chassis/wheelChanges/front", faults);
            wheelChange(setup.chassis().wheelChanges().rear(), "/chassis/wheelChanges/rear", faults);
        }
        pack(setup.pack(), faults);
        FitContradictions.find(setup, faults);
        brakes(setup.brakes(), setup.chassis(), faults);
        hill(setup.hill(), faults);
        aboard(setup, faults);
        FrameForm.find(setup.frame(), faults);
        if (setup.load() != null) {
            exclude(
                    faults,
                    "/load/power",
                    setup.load().power(),
                    "/load/current",
                    setup.load().current(),
                    "; give the load one way");
        }
        if (setup.storage() != null) {
            storage(setup.storage(), faults);
        }
        Tyres tyres = setup.tyres();
        if (tyres != null) {
            tyre(tyres.front(), "/tyres/front", faults);
            tyre(tyres.rear(), "/tyres/rear", faults);
        }
        precharge(setup.precharge(), faults);
        trailer(setup.trailer(), faults);
        Suspension suspension = setup.suspension();
        if (suspension != null) {
            suspension(suspension.front(), "/suspension/front", faults);
            suspension(suspension.rear(), "/suspension/rear", faults);
        }
        List<Joint> joints = setup.joints() == null ? List.of() : setup.joints();
        for (int i = 0; i < joints.size(); i++) {
            joint(joints.get(i), "/joints/" + i, faults);
        }
        List<Circuit> circuits = setup.circuits() == null ? List.of() : setup.circuits();
        for (int i = 0; i < circuits.size(); i++) {
            circuit(circuits.get(i), "/circuits/" + i, faults);
        }
    }

    /** One drives; and what was taken off does not come and go. */
    private static void aboard(Setup setup, List<Fault> faults) {
        List<Occupant> occupants = setup.occupants() == null ? List.of() : setup.occupants();
        int drivers = 0;
        for (int i = 0; i < occupants.size(); i++) {
            if (Boolean.TRUE.equals(occupants.get(i).driver()) && ++drivers > 1) {
                faults.add(Fault.contradiction(
                        "/occupants/" + i + "/driver", "One drives; another occupant is the driver too"));
            }
        }
        List<Item> items = setup.items() == null ? List.of() : setup.items();
        for (int i = 0; i < items.size(); i++) {
            if (Boolean.TRUE.equals(items.get(i).removed())
                    && Boolean.TRUE.equals(items.get(i).cargo())) {
                faults.add(Fault.contradiction(
                        "/items/" + i + "/cargo", "What was taken off the vehicle does not come and go with a trip"));
            }
        }
    }

    private static void wheelChange(Chassis.@Nullable WheelChange change, String pointer, List<Fault> faults) {
        if (change != null) {
            exclude(
                    faults,
                    pointer + "/spacerPerAxle",
                    change.spacerPerAxle(),
                    pointer + "/spacerPerWheel",
                    change.spacerPerWheel(),
                    "; give the thickness at each wheel, or what both add to the track");
        }
    }

    private static void storage(Storage storage, List<Fault> faults) {
        exclude(
                faults,
                "/storage/until",
                storage.until(),
                "/storage/duration",
                storage.duration(),
                "; give the time one way: duration, or from and until");
        exclude(
                faults,
                "/storage/quiescentPower",
                storage.quiescentPower(),
                "/storage/quiescentCurrent",
                storage.quiescentCurrent(),
                "; give what stays on one way");
    }

    private static void circuit(Circuit circuit, String pointer, List<Fault> faults) {
        exclude(
                faults,
                pointer + "/profile",
                circuit.profile(),
                pointer + "/continuousCurrent",
                circuit.continuousCurrent(),
                "; give the current one way: a profile, or one that does not change");
        exclude(
                faults,
                pointer + "/ambient",
                circuit.ambient(),
                pointer + "/location",
                circuit.location(),
                "; a location has its own temperature, the table's factor contains it");
        exclude(
                faults,
                pointer + "/insulationThickness",
                circuit.insulationThickness(),
                pointer + "/outerDiameter",
                circuit.outerDiameter(),
                "; one follows from the other and the size");
        if (circuit.parallel() != null && circuit.size() == null) {
            faults.add(Fault.missing(pointer + "/size"));
        }
    }

    private static void joint(Joint joint, String pointer, List<Fault> faults) {
        exclude(
                faults,
                pointer + "/resistance",
                joint.resistance(),
                pointer + "/voltageDrop",
                joint.voltageDrop(),
                "; one follows from the other and the current");
        String oneCurrent = "; say the current it carries one way";
        exclude(faults, pointer + "/profile", joint.profile(), pointer + "/circuit", joint.circuit(), oneCurrent);
        exclude(
                faults,
                pointer + "/continuousCurrent",
                joint.continuousCurrent(),
                pointer + "/circuit",
                joint.circuit(),
                oneCurrent);
        exclude(
                faults,
                pointer + "/profile",
                joint.profile(),
                pointer + "/continuousCurrent",
                joint.continuousCurrent(),
                oneCurrent);
    }

    private static void precharge(@Nullable Precharge precharge, List<Fault> faults) {
        if (precharge == null) {
            return;
        }
        exclude(
                faults,
                "/precharge/measured",
                precharge.measured(),
                "/precharge/capacitance",
                precharge.capacitance(),
                "; a reading stands in for a capacitance that is not known");
        Precharge.HeldLoad load = precharge.heldLoad();
        if (load != null) {
            exclude(
                    faults,
                    "/precharge/heldLoad/power",
                    load.power(),
                    "/precharge/heldLoad/resistance",
                    load.resistance(),
                    "; give the load one way");
        }
        Precharge.Coil coil = precharge.coil();
        if (coil != null && coil.supplyVoltage() != null) {
            exclude(
                    faults,
                    "/precharge/coil/current",
                    coil.current(),
                    "/precharge/coil/resistance",
                    coil.resistance(),
                    "; with the supply one follows from the other");
        }
    }

    private static void bare(@Nullable Bare bare, List<Fault> faults) {
        if (bare == null) {
            return;
        }
        String oneWay = "; give the weight one way: scales, or axles, or mass with frontShare, or mass with position";
        exclude(faults, "/bare/axles", bare.axles(), "/bare/scales", bare.scales(), oneWay);
        exclude(faults, "/bare/mass", bare.mass(), "/bare/scales", bare.scales(), oneWay);
        exclude(faults, "/bare/mass", bare.mass(), "/bare/axles", bare.axles(), oneWay);
        exclude(faults, "/bare/frontShare", bare.frontShare(), "/bare/scales", bare.scales(), oneWay);
        exclude(faults, "/bare/frontShare", bare.frontShare(), "/bare/axles", bare.axles(), oneWay);
        Object x = bare.position() == null ? null : bare.position().x();
        exclude(faults, "/bare/position/x", x, "/bare/scales", bare.scales(), oneWay);
        exclude(faults, "/bare/position/x", x, "/bare/axles", bare.axles(), oneWay);
        exclude(faults, "/bare/position/x", x, "/bare/frontShare", bare.frontShare(), oneWay);
        Object y = bare.position() == null ? null : bare.position().y();
        exclude(faults, "/bare/position/y", y, "/bare/scales", bare.scales(), oneWay);
        String oneHeight = "; give the height one way: height, or position/z, or raisedAxle";
        Object z = bare.position() == null ? null : bare.position().z();
        exclude(faults, "/bare/raisedAxle", bare.raisedAxle(), "/bare/height", bare.height(), oneHeight);
        exclude(faults, "/bare/position/z", z, "/bare/height", bare.height(), oneHeight);
        exclude(faults, "/bare/position/z", z, "/bare/raisedAxle", bare.raisedAxle(), oneHeight);
        if (bare.scales() != null) {
            weighsSomething(
                    "/bare/scales",
                    faults,
                    bare.scales().frontLeft(),
                    bare.scales().frontRight(),
                    bare.scales().rearLeft(),
                    bare.scales().rearRight());
        }
        if (bare.axles() != null) {
            weighsSomething(
                    "/bare/axles", faults, bare.axles().front(), bare.axles().rear());
        }
    }

    /** Every single scale may show nothing; all together show at least the least mass a vehicle may have. */
    private static void weighsSomething(String pointer, List<Fault> faults, @Nullable Load... readings) {
        double totalN = 0;
        for (Load reading : readings) {
            if (reading == null || reading.unit() == null || Double.isNaN(reading.value())) {
                return;
            }
            totalN += reading.si();
        }
        double leastN = LoadUnit.KILOGRAM.toSi(1);
        if (totalN < leastN) {
            LoadUnit unit = readings[0].unit();
            faults.add(Form.outOfRange(pointer, new Load(unit.fromSi(totalN), unit), leastN, true));
        }
    }

    private static void lift(Lift.@Nullable AxleLift lift, String pointer, List<Fault> faults) {
        if (lift == null) {
            return;
        }
        tyre(lift.tyreBefore(), pointer + "/tyreBefore", faults);
        LiftKind kind = lift.kind();
        boolean noSpring = kind == LiftKind.SPINDLE || kind == LiftKind.ARMS || kind == LiftKind.BODY;
        if (noSpring && lift.measuredAt() == MeasuredAt.SPRING) {
            faults.add(Fault.contradiction(
                    pointer + "/measuredAt",
                    "A lift of kind " + kind + " has no part at the spring; give its amount at the wheel"));
        }
    }

    /** What no tyre can be: a loaded radius beyond half its diameter or less than half of that, a rollout beyond its circumference. */
    private static void tyre(Tyres.@Nullable Tyre tyre, String pointer, List<Fault> faults) {
        Double diameter = tyre == null ? null : diameterM(tyre);
        if (tyre == null || diameter == null) {
            return;
        }
        Length radius = complete(tyre.loadedRadius());
        if (radius != null && !(radius.si() <= OVER_NOMINAL * diameter / 2 && radius.si() >= diameter / 4)) {
            Length half = new Length(radius.unit().fromSi(diameter / 2), radius.unit());
            faults.add(new Fault(
                    pointer + "/loadedRadius",
                    "contradiction",
                    "A loaded radius of " + Form.readable(radius.value()) + " " + radius.unit()
                            + " does not belong to a tyre whose free radius is " + Form.readable(half.value()) + " "
                            + half.unit(),
                    radius,
                    half));
        }
        Length rollout = complete(tyre.rollout());
        if (rollout != null
                && !(rollout.si() <= OVER_NOMINAL * diameter * Math.PI && rollout.si() >= diameter * Math.PI / 2)) {
            Length around = new Length(rollout.unit().fromSi(diameter * Math.PI), rollout.unit());
            faults.add(new Fault(
                    pointer + "/rollout",
                    "contradiction",
                    "A rollout of " + Form.readable(rollout.value()) + " " + rollout.unit()
                            + " does not belong to a tyre whose free circumference is " + Form.readable(around.value())
                            + " " + around.unit(),
                    rollout,
                    around));
        }
    }

    /** A size that can't be read is a fault of its own. */
    private static @Nullable Double diameterM(Tyres.Tyre tyre) {
        if (tyre.diameter() != null) {
            Length diameter = complete(tyre.diameter());
            return diameter == null ? null : (Double) diameter.si();
        }
        if (tyre.size() == null) {
            return null;
        }
        try {
            return org.axlewright.domain.tyre.TyreSize.parse(tyre.size()).diameterM();
        } catch (Unreadable reportedByForm) {
            return null;
        }
    }

    private static void charge(@Nullable ChargeWindow charge, List<Fault> faults) {
        if (charge == null) {
            return;
        }
        double from = charge.from() == null ? 0 : charge.from();
        double to = charge.to() == null ? 1 : charge.to();
        if (from >= to) {
            faults.add(new Fault(
                    charge.to() == null ? "/charge/from" : "/charge/to",
                    "contradiction",
                    "A charge ends above the state of charge it starts from: " + to + " is not above " + from,
                    charge.to() == null ? from : to,
                    charge.to() == null ? to : from));
        }
    }

    private static void trailer(@Nullable Trailer trailer, List<Fault> faults) {
        if (trailer == null) {
            return;
        }
        exclude(
                faults,
                "/trailer/brakeForce",
                trailer.brakeForce(),
                "/trailer/braked",
                Boolean.FALSE.equals(trailer.braked()) ? trailer.braked() : null,
                "; a trailer without brakes has no brake force");
        Mass mass = complete(trailer.mass());
        Load hitch = complete(trailer.hitchLoad());
        if (mass != null && hitch != null && Math.abs(hitch.si()) > mass.si() * Constants.STANDARD_GRAVITY) {
            faults.add(new Fault(
                    "/trailer/hitchLoad",
                    "contradiction",
                    "A trailer can't put more on the hitch than it weighs",
                    hitch,
                    new Load(hitch.unit().fromSi(mass.si() * Constants.STANDARD_GRAVITY), hitch.unit())));
        }
    }

    private static void suspension(Suspension.@Nullable AxleSuspension axle, String pointer, List<Fault> faults) {
        if (axle == null) {
            return;
        }
        exclude(
                faults,
                pointer + "/measured",
                axle.measured(),
                pointer + "/springRate",
                axle.springRate(),
                "; give the springs one way: their rate, or how far a known mass pressed them down");
        exclude(
                faults,
                pointer + "/springSpacing",
                axle.springSpacing(),
                pointer + "/independent",
                Boolean.TRUE.equals(axle.independent()) ? axle.independent() : null,
                "; springs of a solid axle have a spacing, independent wheels have a track");
    }

    /** Null for a quantity without value or unit: that is a fault of its own, and nothing can be held against it. */
    static <Q extends Quantity> @Nullable Q complete(@Nullable Q quantity) {
        return quantity == null || quantity.unit() == null || Double.isNaN(quantity.value()) ? null : quantity;
    }

    private static void pack(@Nullable Pack pack, List<Fault> faults) {
        if (pack == null) {
            return;
        }
        String oneCapacity =
                "; give the capacity one way: capacity with ratedHours and peukertExponent, or capacityRows";
        List<Pack.CapacityRow> rows = pack.capacityRows();
        exclude(faults, "/pack/capacityRows", rows, "/pack/capacity", pack.capacity(), oneCapacity);
        exclude(faults, "/pack/capacityRows", rows, "/pack/ratedHours", pack.ratedHours(), oneCapacity);
        if (rows != null && rows.size() > 1) {
            exclude(faults, "/pack/peukertExponent", pack.peukertExponent(), "/pack/capacityRows", rows, oneCapacity);
            capacityRows(rows, faults);
        }
        blocks(pack, faults);
    }

    private static void capacityRows(List<Pack.CapacityRow> sent, List<Fault> faults) {
        List<DischargeCapacity.Row> rows = new ArrayList<>();
        for (Pack.CapacityRow row : sent) {
            double currentA = positiveSi(row.current());
            double timeS = positiveSi(row.time());
            if (currentA == 0 || timeS == 0) {
                return;
            }
            rows.add(new DischargeCapacity.Row(currentA, timeS));
        }
        int implausible = DischargeCapacity.firstImplausible(rows);
        if (implausible >= 0) {
            faults.add(Fault.contradiction(
                    "/pack/capacityRows/" + implausible,
                    "No cell gives this row beside the others: a larger current must come with a shorter time and no more charge,"
                            + " with a Peukert exponent from 1 to 2 between any two rows"));
        }
    }

    /** In SI when it is complete and more than nothing; else 0: what is wrong with it is told of elsewhere. */
    static double positiveSi(@Nullable Quantity sent) {
        Quantity quantity = complete(sent);
        double si = quantity == null ? 0 : quantity.si();
        return si > 0 && si <= Double.MAX_VALUE ? si : 0;
    }

    private static void blocks(Pack pack, List<Fault> faults) {
        Pack.Blocks blocks = pack.blocks();
        if (blocks == null
                || blocks.count() == null
                || pack.chemistry() == null
                || !pack.chemistry().isLeadAcid()) {
            return;
        }
        double blockV = positiveSi(blocks.voltage());
        if (blockV < 2 || blockV > 100) { // out of range, told of elsewhere
            return;
        }
        OptionalInt cells = PackVoltages.cellsInBlocks(pack.chemistry(), blocks.count(), blockV);
        if (cells.isEmpty()) {
            faults.add(
                    Fault.contradiction(
                            "/pack/blocks/voltage",
                            "A lead-acid block of this voltage holds no whole number of 2 V cells; give 2, 4, 6, 8, 10 or 12 V and so on"));
        } else if (pack.cellsInSeries() != null && cells.getAsInt() != pack.cellsInSeries()) {
            faults.add(Fault.contradiction(
                    "/pack/blocks",
                    "These blocks hold " + cells.getAsInt() + " cells in series, /pack/cellsInSeries says "
                            + pack.cellsInSeries()));
        } else if (cells.getAsInt() > 200) {
            faults.add(Fault.contradiction(
                    "/pack/blocks",
                    "These blocks hold " + cells.getAsInt() + " cells in series, at most 200 are allowed"));
        }
    }

    private static void brakes(@Nullable Brakes brakes, @Nullable Chassis chassis, List<Fault> faults) {
        if (brakes == null) {
            return;
        }
        String oneStrength = "; give the strength one way: torque at the wheels, or force at the ground";
        AxleSet braked = chassis == null ? null : chassis.braked();
        axleBrakes(brakes.front(), "/brakes/front", braked == AxleSet.REAR, oneStrength, faults);
        axleBrakes(brakes.rear(), "/brakes/rear", braked == AxleSet.FRONT, oneStrength, faults);
        Brakes.ParkingBrake parking = brakes.parking();
        if (parking != null) {
            exclude(
                    faults,
                    "/brakes/parking/torque",
                    parking.torque(),
                    "/brakes/parking/force",
                    parking.force(),
                    oneStrength);
        }
    }

    private static void axleBrakes(
            Brakes.@Nullable AxleBrakes axle,
            String pointer,
            boolean unbraked,
            String oneStrength,
            List<Fault> faults) {
        if (axle == null) {
            return;
        }
        exclude(faults, pointer + "/torque", axle.torque(), pointer + "/force", axle.force(), oneStrength);
        boolean figures = axle.torque() != null || axle.force() != null || axle.kind() != null || axle.mass() != null;
        if (unbraked && figures) {
            faults.add(Fault.contradiction(
                    pointer, pointer + " has figures, but /chassis/braked says that this axle has no brakes"));
        }
    }

    /** Length, drop and grade of a hill within one per cent of each other. */
    private static void hill(@Nullable Hill hill, List<Fault> faults) {
        if (hill == null) {
            return;
        }
        Quantity grade = complete(hill.grade());
        double lengthM = positiveSi(hill.length());
        double dropM = positiveSi(hill.drop());
        if (lengthM == 0 || dropM == 0) {
            return;
        }
        if (dropM > lengthM * HIGHEST_HILL_SINE) {
            faults.add(Fault.contradiction(
                    "/hill/drop",
                    "A road can't fall by more than its length times 0.707, which is a slope of 45 degrees"));
        } else if (grade != null && Math.abs(dropM - lengthM * Math.sin(grade.si())) > 0.01 * dropM) {
            faults.add(Fault.contradiction(
                    "/hill/grade",
                    "Length, drop and grade disagree: a drop over this length is a grade of "
                            + Form.readable(100 * Math.tan(Math.asin(dropM / lengthM)))
                            + " %; give two of the three, and mind per cent against degrees"));
        }
    }

    /** A fault at the first pointer when both are there. */
    static void exclude(
            List<Fault> faults,
            String pointer,
            @Nullable Object value,
            String otherPointer,
            @Nullable Object other,
            String advice) {
        if (value != null && other != null) {
            faults.add(
                    Fault.contradiction(pointer, pointer + " and " + otherPointer + " answer the same thing" + advice));
        }
    }
}
