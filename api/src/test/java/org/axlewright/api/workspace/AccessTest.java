package org.axlewright.api.workspace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.net.InetAddress;
import java.net.UnknownHostException;
import org.axlewright.api.database.StartRefused;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.boot.web.server.autoconfigure.ServerProperties;
import org.springframework.boot.web.server.autoconfigure.ServerProperties.ForwardHeadersStrategy;
import org.springframework.mock.env.MockEnvironment;

/** Who needs a token, and which settings are refused. */
class AccessTest {

    private final MockEnvironment settings = new MockEnvironment();
    private final ServerProperties server = new ServerProperties();

    private Access access(String address) throws UnknownHostException {
        server.setAddress(address.isEmpty() ? null : InetAddress.getByName(address));
        return new Access(settings, server);
    }

    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "::1", "127.9.9.9", "localhost"})
    void needsNoTokenOnThisMachineAlone(String address) throws UnknownHostException {
        assertThat(access(address).tokensRequired()).isFalse();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "0.0.0.0", "::", "192.0.2.1"})
    void needsTokensWhenBoundElsewhere(String address) throws UnknownHostException {
        assertThat(access(address).tokensRequired()).isTrue();
    }

    @Test
    void needsTokensWithAGivenDatabase() throws UnknownHostException {
        settings.setProperty("spring.datasource.url", "jdbc:postgresql://192.0.2.1/axlewright");
        assertThat(access("127.0.0.1").tokensRequired()).isTrue();
    }

    @Test
    void needsTokensBehindAProxy() throws UnknownHostException {
        server.setForwardHeadersStrategy(ForwardHeadersStrategy.NATIVE);
        assertThat(access("127.0.0.1").tokensRequired()).isTrue();
    }

    @Test
    void asksForTokensOnThisMachineWhenToldTo() throws UnknownHostException {
        settings.setProperty("axlewright.tokens-required", "true");
        assertThat(access("127.0.0.1").tokensRequired()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "0.0.0.0, '', NONE, listens beyond this machine",
        "127.0.0.1, jdbc:postgresql://192.0.2.1/axlewright, NONE, database is given",
        "127.0.0.1, '', NATIVE, behind a proxy",
    })
    void refusesToStartWithoutTokensWhereTheyAreNeeded(
            String address, String database, ForwardHeadersStrategy proxy, String reason) {
        settings.setProperty("axlewright.tokens-required", "false");
        settings.setProperty("spring.datasource.url", database);
        server.setForwardHeadersStrategy(proxy);
        assertThatThrownBy(() -> access(address))
                .isInstanceOfSatisfying(
                        StartRefused.class,
                        refused -> assertThat(refused.action()).contains("token create"))
                .hasMessageContaining("axlewright.tokens-required is false")
                .hasMessageContaining(reason);
    }

    @Test
    void refusesToBelieveEverybodysWordForTheirAddress() {
        server.setForwardHeadersStrategy(ForwardHeadersStrategy.FRAMEWORK);
        assertThatThrownBy(() -> access("127.0.0.1")).isInstanceOf(StartRefused.class);
    }
}
