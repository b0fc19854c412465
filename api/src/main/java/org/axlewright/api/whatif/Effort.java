package org.axlewright.api.whatif;

import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;

/**
 * What one request may cost, and how far it has come. After the first points it is known what all would take; a request that would take
 * longer than its budget is told so before the time is spent.
 */
final class Effort {

    /** A request may take this long. */
    static final Duration BUDGET = Duration.ofSeconds(60);

    /** Long enough to judge the rest by. */
    private static final Duration TRIAL = Duration.ofSeconds(2);

    /** Between two reports. */
    private static final Duration PACE = Duration.ofMillis(500);

    private final long start = System.nanoTime();
    private final String cheaper;
    private final BiConsumer<Long, Long> progress;
    private long reported = start;

    /**
     * A new effort.
     *
     * @param cheaper what to do when it is too much, for people
     * @param progress takes what is done and what is to do, now and then
     */
    Effort(String cheaper, BiConsumer<Long, Long> progress) {
        this.cheaper = cheaper;
        this.progress = progress;
    }

    /** One that nobody watches. */
    static Effort silent(String cheaper) {
        return new Effort(cheaper, (done, of) -> {});
    }

    /**
     * Before each step.
     *
     * @throws Refused when all steps would take longer than the budget
     */
    void step(long done, long of) {
        long now = System.nanoTime();
        long spent = now - start;
        if (spent > TRIAL.toNanos()) {
            double whole = (double) spent / Math.max(1, done) * of;
            if (whole > BUDGET.toNanos() || spent > BUDGET.toNanos()) {
                throw tooCostly(done, of, whole / 1e9);
            }
        }
        if (now - reported > PACE.toNanos()) {
            reported = now;
            progress.accept(done, of);
        }
    }

    private Refused tooCostly(long done, long of, double seconds) {
        String cost = String.format(Locale.ROOT, "%.0f", seconds);
        return new Refused(List.of(new Fault(
                "",
                "too-costly",
                "Would take about " + cost + " s, " + done + " of " + of + " steps done so far; at most "
                        + BUDGET.toSeconds() + " s. " + cheaper,
                seconds,
                BUDGET.toSeconds())));
    }
}
