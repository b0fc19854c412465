package org.axlewright.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The commands of the packaged jar: workspaces and tokens, while the service runs and while it rests. */
@Timeout(900)
class CommandsIT {

    @TempDir
    Path data;

    /** What a command said, and its status. */
    private record Said(int status, String out, String err) {}

    private Said command(String... arguments) throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(
                List.of(System.getProperty("axlewright.java"), "-jar", System.getProperty("axlewright.jar")));
        line.addAll(List.of(arguments));
        Path out = Files.createTempFile("command", ".out");
        Path err = Files.createTempFile("command", ".err");
        try {
            ProcessBuilder builder =
                    new ProcessBuilder(line).redirectOutput(out.toFile()).redirectError(err.toFile());
            builder.environment().put("AXLEWRIGHT_DATA", data.resolve("kept").toString());
            Process process = builder.start();
            if (!process.waitFor(300, TimeUnit.SECONDS)) { // a first one unpacks the database
                process.destroyForcibly();
                throw new AssertionError("The command did not end: " + Files.readString(err));
            }
            return new Said(process.exitValue(), Files.readString(out), Files.readString(err));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }

    private static int list(Service service, String token) {
        return service.send(service.request("/v1/setups").header("Authorization", "Bearer " + token))
                .statusCode();
    }

    @Test
    void keepTheRegisterWhetherTheServiceRunsOrRests() throws Exception {
        assertThat(command("workspace", "create", "north yard").status()).isZero(); // makes the database
        assertThat(new Servers(data.resolve("kept")).all()).isEmpty();
        String token;
        String id;
        try (Service service = Service.start(data.resolve("kept"))) {
            Said made = command("token", "create", "--workspace", "north yard", "--scope", "write", "--expires", "90d");
            assertThat(made.status()).as(made.err()).isZero();
            assertThat(made.out()).matches("axw_[0-9a-f]{72}\\R");
            token = made.out().strip();
            assertThat(list(service, token)).isEqualTo(200);
            service.post("/v1/setups", "{\"name\":\"without a token\"}");
            HttpResponse<String> seen =
                    service.send(service.request("/v1/setups").header("Authorization", "Bearer " + token));
            assertThat(seen.body()).doesNotContain("without a token");
            Said listed = command("token", "list", "--workspace", "north yard");
            assertThat(listed.status()).isZero();
            assertThat(listed.out()).contains("north yard", "open", "write").doesNotContain(token.substring(4, 20));
            id = listed.out().lines().skip(1).findFirst().orElseThrow().split(" ")[0];
            assertThat(service.get("/actuator/health/storage").statusCode()).isEqualTo(200);
        }
        Said revoked = command("token", "revoke", id);
        assertThat(revoked.status()).as(revoked.err()).isZero();
        assertThat(command("token", "list").out()).contains("revoked");
        assertThat(command("workspace", "list").out()).contains("local", "north yard");
        try (Service service = Service.start(data.resolve("kept"))) {
            assertThat(list(service, token)).isEqualTo(401);
        }
    }

    @Test
    void sayWhatIsWrongAndEndSo() throws Exception {
        assertThat(command("--help").status()).isZero();
        assertThat(command("tokens").status()).isEqualTo(2);
        Said nowhere = command("token", "create", "--workspace", "nowhere");
        assertThat(nowhere.status()).isEqualTo(1);
        assertThat(nowhere.err()).contains("no workspace 'nowhere'").contains("local");
        assertThat(nowhere.out()).isEmpty();
    }

    @Test
    void openSetupsBeyondThisMachineAndNothingElseDoes() throws Exception {
        Said made = command("token", "create", "--workspace", "local", "--scope", "read");
        try (Service service = Service.launch(data.resolve("kept"), Map.of("SERVER_ADDRESS", "0.0.0.0"))) {
            service.await(
                    Service.START, () -> service.get("/actuator/health/storage").statusCode() == 200);
            assertThat(service.get("/v1/setups").statusCode()).isEqualTo(401);
            assertThat(service.get("/v1/demo-setups").statusCode()).isEqualTo(200);
            assertThat(list(service, made.out().strip())).isEqualTo(200);
        }
    }

    @Test
    void theServiceRefusesToServeSetupsToEverybody() throws Exception {
        try (Service service = Service.launch(
                data.resolve("kept"), Map.of("SERVER_ADDRESS", "0.0.0.0", "AXLEWRIGHT_TOKENS_REQUIRED", "false"))) {
            assertThat(service.process.waitFor(120, TimeUnit.SECONDS)).isTrue();
            assertThat(service.process.exitValue()).isEqualTo(1);
            assertThat(service.output()).contains("axlewright.tokens-required is false", "token create");
        }
        assertThat(new Servers(data.resolve("kept")).all()).isEmpty();
    }
}
