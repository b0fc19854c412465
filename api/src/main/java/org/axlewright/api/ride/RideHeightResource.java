package org.axlewright.api.ride;

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

/** {@code POST /v1/ride-height}. */
@RestController
@Tag(name = "ride")
final class RideHeightResource {

    private final Calculations calculations;

    RideHeightResource(Calculations calculations) {
        this.calculations = calculations;
    }

    @PostMapping("/v1/ride-height")
    @Operation(operationId = "rideHeight")
    Answer<RideHeightResult> rideHeight(
            @RequestBody Setup setup,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working) {
        return calculations.ask(new RideHeightCalculation(), setup, new Asked(units, working));
    }
}
