package org.axlewright.api.legalclass;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.section.Chassis;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Setup;
import org.axlewright.api.section.Use;
import org.axlewright.domain.axles.WheelPlan;
import org.axlewright.domain.legalclass.Aspect;
import org.axlewright.domain.legalclass.Carries;
import org.axlewright.domain.legalclass.Place;
import org.axlewright.domain.legalclass.Vehicle;
import org.axlewright.domain.quantity.Constants;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.trace.Measure;
import org.axlewright.domain.trace.Source;
import org.jspecify.annotations.Nullable;

/** From use, chassis, pack, drive and the masses to the vehicle that classes ask about: defaults, and what can't be answered. */
final class VehicleClassSections {

    private VehicleClassSections() {}

    static Vehicle resolve(Setup setup, Resolution resolution) {
        Use use = setup.use();
        Chassis chassis = setup.chassis();
        Chassis.Ratings ratings = chassis == null ? null : chassis.ratings();
        Double unladenKg = use != null && use.kerbMass() != null
                ? (Double) use.kerbMass().si()
                : MassSections.unladenMassKg(setup, "/use/kerbMass", resolution);
        Double packKg = setup.pack() == null ? null : si(setup.pack().mass());
        if (unladenKg != null && packKg != null && packKg >= unladenKg) {
            resolution.refuse(
                    Fault.contradiction("/pack/mass", "The pack can't weigh as much as the whole vehicle or more"));
        }
        resolution.refuseIfFaulty();
        Drive.Motor motor = setup.drive() == null ? null : setup.drive().motor();
        Vehicle vehicle = new Vehicle(
                topSpeed(setup, resolution),
                use == null ? null : si(use.formerTopSpeed()),
                new Vehicle.Ratings(
                        ratings == null ? null : kilograms(ratings.total()),
                        ratings == null ? null : kilograms(ratings.front()),
                        ratings == null ? null : kilograms(ratings.rear())),
                new Vehicle.Masses(unladenKg, packKg, use == null ? null : si(use.cargo())),
                seats(setup, resolution),
                wheels(chassis, resolution),
                motor == null ? null : si(motor.power()),
                new Vehicle.Size(
                        chassis == null ? null : si(chassis.length()),
                        chassis == null ? null : si(chassis.width()),
                        chassis == null ? null : si(chassis.height()),
                        chassis == null ? null : si(chassis.wheelbase()),
                        chassis == null ? null : si(chassis.groundClearance()),
                        use == null ? null : si(use.seatHeight())),
                use == null ? null : si(use.drawbarPull()),
                place(use, resolution),
                carries(use, resolution),
                use == null ? null : use.enclosed(),
                use == null ? null : use.heldBy(),
                use == null ? null : use.changedBy());
        notAnswered(vehicle, resolution);
        return vehicle;
    }

    private static double topSpeed(Setup setup, Resolution resolution) {
        if (setup.use() != null && setup.use().topSpeed() != null) {
            return setup.use().topSpeed().si();
        }
        Drive drive = Objects.requireNonNull(setup.drive(), "drive");
        boolean limited = drive.speedLimit() != null;
        double speed = limited
                ? Objects.requireNonNull(drive.speedLimit()).si()
                : Objects.requireNonNull(
                                Objects.requireNonNull(drive.measured()).speed())
                        .si();
        return resolution.assume(
                "top-speed",
                "/use/topSpeed",
                new Measure(speed, Aspect.TOP_SPEED.dimension()),
                limited ? "the speed that the controller is set to hold" : "the speed that was measured",
                limited
                        ? Source.derived("drive/speedLimit; a limiter may overshoot")
                        : Source.derived("drive/measured/speed"));
    }

    private static Place place(@Nullable Use use, Resolution resolution) {
        return use != null && use.place() != null
                ? use.place()
                : resolution.assume(
                        "on-public-roads",
                        "/use/place",
                        Place.PUBLIC_ROAD,
                        "the place that asks most of a vehicle",
                        Source.COMMON_PRACTICE);
    }

    private static Carries carries(@Nullable Use use, Resolution resolution) {
        return use != null && use.carries() != null
                ? use.carries()
                : resolution.assume(
                        "carries-both",
                        "/use/carries",
                        Carries.BOTH,
                        "a work vehicle with seats carries people and goods",
                        Source.COMMON_PRACTICE);
    }

    private static int wheels(@Nullable Chassis chassis, Resolution resolution) {
        WheelPlan plan = chassis != null && chassis.wheelPlan() != null
                ? chassis.wheelPlan()
                : resolution.assume(
                        "four-wheels",
                        "/chassis/wheelPlan",
                        WheelPlan.FOUR_WHEELS,
                        "nearly every vehicle of this kind",
                        Source.COMMON_PRACTICE);
        return plan == WheelPlan.FOUR_WHEELS ? 4 : 3;
    }

    private static @Nullable Integer seats(Setup setup, Resolution resolution) {
        if (setup.chassis() != null && setup.chassis().seats() != null) {
            return setup.chassis().seats();
        }
        if (setup.occupants() == null || setup.occupants().isEmpty()) {
            return null;
        }
        return resolution.assume(
                "a-seat-for-everybody",
                "/chassis/seats",
                setup.occupants().size(),
                "one seat for each occupant that was sent",
                Source.COMMON_PRACTICE);
    }

    private static void notAnswered(Vehicle vehicle, Resolution resolution) {
        Double grossKg = vehicle.ratings().grossKg();
        Double unladenKg = vehicle.masses().unladenKg();
        List<String> unladen = unladenKg == null ? List.of("/use/kerbMass", "/bare") : List.of();
        List<String> rating = grossKg == null ? List.of("/chassis/ratings/total") : List.of();
        List<String> running = new ArrayList<>(unladen);
        if (vehicle.masses().packKg() == null) {
            running.add("/pack/mass");
        }
        List<String> least = new ArrayList<>(unladen);
        List<String> seats = vehicle.seats() == null ? List.of("/chassis/seats") : List.of();
        least.addAll(seats);
        List<String> payload = new ArrayList<>(rating);
        payload.addAll(unladen);
        resolution.notAnswered("/grossRating", rating);
        resolution.notAnswered("/unladenMass", unladen);
        resolution.notAnswered("/runningOrder", running);
        resolution.notAnswered("/power", vehicle.powerW() == null ? List.of("/drive/motor/power") : List.of());
        resolution.notAnswered("/seats", seats);
        resolution.notAnswered("/leastGrossRating", least);
        resolution.notAnswered("/runningOrderMass", running);
        resolution.notAnswered("/payload", payload);
        resolution.notAnswered(
                "/crossing", vehicle.formerTopSpeedMPerS() == null ? List.of("/use/formerTopSpeed") : List.of());
    }

    /** A rating is a load; classes count it as a mass. */
    private static @Nullable Double kilograms(@Nullable Quantity load) {
        return load == null ? null : (Double) (load.si() / Constants.STANDARD_GRAVITY);
    }

    private static @Nullable Double si(@Nullable Quantity quantity) {
        return quantity == null ? null : (Double) quantity.si();
    }
}
