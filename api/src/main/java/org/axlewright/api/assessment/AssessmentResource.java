package org.axlewright.api.assessment;

import io.swagger.v3.oas.annotations.Operation;
import io.swagger.v3.oas.annotations.tags.Tag;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.springframework.web.bind.annotation.PostMapping;
import org.springframework.web.bind.annotation.RequestBody;
import org.springframework.web.bind.annotation.RequestParam;
import org.springframework.web.bind.annotation.RestController;

/** {@code POST /v1/assessments}. */
@RestController
@Tag(name = "assessment")
final class AssessmentResource {

    private final Assessor assessor;

    AssessmentResource(Assessor assessor) {
        this.assessor = assessor;
    }

    @PostMapping("/v1/assessments")
    @Operation(
            operationId = "assess",
            summary = "What does every question say about this vehicle?",
            description =
                    "Puts one setup through every calculation whose needs are met and creates nothing. `results` by calculation, one list of findings, worst first; what could not be assessed is told with what it lacks.")
    Assessment assess(
            @RequestBody Setup setup,
            @RequestParam(defaultValue = "metric") UnitSystem units,
            @RequestParam(defaultValue = "true") boolean working) {
        return assessor.assess(setup, new Asked(units, working));
    }
}
