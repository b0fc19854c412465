package org.axlewright.api.setup;

import java.util.List;
import org.axlewright.api.assessment.Assessment.AssessedFinding;
import org.axlewright.api.assessment.Assessor;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.section.Setup;
import org.axlewright.domain.quantity.UnitSystem;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** What an assessment finds about a setup, by code: kept beside it, so that setups can be searched for a finding. */
@Component
final class Findings {

    private static final Logger LOG = LoggerFactory.getLogger(Findings.class);

    private final Assessor assessor;
    private final String engine;

    Findings(Assessor assessor, Calculations calculations) {
        this.assessor = assessor;
        this.engine = calculations.engine().version();
    }

    /**
     * Codes of findings.
     *
     * @param engine the version that found them
     */
    record Found(List<String> codes, String engine) {}

    /** The version that finds. */
    String engine() {
        return engine;
    }

    /** Of a setup whose form is in order. A calculation that fails does not keep anybody from saving. */
    Found of(Setup setup) {
        try {
            return new Found(
                    assessor.assess(setup, new Asked(UnitSystem.METRIC, false)).findings().stream()
                            .map(AssessedFinding::code)
                            .distinct()
                            .sorted()
                            .toList(),
                    engine);
        } catch (RuntimeException failure) {
            LOG.error("A setup could not be assessed; a search for findings will not meet it", failure);
            return new Found(List.of(), engine);
        }
    }
}
