package org.axlewright.api.frame;

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

/** {@code POST /v1/frame-overhang}. */
@RestController
@Tag(name = "frame")
final class FrameOverhangResource {

    private final Calculations calculations;

    FrameOverhangResource(Calculations calculations) {
        this.calculations = calculations;
    }

    @PostMapping("/v1/frame-overhang")
    @Operation(operationId = "frameOverhang")
    Answer<FrameOverhangResult> frameOverhang(
            @RequestBody Setup setup,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working) {
        return calculations.ask(new FrameOverhangCalculation(), setup, new Asked(units, working));
    }
}
