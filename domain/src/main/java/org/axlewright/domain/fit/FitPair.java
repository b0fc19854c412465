package org.axlewright.domain.fit;

import java.util.List;
import org.axlewright.domain.check.InvalidInput;
import org.jspecify.annotations.Nullable;

/** Two parts and every check between them, at least one. */
public record FitPair(Part one, Part other, List<FitCheck> checks) {

    public FitPair {
        if (checks.isEmpty()) {
            throw new InvalidInput("a pair has at least one check");
        }
    }

    /** The check that decides: the worst verdict, among equals the least margin. */
    public FitCheck deciding() {
        FitCheck worst = checks.get(0);
        for (FitCheck check : checks) {
            if (check.decidesOver(worst)) {
                worst = check;
            }
        }
        return worst;
    }

    public Verdict verdict() {
        return deciding().verdict();
    }

    /** Everything that is missing, each pointer once. */
    public List<String> missing() {
        return checks.stream()
                .flatMap(check -> check.missing().stream())
                .distinct()
                .toList();
    }

    boolean decidesOver(@Nullable FitPair other) {
        return other == null || deciding().decidesOver(other.deciding());
    }
}
