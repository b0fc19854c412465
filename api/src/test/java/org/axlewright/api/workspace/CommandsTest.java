package org.axlewright.api.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the command line understands, before any database is asked. */
class CommandsTest {

    private static int run(String line) {
        return Commands.run(line.split(" "));
    }

    @Test
    void leavesSettingsToTheService() {
        assertThat(Commands.isMeant()).isFalse();
        assertThat(Commands.isMeant("--server.port=8081")).isFalse();
        assertThat(Commands.isMeant("token", "list")).isTrue();
        assertThat(Commands.isMeant("--help")).isTrue();
        assertThat(Commands.isMeant("serve")).isTrue();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--help",
                "-h",
                "help",
                "token --help",
                "token create --help",
                "workspace list --help",
                "--version"
            })
    void explainsItself(String line) {
        assertThat(run(line)).isZero();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "tokens",
                "token",
                "token create",
                "token create --workspace local --scope all",
                "token create --workspace local --scope READ",
                "token create --workspace local --expires=soon",
                "token create --workspace local --expires=0s",
                "token create --workspace local --expires=-1d",
                "token create --workspace local --expires=4000d",
                "token revoke",
                "token revoke x",
                "workspace create",
                "workspace create a\tb",
                "workspace create --hidden x",
                "workspace list extra",
            })
    void refusesWhatIsNoCommandWithStatusTwo(String line) {
        assertThat(run(line)).isEqualTo(2);
    }
}
