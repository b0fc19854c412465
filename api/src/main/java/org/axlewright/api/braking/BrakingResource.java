package org.axlewright.api.braking;

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

/** {@code POST /v1/braking}. */
@RestController
@Tag(name = "braking")
final class BrakingResource {

    private final Calculations calculations;

    BrakingResource(Calculations calculations) {
        this.calculations = calculations;
    }

    @PostMapping("/v1/braking")
    @Operation(operationId = "braking")
    Answer<BrakingResult> braking(
            @RequestBody Setup setup,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working) {
        return calculations.ask(new BrakingCalculation(), setup, new Asked(units, working));
    }
}
