package org.axlewright.api.towing;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.axlewright.api.calculation.Answer;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** {@code POST /v1/towing}. */
@RestController
@Tag(name = "towing")
final class TowingResource {

    private final Calculations calculations;

    TowingResource(Calculations calculations) {
        this.calculations = calculations;
    }

    @PostMapping("/v1/towing")
    @Operation(operationId = "towing")
    Answer<TowingResult> towing(
            @RequestBody Setup setup,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working) {
        return calculations.ask(new TowingCalculation(), setup, new Asked(units, working));
    }
}
