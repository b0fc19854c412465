package org.axlewright.api.whatif;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.BiConsumer;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Refused;

/**
 * What one request may cost, and how far it has come. Cost is the processor time of the request's own thread, so a busy machine refuses
 * nothing that an idle one answers. Once it shows what all would take, a request beyond its budget is told so before the time is spent.
 */
final class Effort {

    /** Processor time that a request may take. */
    static final Duration BUDGET = Duration.ofSeconds(60);

    /** Processor time over which the pace is taken; the first such stretch, when everything is cold, is not judged by. */
    private static final Duration STRETCH = Duration.ofSeconds(1);

    /** Between two reports. */
    private static final Duration PACE = Duration.ofMillis(500);

    /** Steps between two looks at the clock. */
    private static final int LOOK = 16;

    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private final long start = THREADS.getCurrentThreadCpuTime();
    private final String cheaper;
    private final BiConsumer<Long, Long> progress;
    private long reported = System.nanoTime();
    private long stretchDone;
    private long stretchStart = start;
    private boolean warm;

    /**
     * A new effort of the thread that calls.
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
        if (done % LOOK != 0) {
            return;
        }
        long now = THREADS.getCurrentThreadCpuTime();
        if (now - start > BUDGET.toNanos()) {
            throw tooCostly(done, of, (double) (now - start) / done * of);
        }
        if (now - stretchStart > STRETCH.toNanos() && done > stretchDone) {
            double each = (double) (now - stretchStart) / (done - stretchDone);
            double whole = now - start + each * (of - done);
            if (warm && whole > BUDGET.toNanos()) {
                throw tooCostly(done, of, whole);
            }
            warm = true;
            stretchStart = now;
            stretchDone = done;
        }
        if (System.nanoTime() - reported > PACE.toNanos()) {
            reported = System.nanoTime();
            progress.accept(done, of);
        }
    }

    private Refused tooCostly(long done, long of, double nanos) {
        double seconds = nanos / 1e9;
        String cost = String.format(Locale.ROOT, "%.0f", seconds);
        return new Refused(List.of(new Fault(
                "",
                "too-costly",
                "Would take about " + cost + " s of processor time, " + done + " of " + of
                        + " steps done so far; at most " + BUDGET.toSeconds() + " s. " + cheaper,
                seconds,
                BUDGET.toSeconds())));
    }
}
