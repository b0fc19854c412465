package org.axlewright.api.descent;

import java.util.List;
import java.util.function.Function;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.descent.DescentResult.AdhesionResult;
import org.axlewright.api.descent.DescentResult.BrakesResult;
import org.axlewright.api.descent.DescentResult.Empty;
import org.axlewright.api.descent.DescentResult.PackResult;
import org.axlewright.api.descent.DescentResult.ResistorResult;
import org.axlewright.api.descent.DescentResult.RunawayResult;
import org.axlewright.api.descent.DescentResult.SplitResult;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.descent.Descent;
import org.axlewright.domain.descent.Descent.BrakesHeat;
import org.axlewright.domain.descent.Descent.OfState;
import org.axlewright.domain.descent.Descent.PackDown;
import org.axlewright.domain.descent.Descent.ResistorNeed;
import org.axlewright.domain.descent.Descent.Runaway;
import org.axlewright.domain.descent.Descent.Split;
import org.axlewright.domain.quantity.Power;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** A hill to go down. */
public final class DescentCalculation implements Calculation<Descent.Input, Descent.Result, DescentResult> {

    private static final Needs FALL = Needs.one(Needs.value("/hill/grade"), Needs.value("/ground/grade"));

    private static final Needs SPEED = Needs.one(Needs.value("/hill/speed"), Needs.value("/manoeuvre/speed"));

    private static final Needs HILL = Needs.one(
            Needs.all(Needs.value("/hill/length"), FALL, SPEED),
            Needs.all(Needs.value("/hill/drop"), FALL, SPEED),
            Needs.all(Needs.value("/hill/drop"), Needs.value("/hill/length"), SPEED));

    private static final Needs NEEDS = Needs.all(
            MassSections.MASS_ONLY,
            Needs.one(HILL, Needs.some("/route", Needs.all("/route/0/distance", "/route/0/speed"))),
            Needs.completed("/hill", HILL));

    @Override
    public String name() {
        return "descent";
    }

    @Override
    public String question() {
        return "Down this hill, where does the braking energy go, what can the pack take, and do the brakes hold alone?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of(
                "/holdingPower",
                "/energy",
                "/pack/stateOfChargeAtTop",
                "/pack/chargingCurrent",
                "/brakesAlone/rearTemperatureRise",
                "/adhesion/byMotor");
    }

    @Override
    public Class<DescentResult> resultType() {
        return DescentResult.class;
    }

    @Override
    public Descent.Input resolve(Setup setup, Resolution resolution) {
        return new DescentSections(setup, resolution).resolve();
    }

    @Override
    public Descent.Result calculate(Descent.Input input, Trace trace) {
        return Descent.of(input, trace);
    }

    @Override
    public DescentResult show(Descent.Result result, UnitSystem units) {
        OfState state = result.occupied();
        OfState empty = result.empty();
        return new DescentResult(
                units.mass(state.massKg()),
                units.energy(state.energyJ()),
                units.time(state.durationS()),
                meanPower(state, units),
                units.power(state.greatestW()),
                split(state.split(), units),
                pack(state.pack(), units),
                brakes(state.brakes(), units),
                brakes(state.alone(), units),
                brakes(state.stop(), units),
                resistor(state.resistor(), units),
                adhesion(state, result),
                runaway(state.runaway(), units),
                empty == null
                        ? null
                        : new Empty(
                                units.mass(empty.massKg()),
                                units.energy(empty.energyJ()),
                                units.time(empty.durationS()),
                                meanPower(empty, units),
                                units.power(empty.greatestW()),
                                split(empty.split(), units),
                                pack(empty.pack(), units),
                                brakes(empty.brakes(), units),
                                brakes(empty.alone(), units),
                                brakes(empty.stop(), units),
                                resistor(empty.resistor(), units),
                                adhesion(empty, result),
                                runaway(empty.runaway(), units)));
    }

    private static @Nullable Power meanPower(OfState state, UnitSystem units) {
        return state.durationS() > 0 ? units.power(state.energyJ() / state.durationS()) : null;
    }

    private static SplitResult split(Split split, UnitSystem units) {
        return new SplitResult(
                units.energy(split.rollingJ()),
                units.energy(split.dragJ()),
                units.energy(split.frictionBrakesJ()),
                units.energy(split.driveLossJ() + split.packJ() + split.resistorJ()),
                units.energy(split.driveLossJ()),
                units.energy(split.packJ()),
                units.energy(split.resistorJ()),
                units.energy(split.motorAddsJ()));
    }

    private static @Nullable PackResult pack(@Nullable PackDown pack, UnitSystem units) {
        return pack == null
                ? null
                : new PackResult(
                        shown(pack.headroomC(), units::charge),
                        shown(pack.headroomJ(), units::energy),
                        shown(pack.chargeC(), units::charge),
                        shown(pack.wantedC(), units::charge),
                        shown(pack.wantedA(), units::current),
                        pack.topShare(),
                        pack.bottomShare(),
                        shown(pack.fadeFromV(), units::voltage),
                        shown(pack.fadeToV(), units::voltage),
                        units.voltage(pack.toBearV()));
    }

    private static BrakesResult brakes(BrakesHeat heat, UnitSystem units) {
        return new BrakesResult(
                units.energy(heat.energyJ()),
                shown(heat.frontRiseK(), units::temperatureDifference),
                shown(heat.rearRiseK(), units::temperatureDifference));
    }

    private static @Nullable ResistorResult resistor(@Nullable ResistorNeed need, UnitSystem units) {
        return need == null
                ? null
                : new ResistorResult(
                        units.power(need.powerW()),
                        units.energy(need.energyJ()),
                        shown(need.ohm(), units::resistance),
                        shown(need.riseK(), units::temperatureDifference));
    }

    private static AdhesionResult adhesion(OfState state, Descent.Result result) {
        return new AdhesionResult(state.adhesion().byMotor(), state.adhesion().byBrakes(), result.friction());
    }

    private static @Nullable RunawayResult runaway(@Nullable Runaway runaway, UnitSystem units) {
        return runaway == null
                ? null
                : new RunawayResult(units.speed(runaway.terminalMPS()), shown(runaway.doublingS(), units::eventTime));
    }

    private static <Q> @Nullable Q shown(@Nullable Double si, Function<Double, Q> unit) {
        return si == null ? null : unit.apply(si);
    }
}
