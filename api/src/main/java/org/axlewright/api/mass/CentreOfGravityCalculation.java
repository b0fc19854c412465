package org.axlewright.api.mass;

import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.MassSections;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.mass.CentreOfGravityResult.AxleResult;
import org.axlewright.api.mass.CentreOfGravityResult.Empty;
import org.axlewright.api.mass.CentreOfGravityResult.Leverage;
import org.axlewright.api.mass.CentreOfGravityResult.Payload;
import org.axlewright.api.mass.CentreOfGravityResult.Place;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.mass.CentreOfGravity;
import org.axlewright.domain.mass.CentreOfGravity.Lever;
import org.axlewright.domain.mass.CentreOfGravity.State;
import org.axlewright.domain.quantity.Length;
import org.axlewright.domain.quantity.Load;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Weight and balance: from scales, parts and people to axle loads and the centre of gravity. */
public final class CentreOfGravityCalculation
        implements Calculation<CentreOfGravity.Input, CentreOfGravity.Result, CentreOfGravityResult> {

    private static final Needs NEEDS = Needs.all(Needs.value("/chassis/wheelbase"), MassSections.POSITION_IN_PLAN);

    @Override
    public String name() {
        return "centre-of-gravity";
    }

    @Override
    public String question() {
        return "Where does the weight sit, on which axle, how high, and what does each part do to it?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of("/frontAxle/share", "/frontAxle/load", "/rearAxle/load", "/mass", "/position/x", "/position/z");
    }

    @Override
    public Class<CentreOfGravityResult> resultType() {
        return CentreOfGravityResult.class;
    }

    @Override
    public CentreOfGravity.Input resolve(Setup setup, Resolution resolution) {
        return MassSections.resolve(setup, resolution, true);
    }

    @Override
    public CentreOfGravity.Result calculate(CentreOfGravity.Input input, Trace trace) {
        return CentreOfGravity.of(input, trace);
    }

    @Override
    public CentreOfGravityResult show(CentreOfGravity.Result result, UnitSystem units) {
        State occupied = result.occupied();
        State empty = result.empty();
        return new CentreOfGravityResult(
                units.mass(occupied.whole().massKg()),
                place(
                        occupied.whole().xM(),
                        occupied.whole().yM(),
                        occupied.whole().zM(),
                        units),
                new AxleResult(units.load(occupied.frontLoadN()), occupied.frontShare()),
                new AxleResult(units.load(occupied.rearLoadN()), 1 - occupied.frontShare()),
                occupied.leftShare(),
                result.crossShare(),
                payload(occupied, units),
                result.leverage().stream().map(lever -> leverage(lever, units)).toList(),
                empty == null
                        ? null
                        : new Empty(
                                units.mass(empty.whole().massKg()),
                                place(
                                        empty.whole().xM(),
                                        empty.whole().yM(),
                                        empty.whole().zM(),
                                        units),
                                new AxleResult(units.load(empty.frontLoadN()), empty.frontShare()),
                                new AxleResult(units.load(empty.rearLoadN()), 1 - empty.frontShare()),
                                empty.leftShare(),
                                result.crossShare(),
                                payload(empty, units)));
    }

    private static Leverage leverage(Lever lever, UnitSystem units) {
        return new Leverage(
                lever.part().name(),
                lever.part().reference(),
                lever.part().pointer(),
                units.load(lever.frontLoadChangeN()),
                units.load(lever.rearLoadChangeN()),
                place(lever.xChangeM(), lever.yChangeM(), lever.zChangeM(), units));
    }

    private static Place place(double xM, @Nullable Double yM, @Nullable Double zM, UnitSystem units) {
        return new Place(units.length(xM), length(yM, units), length(zM, units));
    }

    private static @Nullable Length length(@Nullable Double metres, UnitSystem units) {
        return metres == null ? null : units.length(metres);
    }

    private static @Nullable Payload payload(State state, UnitSystem units) {
        if (state.payloadFrontN() == null && state.payloadRearN() == null && state.payloadTotalN() == null) {
            return null;
        }
        return new Payload(
                load(state.payloadFrontN(), units),
                load(state.payloadRearN(), units),
                load(state.payloadTotalN(), units));
    }

    private static @Nullable Load load(@Nullable Double newtons, UnitSystem units) {
        return newtons == null ? null : units.load(newtons);
    }
}
