package org.axlewright.api.drive;

import java.util.List;
import java.util.function.Function;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.drive.GearingResult.ChangePart;
import org.axlewright.api.drive.GearingResult.DisplayReading;
import org.axlewright.api.drive.GearingResult.GearingChange;
import org.axlewright.api.drive.GearingResult.LimiterSetting;
import org.axlewright.api.drive.GearingResult.MeasuredWheel;
import org.axlewright.api.drive.GearingResult.SpeedBand;
import org.axlewright.api.drive.GearingResult.TurnsAtSpeed;
import org.axlewright.api.section.Drive;
import org.axlewright.api.section.Pack;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.drive.Gearing;
import org.axlewright.domain.drive.Gearing.Before;
import org.axlewright.domain.drive.Gearing.Change;
import org.axlewright.domain.drive.Gearing.Display;
import org.axlewright.domain.drive.Gearing.Input;
import org.axlewright.domain.drive.Gearing.Measured;
import org.axlewright.domain.drive.Gearing.MotorPlate;
import org.axlewright.domain.drive.Gearing.Result;
import org.axlewright.domain.drive.Gearing.Sensor;
import org.axlewright.domain.pack.PackVoltages;
import org.axlewright.domain.quantity.Quantity;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Tyre, ratio and motor speed: road speeds, limiter, towing, display, and the share of each change. */
public final class GearingCalculation implements Calculation<Input, Result, GearingResult> {

    private static final Needs NEEDS = Needs.one(
            Needs.all(DrivenWheel.RATIO, DrivenWheel.TYRE),
            Needs.all("/drive/ratio", "/drive/measured/speed", "/drive/measured/motorSpeed"),
            Needs.all("/drive/speedSensor/shown", "/drive/speedSensor/trueSpeed"),
            Needs.all("/drive/speedSensor/pulsesExpected", "/drive/speedSensor/pulsesGiven"));

    @Override
    public String name() {
        return "gearing";
    }

    @Override
    public String question() {
        return "How fast does it go by tyre, ratio and motor speed, and what must the limiter or the display be set to?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/idealSpeed",
                "/limiter/motorSpeedCap",
                "/limiter/shareOfFull",
                "/speedPer1000Rpm",
                "/towSpeed",
                "/display/correction",
                "/change/speedFactor");
    }

    @Override
    public Class<GearingResult> resultType() {
        return GearingResult.class;
    }

    @Override
    public Input resolve(Setup setup, Resolution resolution) {
        Drive drive = setup.drive();
        Drive.Controller controller = drive == null ? null : drive.controller();
        Drive.Motor motor = DrivenWheel.motor(setup);
        PackVoltages voltages = DrivenWheel.voltages(setup);
        Pack.Blocks blocks = setup.pack() == null ? null : setup.pack().blocks();
        Drive.FormerDrive former = drive == null ? null : drive.before();
        Double massKg = former != null
                        && former.mass() != null
                        && MassSections.MASS_ONLY.missing(setup).isEmpty()
                ? (Double) MassSections.massAsDrivenKg(setup, resolution)
                : null;
        Input input = new Input(
                DrivenWheel.wheel(setup, resolution),
                drive == null ? null : DrivenWheel.reduction(drive.ratio()),
                plate(motor, resolution),
                voltages == null ? null : voltages.nominalV(),
                voltages == null ? null : voltages.cutOffV(),
                blocks == null ? null : blocks.count(),
                massKg,
                setup.manoeuvre() == null
                        ? null
                        : DrivenWheel.si(setup.manoeuvre().speed()),
                drive == null ? null : DrivenWheel.si(drive.speedLimit()),
                controller == null ? null : DrivenWheel.si(controller.speedCap()),
                motor == null ? null : DrivenWheel.si(motor.maximumSpeed()),
                measured(drive == null ? null : drive.measured()),
                former == null
                        ? null
                        : new Before(
                                DrivenWheel.reduction(former.ratio()),
                                DrivenWheel.si(former.voltage()),
                                DrivenWheel.si(former.mass())),
                sensor(drive == null ? null : drive.speedSensor()));
        notAnswered(input, resolution);
        return input;
    }

    private static @Nullable MotorPlate plate(Drive.@Nullable Motor motor, Resolution resolution) {
        if (motor == null) {
            return null;
        }
        List<Drive.CurvePoint> curve = motor.curve() == null ? List.of() : motor.curve();
        Quantity last = curve.isEmpty() ? null : curve.get(curve.size() - 1).speed();
        if (last != null && last.si() > 0) {
            return new MotorPlate(last.si(), DrivenWheel.si(motor.voltage()), true, false, motor.type());
        }
        if (DrivenWheel.weakensField(motor)) {
            return new MotorPlate(
                    DrivenWheel.need(DrivenWheel.si(motor.maximumSpeed())), null, true, true, motor.type());
        }
        if (motor.speed() == null) {
            return null;
        }
        boolean loaded = DrivenWheel.loaded(motor, resolution);
        return new MotorPlate(motor.speed().si(), DrivenWheel.si(motor.voltage()), loaded, false, motor.type());
    }

    private static @Nullable Measured measured(Drive.@Nullable MeasuredSpeed sent) {
        if (sent == null || (sent.speed() == null && sent.voltage() == null)) {
            return null;
        }
        return new Measured(
                DrivenWheel.si(sent.speed()), DrivenWheel.si(sent.motorSpeed()), DrivenWheel.si(sent.voltage()));
    }

    private static @Nullable Sensor sensor(Drive.@Nullable SpeedSensor sent) {
        return sent == null
                ? null
                : new Sensor(
                        sent.pulsesExpected(),
                        sent.pulsesGiven(),
                        DrivenWheel.si(sent.shown()),
                        DrivenWheel.si(sent.trueSpeed()));
    }

    private static void notAnswered(Input input, Resolution resolution) {
        boolean measuredWheel = input.measured() != null
                && input.measured().speedMPS() != null
                && input.measured().motorRadPS() != null;
        if (input.reduction() == null || (input.wheel() == null && !measuredWheel)) {
            String lacking = input.reduction() == null ? "/drive/ratio" : "/tyres/rear/size";
            for (String result :
                    List.of("/rollout", "/speedPer1000Rpm", "/atSpeed", "/idealSpeed", "/limiter", "/towSpeed")) {
                resolution.notAnswered(result, lacking);
            }
            return;
        }
        if (input.speedMPS() == null) {
            resolution.notAnswered("/atSpeed", "/manoeuvre/speed");
        }
        if (input.motor() == null) {
            resolution.notAnswered("/idealSpeed", "/drive/motor/speed");
            resolution.notAnswered("/roadSpeed", "/drive/motor/speed");
        } else if (input.packV() == null) {
            resolution.notAnswered("/fullMotorSpeed", "/pack/chemistry", "/pack/cellsInSeries");
        }
        if (input.speedLimitMPS() == null) {
            resolution.notAnswered("/limiter", "/drive/speedLimit");
        } else if (input.motor() == null) {
            resolution.notAnswered("/limiter/shareOfFull", "/drive/motor/speed");
        }
        if (input.speedCapRadPS() == null) {
            resolution.notAnswered("/capSpeed", "/drive/controller/speedCap");
        }
        if (input.maximumRadPS() == null) {
            resolution.notAnswered("/towSpeed", "/drive/motor/maximumSpeed");
        }
        if (input.before() == null && (input.wheel() == null || input.wheel().rolloutBeforeM() == null)) {
            resolution.notAnswered("/change", "/drive/before", "/lift/rear/tyreBefore");
        }
    }

    @Override
    public Result calculate(Input input, Trace trace) {
        return Gearing.of(input, trace);
    }

    @Override
    public GearingResult show(Result result, UnitSystem units) {
        Gearing.AtSpeed at = result.atSpeed();
        Gearing.Limiter limiter = result.limiter();
        Gearing.MeasuredWheel measured = result.measured();
        Display display = result.display();
        Change change = result.change();
        Double implied = measured == null ? null : measured.impliedRolloutM();
        return new GearingResult(
                shown(result.idealMPS(), units::speed),
                result.roadLeastMPS() == null || result.roadMostMPS() == null
                        ? null
                        : new SpeedBand(units.speed(result.roadLeastMPS()), units.speed(result.roadMostMPS())),
                shown(result.fullMotorRadPS(), units::rotation),
                limiter == null
                        ? null
                        : new LimiterSetting(
                                units.speed(limiter.speedMPS()),
                                units.rotation(limiter.motorRadPS()),
                                limiter.shareOfFull()),
                shown(result.capMPS(), units::speed),
                shown(result.speedPerThousandMPS(), units::speed),
                shown(result.rolloutM(), units::clearance),
                at == null
                        ? null
                        : new TurnsAtSpeed(
                                units.speed(at.speedMPS()),
                                units.rotation(at.wheelRadPS()),
                                units.rotation(at.motorRadPS())),
                shown(result.towMPS(), units::speed),
                display == null
                        ? null
                        : new DisplayReading(
                                display.shownShare(), display.predictedShare(), display.correction(), display.cause()),
                change == null
                        ? null
                        : new GearingChange(
                                change.speedFactor(),
                                change.forceFactor(),
                                change.pullFactor(),
                                change.parts().stream()
                                        .map(part -> new ChangePart(
                                                part.name(),
                                                part.speedFactor(),
                                                part.speedShare(),
                                                part.pullFactor(),
                                                part.pullShare()))
                                        .toList()),
                measured == null
                        ? null
                        : new MeasuredWheel(
                                shown(implied, units::clearance),
                                implied == null ? null : units.clearance(implied / Math.PI),
                                shown(measured.wheelRadPS(), units::rotation),
                                measured.rolloutFactor(),
                                measured.calibrates(),
                                measured.shareOfIdeal()));
    }

    private static <Q> @Nullable Q shown(@Nullable Double si, Function<Double, Q> unit) {
        return si == null ? null : unit.apply(si);
    }
}
