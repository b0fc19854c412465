package org.axlewright.api.stability;

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

/** {@code POST /v1/stability}. */
@RestController
@Tag(name = "stability")
final class StabilityResource {

    private final Calculations calculations;

    StabilityResource(Calculations calculations) {
        this.calculations = calculations;
    }

    @PostMapping("/v1/stability")
    @Operation(operationId = "stability")
    Answer<StabilityResult> stability(
            @RequestBody Setup setup,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working) {
        return calculations.ask(new StabilityCalculation(), setup, new Asked(units, working));
    }
}
