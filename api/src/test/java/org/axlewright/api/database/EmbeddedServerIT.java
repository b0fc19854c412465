package org.axlewright.api.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** The server that comes with the service. What happens when the service itself is killed is tested on the packaged jar. */
@Timeout(180)
class EmbeddedServerIT {

    @TempDir
    Path data;

    @Test
    void keepsWhatItAcknowledges() throws Exception {
        try (EmbeddedServer server = EmbeddedServer.start(data)) {
            assertThat(ask(server, "show fsync")).isEqualTo("on");
            assertThat(ask(server, "show synchronous_commit")).isEqualTo("on");
            assertThat(ask(server, "show full_page_writes")).isEqualTo("on");
            assertThat(ask(server, "create table kept (n int); insert into kept values (42); select n from kept"))
                    .isEqualTo("42");
        }
        assertThat(Postmaster.of(data.resolve("postgres"))).isEmpty();
        try (EmbeddedServer server = EmbeddedServer.start(data)) {
            assertThat(ask(server, "select n from kept")).isEqualTo("42");
        }
    }

    @Test
    void listensToThisMachineOnlyAndKnowsItsOwner() throws Exception {
        try (EmbeddedServer server = EmbeddedServer.start(data)) {
            assertThat(ask(server, "show listen_addresses")).isEqualTo("127.0.0.1");
            assertThat(ask(server, "select rolsuper from pg_roles where rolname = current_user"))
                    .isEqualTo("f");
            assertThat(ask(server, "select datlocale from pg_database where datname = current_database()"))
                    .isEqualTo("C.UTF-8");
            assertThatThrownBy(() -> DriverManager.getConnection(server.url(), EmbeddedServer.NAME, "guessed"))
                    .isInstanceOf(SQLException.class);
        }
    }

    @Test
    void servesOneServiceAtATime() {
        try (EmbeddedServer server = EmbeddedServer.start(data)) {
            assertThat(server.url()).isNotEmpty();
            assertThatThrownBy(() -> EmbeddedServer.start(data))
                    .isInstanceOf(StartRefused.class)
                    .hasMessageContaining("in use")
                    .hasMessageContaining(String.valueOf(ProcessHandle.current().pid()));
        }
    }

    @Test
    void startsAgainWhenTheServerIsKilled() throws Exception {
        try (EmbeddedServer server = EmbeddedServer.start(data)) {
            ask(server, "create table kept (n int); insert into kept values (42); select n from kept");
            ProcessHandle postmaster = Postmaster.of(data.resolve("postgres")).orElseThrow();
            assertThat(postmaster.destroyForcibly()).isTrue();
            postmaster.onExit().get();
            assertThat(askInTime(server, "select n from kept", Duration.ofSeconds(60)))
                    .isEqualTo("42");
        }
        assertThat(Postmaster.of(data.resolve("postgres"))).isEmpty();
    }

    @Test
    void discardsWhatAnInterruptedFirstStartLeft() throws Exception {
        Files.createDirectories(data.resolve("postgres.new").resolve("base"));
        Files.writeString(data.resolve("postgres.new").resolve("PG_VERSION"), "18\n");
        try (EmbeddedServer server = EmbeddedServer.start(data)) {
            assertThat(ask(server, "select 1")).isEqualTo("1");
        }
        assertThat(data.resolve("postgres.new")).doesNotExist();
    }

    @Test
    void leavesDataOfAnotherMajorVersionAlone() throws IOException {
        Files.createDirectories(data.resolve("postgres"));
        Files.writeString(data.resolve("postgres").resolve("PG_VERSION"), "17\n");
        assertThatThrownBy(() -> EmbeddedServer.start(data))
                .isInstanceOf(StartRefused.class)
                .hasMessageContaining("PostgreSQL 17");
        assertThat(data.resolve("postgres").resolve("PG_VERSION")).hasContent("17");
    }

    @Test
    void doesNotTakeAnotherProcessForItsServer() throws IOException {
        Path postgres = Files.createDirectories(data.resolve("postgres"));
        Files.writeString(
                postgres.resolve("postmaster.pid"), ProcessHandle.current().pid() + "\n" + postgres + "\n");
        assertThat(Postmaster.of(postgres)).isEmpty();
        Files.writeString(postgres.resolve("postmaster.pid"), "");
        assertThat(Postmaster.of(postgres)).isEmpty();
    }

    private static String askInTime(EmbeddedServer server, String sql, Duration limit) throws Exception {
        long end = System.nanoTime() + limit.toNanos();
        while (true) {
            try {
                return ask(server, sql);
            } catch (SQLException e) {
                if (System.nanoTime() - end > 0) {
                    throw e;
                }
                Thread.sleep(100);
            }
        }
    }

    private static String ask(EmbeddedServer server, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection(server.url(), EmbeddedServer.NAME, server.password());
                var statement = connection.createStatement()) {
            boolean rows = statement.execute(sql);
            while (!rows) {
                rows = statement.getMoreResults();
            }
            try (ResultSet result = statement.getResultSet()) {
                result.next();
                return result.getString(1);
            }
        }
    }
}
