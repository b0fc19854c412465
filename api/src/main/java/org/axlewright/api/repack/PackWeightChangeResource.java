package org.axlewright.api.repack;

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

/** {@code POST /v1/pack-weight-change}. */
@RestController
@Tag(name = "repack")
final class PackWeightChangeResource {

    private final Calculations calculations;

    PackWeightChangeResource(Calculations calculations) {
        this.calculations = calculations;
    }

    @PostMapping("/v1/pack-weight-change")
    @Operation(operationId = "packWeightChange")
    Answer<PackWeightChangeResult> packWeightChange(
            @RequestBody Setup setup,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working) {
        return calculations.ask(new PackWeightChangeCalculation(), setup, new Asked(units, working));
    }
}
