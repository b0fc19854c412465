package org.axlewright.api.legalclass;

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

/** {@code POST /v1/vehicle-class}. */
@RestController
@Tag(name = "legalclass")
final class VehicleClassResource {

    private final Calculations calculations;

    VehicleClassResource(Calculations calculations) {
        this.calculations = calculations;
    }

    @PostMapping("/v1/vehicle-class")
    @Operation(operationId = "vehicleClass")
    Answer<VehicleClassResult> vehicleClass(
            @RequestBody Setup setup,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working) {
        return calculations.ask(new VehicleClassCalculation(), setup, new Asked(units, working));
    }
}
