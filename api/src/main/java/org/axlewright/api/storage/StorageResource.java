package org.axlewright.api.storage;

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

/** {@code POST /v1/storage}. */
@RestController
@Tag(name = "storage")
final class StorageResource {

    private final Calculations calculations;

    StorageResource(Calculations calculations) {
        this.calculations = calculations;
    }

    @PostMapping("/v1/storage")
    @Operation(operationId = "storage")
    Answer<StorageResult> storage(
            @RequestBody Setup setup,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working) {
        return calculations.ask(new StorageCalculation(), setup, new Asked(units, working));
    }
}
