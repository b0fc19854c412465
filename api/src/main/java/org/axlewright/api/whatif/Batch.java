package org.axlewright.api.whatif;

import java.io.IOException;
import java.io.OutputStream;
import java.net.SocketTimeoutException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import org.axlewright.api.assessment.Assessor;
import org.axlewright.api.calculation.Asked;
import org.axlewright.api.calculation.Calculations;
import org.axlewright.api.problem.Fault;
import org.axlewright.api.problem.Problem;
import org.axlewright.api.problem.Refused;
import org.axlewright.api.problem.UnreadableBody;
import org.axlewright.api.whatif.BatchResource.Answered;
import org.axlewright.api.whatif.BatchResource.Sent;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * One batch. The request's own thread reads, a thread of the batch writes, the workers of the service answer; between reader and writer
 * stands a backlog, between writer and workers a window of few lines. So order is kept and memory is bounded whatever is sent.
 */
final class Batch {

    static final int MOST_LINES = 100_000;

    private static final Logger LOG = LoggerFactory.getLogger(Batch.class);
    private static final int LONGEST_ID = 200;

    private final Answers answers;
    private final Asked asked;
    private final ExecutorService workers;
    private final int width;
    private final Backlog backlog;

    Batch(Answers answers, Asked asked, ExecutorService workers, int width, Backlog backlog) {
        this.answers = answers;
        this.asked = asked;
        this.workers = workers;
        this.width = width;
        this.backlog = backlog;
    }

    /**
     * Reads, works and writes until the last line is answered, or the client has gone.
     *
     * @throws IOException when the last words can't be written
     */
    void run(Lines lines, OutputStream out) throws IOException {
        Thread writer = new Thread(() -> write(out), "batch-writer");
        writer.setDaemon(true);
        boolean tooSlow = false;
        try {
            // The first line is read before anything is written: reading is what asks a waiting client to go on.
            Backlog.Line line = lines.next();
            writer.start();
            while (line != null && backlog.put(line) && line.number() <= MOST_LINES) {
                line = lines.next();
            }
        } catch (IOException failure) {
            tooSlow = failure instanceof SocketTimeoutException || failure.getCause() instanceof SocketTimeoutException;
            if (!tooSlow) {
                backlog.breakOff(failure);
            }
        }
        backlog.complete();
        await(writer);
        if (tooSlow && !backlog.isBroken()) {
            out.write(answers.tooSlow(lines.number() + 1));
        }
    }

    private static void await(Thread writer) throws IOException {
        try {
            writer.join();
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted", interrupted);
        }
    }

    private void write(OutputStream out) {
        Deque<Future<byte[]>> window = new ArrayDeque<>();
        try {
            while (true) {
                Backlog.Line line = backlog.take(window.isEmpty());
                while (line != null) {
                    Backlog.Line next = line;
                    window.add(workers.submit(() -> answers.answer(next, asked)));
                    line = window.size() < width ? backlog.take(false) : null;
                }
                Future<byte[]> head = window.poll();
                if (head == null) {
                    return;
                }
                if (!head.isDone()) {
                    out.flush(); // nothing that is known waits for what is not
                }
                out.write(head.get());
                if (window.isEmpty()) {
                    out.flush();
                }
            }
        } catch (IOException gone) {
            backlog.breakOff(gone);
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            backlog.breakOff(new IOException("interrupted", interrupted));
        } catch (ExecutionException failure) {
            LOG.error("Unexpected failure", failure);
            backlog.breakOff(new IOException("failed", failure));
        } finally {
            window.forEach(waiting -> waiting.cancel(true));
        }
    }

    /** Answers one line, whatever it is. */
    record Answers(Calculations calculations, Assessor assessor, JsonMapper json) {

        byte[] answer(Backlog.Line line, Asked asked) {
            return text(answered(line, asked));
        }

        byte[] tooSlow(int line) {
            return text(refused(
                    line,
                    null,
                    Problem.of(
                            408,
                            "too-slow",
                            "Line sent too slowly",
                            "A line must go on within seconds; this line and those after it are not answered")));
        }

        private byte[] text(Answered answered) {
            byte[] text = json.writeValueAsBytes(answered);
            byte[] ended = java.util.Arrays.copyOf(text, text.length + 1);
            ended[text.length] = '\n';
            return ended;
        }

        private Answered answered(Backlog.Line line, Asked asked) {
            if (line.number() > MOST_LINES) {
                return refused(
                        line.number(),
                        null,
                        Problem.of(
                                413,
                                "too-large",
                                "Batch too large",
                                "A batch may have at most " + MOST_LINES
                                        + " lines; this line and those after it are not answered"));
            }
            byte[] text = line.text();
            if (text == null) {
                return refused(
                        line.number(),
                        null,
                        Problem.of(
                                413,
                                "too-large",
                                "Line too large",
                                "A line may have at most " + Lines.LONGEST + " bytes"));
            }
            @Nullable Sent sent;
            try {
                sent = json.readValue(text, Sent.class);
            } catch (JacksonException unreadable) {
                return refused(
                        line.number(),
                        null,
                        Problem.of(
                                400, "not-readable", "Line can't be read", List.of(UnreadableBody.fault(unreadable))));
            }
            if (sent == null) {
                return refused(
                        line.number(),
                        null,
                        Problem.of(
                                400,
                                "not-readable",
                                "Line can't be read",
                                List.of(new Fault("", "wrong-type", "Must be an object", null, null))));
            }
            try {
                return new Answered(line.number(), sent.id(), ask(sent, asked), null);
            } catch (Refused refused) {
                return refused(
                        line.number(),
                        sent.id(),
                        Problem.of(422, "not-valid", "Read, and not valid", refused.faults()));
            } catch (RuntimeException failure) {
                LOG.error("Unexpected failure", failure);
                return refused(
                        line.number(),
                        sent.id(),
                        Problem.of(
                                500,
                                "internal",
                                "Internal failure",
                                "The service failed on this line; its log has the cause"));
            }
        }

        private Object ask(Sent sent, Asked asked) {
            List<Fault> faults = new ArrayList<>();
            Probe.Question question = SweepResource.question(sent.calculation(), calculations, faults);
            if (sent.id() != null && sent.id().length() > LONGEST_ID) {
                faults.add(new Fault(
                        "/id",
                        "too-many",
                        "Must have at most " + LONGEST_ID + " characters, has "
                                + sent.id().length(),
                        sent.id().length(),
                        LONGEST_ID));
            }
            if (sent.input() == null) {
                faults.add(Fault.missing("/input"));
            }
            if (question == null || !faults.isEmpty()) {
                throw new Refused(faults);
            }
            try {
                return question.assessment()
                        ? assessor.assess(sent.input(), asked)
                        : calculations.ask(question.asked().get(0), sent.input(), asked);
            } catch (Refused refused) {
                throw Probe.inInput(refused.faults());
            }
        }

        private static Answered refused(int line, @Nullable String id, Problem problem) {
            return new Answered(line, id, null, problem);
        }
    }
}
