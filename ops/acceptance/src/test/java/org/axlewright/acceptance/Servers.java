package org.axlewright.acceptance;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** The PostgreSQL processes that work in a data directory. */
final class Servers {

    private final Path directory;

    Servers(Path data) {
        this.directory = data.resolve("postgres");
    }

    /** Every process of the server, the one in charge included. */
    List<ProcessHandle> all() {
        return ProcessHandle.allProcesses().filter(this::worksHere).toList();
    }

    /** Those that no other process of the server has started: one for each server. */
    List<ProcessHandle> inCharge() {
        return all().stream()
                .filter(process -> process.parent().filter(this::worksHere).isEmpty())
                .toList();
    }

    void signal(String name) throws IOException, InterruptedException {
        for (ProcessHandle process : all()) {
            new ProcessBuilder("sh", "-c", "kill -" + name + " " + process.pid())
                    .start()
                    .waitFor();
        }
    }

    private boolean worksHere(ProcessHandle process) {
        try {
            Optional<String> program = process.info().command();
            return program.isPresent()
                    && program.get().endsWith("/postgres")
                    && Files.isSameFile(Path.of("/proc", String.valueOf(process.pid()), "cwd"), directory);
        } catch (IOException gone) {
            return false;
        }
    }
}
