package org.axlewright.api.workspace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HexFormat;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The form of tokens. */
class TokenTest {

    /** CRC-32 by Python's zlib.crc32, SHA-256 by its hashlib, over 32 bytes counted up from zero. */
    private static final String KNOWN = "axw_000102030405060708090a0b0c0d0e0f101112131415161718191a1b1c1d1e1f11362145";

    @Test
    void readsWhatItMakes() {
        Token token = Token.fresh();
        assertThat(token.text()).matches("axw_[0-9a-f]{72}");
        assertThat(Token.read(token.text())).contains(token);
    }

    @Test
    void knowsAMistypedOneWithoutAskingAnybody() {
        String text = Token.fresh().text();
        for (int i = 0; i < text.length(); i++) {
            char other = text.charAt(i) == '0' ? '1' : '0';
            assertThat(Token.read(text.substring(0, i) + other + text.substring(i + 1)))
                    .isEmpty();
        }
        assertThat(Token.read(text.substring(1))).isEmpty();
        assertThat(Token.read(text + "0")).isEmpty();
        assertThat(Token.read("")).isEmpty();
    }

    @Test
    void hashesAsAnybodyWould() {
        Token token = Token.read(KNOWN).orElseThrow();
        assertThat(HexFormat.of().formatHex(token.hash()))
                .isEqualTo("aa1a6e360e214ecc543c8f655e6f54352ae59d9993224a31f876a16c6a566de5");
    }

    @Test
    void repeatsNothing() {
        assertThat(Stream.generate(() -> Token.fresh().text()).limit(1000).collect(Collectors.toSet()))
                .hasSize(1000);
    }

    @Test
    void doesNotShowItself() {
        assertThat(Token.fresh()).hasToString("axw_...");
    }
}
