package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** {@code ops/start}, the command of the README. */
@Timeout(300)
class StartScriptIT {

    @TempDir
    Path folder;

    @Test
    void showsItsAddressAndTheAnswersAndEndsCleanly() throws Exception {
        int port = Service.freePort();
        Path data = folder.resolve("data");
        Path output = folder.resolve("output");
        Process script = start(port, data, output);
        try {
            long end = System.nanoTime() + Service.START.toNanos();
            while (script.isAlive() && !Files.readString(output).contains("/v1/setups/")) {
                assertThat(System.nanoTime() - end).as(Files.readString(output)).isNegative();
                Thread.sleep(200);
            }
            String shown = Files.readString(output);
            assertThat(shown.lines()).contains("Axlewright answers on http://127.0.0.1:" + port);
            assertThat(shown)
                    .contains("Orchard runabout, as planned")
                    .contains("\ncentre-of-gravity: ")
                    .contains("  mass ")
                    .contains(" lb\n");
            URI saved = URI.create(shown.lines()
                    .filter(line -> line.startsWith("Saved as "))
                    .findFirst()
                    .orElseThrow()
                    .substring("Saved as ".length()));
            assertThat(new String(saved.toURL().openStream().readAllBytes(), java.nio.charset.StandardCharsets.UTF_8))
                    .contains("Orchard runabout, as planned");
        } finally {
            script.destroy();
        }
        assertThat(script.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(script.exitValue()).isZero();
        assertThat(new Servers(data).all()).isEmpty();
    }

    @Test
    void saysThatThePortIsTaken() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getByName("127.0.0.1"))) {
            Path output = folder.resolve("output");
            Process script = start(taken.getLocalPort(), folder.resolve("data"), output);
            assertThat(script.waitFor(30, TimeUnit.SECONDS)).isTrue();
            assertThat(script.exitValue()).isEqualTo(1);
            assertThat(Files.readString(output)).contains("port " + taken.getLocalPort() + " is taken");
        }
    }

    private static Process start(int port, Path data, Path output) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(Path.of(System.getProperty("axlewright.checkout"), "ops", "start")
                        .toString())
                .redirectErrorStream(true)
                .redirectOutput(output.toFile());
        builder.environment().put("SERVER_PORT", String.valueOf(port));
        builder.environment().put("AXLEWRIGHT_DATA", data.toString());
        return builder.start();
    }
}
