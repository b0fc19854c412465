package org.axlewright.api.charging;

import java.util.List;
import org.axlewright.api.calculation.Calculation;
import org.axlewright.api.calculation.Needs;
import org.axlewright.api.calculation.PackSections;
import org.axlewright.api.calculation.Resolution;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.charging.ChargeTime;
import org.axlewright.domain.charging.ChargeTime.Charge;
import org.axlewright.domain.charging.ChargeTime.Draw;
import org.axlewright.domain.charging.Cord;
import org.axlewright.domain.charging.Equalising;
import org.axlewright.domain.charging.Ventilation;
import org.axlewright.domain.quantity.Current;
import org.axlewright.domain.quantity.UnitSystem;
import org.axlewright.domain.trace.Trace;
import org.jspecify.annotations.Nullable;

/** Charging: from pack, charger, outlet and cord to hours, amperes and money. */
public final class ChargeTimeCalculation implements Calculation<ChargeTime.Input, ChargeTime.Result, ChargeTimeResult> {

    private static final Needs NEEDS = Needs.all(
            Needs.value("/pack/chemistry"),
            PackSections.CAPACITY,
            Needs.one(Needs.value("/charger/current"), Needs.all(Needs.value("/charger/power"), PackSections.CELLS)));

    @Override
    public String name() {
        return "charge-time";
    }

    @Override
    public String question() {
        return "How long does charging take on this outlet, through this cord, and does the breaker hold?";
    }

    @Override
    public Needs needs() {
        return NEEDS;
    }

    @Override
    public List<String> leads() {
        return List.of("/time", "/limitedBy", "/mainsCurrent", "/supplyLimit", "/packCurrent", "/cost");
    }

    @Override
    public Class<ChargeTimeResult> resultType() {
        return ChargeTimeResult.class;
    }

    @Override
    public ChargeTime.Input resolve(Setup setup, Resolution resolution) {
        return ChargeTimeSections.resolve(setup, resolution);
    }

    @Override
    public ChargeTime.Result calculate(ChargeTime.Input input, Trace trace) {
        return ChargeTime.of(input, trace);
    }

    @Override
    public ChargeTimeResult show(ChargeTime.Result result, UnitSystem units) {
        Charge charge = result.charge();
        Current supplyLimit = current(result.supplyLimitA(), units);
        if (charge == null) {
            return new ChargeTimeResult(
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    supplyLimit,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null,
                    null);
        }
        Draw draw = charge.draw();
        Cord.Loss loss = draw == null ? null : draw.cordLoss();
        Ventilation air = charge.ventilation();
        return new ChargeTimeResult(
                units.time(charge.time().timeS()),
                units.time(charge.time().constantCurrentTimeS()),
                units.time(charge.time().constantVoltageTimeS()),
                units.current(charge.packCurrentA()),
                draw == null ? null : units.current(draw.currentA()),
                draw == null ? null : units.current(draw.peakCurrentA()),
                supplyLimit,
                draw == null ? null : units.power(draw.powerW()),
                charge.energyJ() == null ? null : units.energy(charge.energyJ()),
                charge.cost(),
                charge.limitedBy(),
                loss == null ? null : units.voltage(loss.dropV()),
                loss == null ? null : (Double) loss.dropShare(),
                loss == null ? null : units.power(loss.heatW()),
                air == null ? null : air(air, units),
                charge.endVoltageV() == null ? null : units.voltage(charge.endVoltageV()),
                charge.balance() == null ? null : balance(charge.balance(), units),
                charge.equalising() == null ? null : equalised(charge.equalising(), units));
    }

    private static ChargeTimeResult.Air air(Ventilation air, UnitSystem units) {
        return new ChargeTimeResult.Air(units.volumeFlow(air.airFlowM3PerS()), units.area(air.openingM2()));
    }

    private static ChargeTimeResult.EnergyBalance balance(ChargeTime.Balance balance, UnitSystem units) {
        return new ChargeTimeResult.EnergyBalance(
                units.energy(balance.storedJ()),
                units.energy(balance.packLossJ()),
                units.energy(balance.chargerLossJ()),
                units.energy(balance.cordLossJ()));
    }

    private static ChargeTimeResult.Equalised equalised(Equalising equalising, UnitSystem units) {
        return new ChargeTimeResult.Equalised(
                units.time(equalising.timeS()),
                units.voltage(equalising.voltageV()),
                units.charge(equalising.chargeC()),
                units.energy(equalising.mainsEnergyJ()),
                units.mass(equalising.waterKg()),
                air(equalising.ventilation(), units));
    }

    private static @Nullable Current current(@Nullable Double amperes, UnitSystem units) {
        return amperes == null ? null : units.current(amperes);
    }
}
