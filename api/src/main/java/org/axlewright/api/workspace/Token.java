package org.axlewright.api.workspace;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.zip.CRC32;

/**
 * A secret that opens a workspace: {@code axw_}, 256 random bits and a CRC-32 of both, in hexadecimal. Scanners for secrets know it by
 * {@code axw_[0-9a-f]{72}}, and a mistyped one is told from an unknown one without asking anybody.
 *
 * @param text whole
 */
record Token(String text) {

    private static final String PREFIX = "axw_";
    private static final int RANDOM_BYTES = 32;
    private static final Pattern FORM = Pattern.compile(PREFIX + "[0-9a-f]{72}");
    private static final int CHECKED = PREFIX.length() + 2 * RANDOM_BYTES;
    private static final SecureRandom RANDOM = new SecureRandom();

    static Token fresh() {
        byte[] secret = new byte[RANDOM_BYTES];
        RANDOM.nextBytes(secret);
        String checked = PREFIX + HexFormat.of().formatHex(secret);
        return new Token(checked + checksum(checked));
    }

    /** The token, unless it is cut or mistyped. */
    static Optional<Token> read(String text) {
        return FORM.matcher(text).matches()
                        && checksum(text.substring(0, CHECKED)).equals(text.substring(CHECKED))
                ? Optional.of(new Token(text))
                : Optional.empty();
    }

    /**
     * What is kept of it. A plain hash is enough: nobody tries 2^256 secrets, so a slow one would cost every request and gain nothing.
     */
    byte[] hash() {
        try {
            return MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.US_ASCII));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** Nobody logs it by accident. */
    @Override
    public String toString() {
        return PREFIX + "...";
    }

    private static String checksum(String checked) {
        CRC32 crc = new CRC32();
        crc.update(checked.getBytes(StandardCharsets.US_ASCII));
        return HexFormat.of().toHexDigits((int) crc.getValue());
    }
}
