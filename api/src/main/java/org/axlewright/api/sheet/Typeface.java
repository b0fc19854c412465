package org.axlewright.api.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.springframework.core.io.ClassPathResource;

/**
 * DejaVu Sans Condensed, regular and bold, which comes with its licence in a jar of its own: Latin, Greek and Cyrillic letters, signs of
 * units and of mathematics. What it lacks, and what can't be printed at all, is written as its Unicode number, so that nothing is lost
 * unseen.
 */
final class Typeface {

    static final String FAMILY = "DejaVu Sans Condensed";

    private static final String DIRECTORY = "net/sf/jasperreports/fonts/dejavu/";

    private final List<CmapLookup> faces;

    private Typeface(List<CmapLookup> faces) {
        this.faces = faces;
    }

    static Typeface load() {
        return new Typeface(List.of(characters(regular()), characters(bold())));
    }

    static InputStream regular() {
        return open("DejaVuSansCondensed.ttf");
    }

    static InputStream bold() {
        return open("DejaVuSansCondensed-Bold.ttf");
    }

    private static InputStream open(String file) {
        try {
            return new ClassPathResource(DIRECTORY + file).getInputStream();
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    private static CmapLookup characters(InputStream file) {
        try (file;
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            return font.getUnicodeCmapLookup();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** The text with every character that a screen can show; the reader's own typefaces serve. */
    static String onScreen(String text) {
        return replaced(text, false, List.of());
    }

    /** The text with every character that this typeface has. */
    String onPaper(String text) {
        return replaced(text, true, faces);
    }

    private static String replaced(String text, boolean paper, List<CmapLookup> faces) {
        StringBuilder readable = new StringBuilder(text.length() + 64);
        text.codePoints().forEach(character -> {
            boolean known = character < 0x80
                    ? (character >= ' ' && character != 0x7f) || character == '\n' || character == '\t'
                    : isPrintable(character, paper) && faces.stream().allMatch(face -> face.getGlyphId(character) != 0);
            if (known) {
                readable.appendCodePoint(character);
            } else if (character != '\r') {
                readable.append("[U+").append("%04X".formatted(character)).append(']');
            }
        });
        return readable.toString();
    }

    /**
     * Halves of surrogate pairs, control characters and such as turn the direction of writing round are not; on paper neither are
     * letters that are written from right to left.
     */
    private static boolean isPrintable(int character, boolean paper) {
        if (paper
                && switch (Character.getDirectionality(character)) {
                    case Character.DIRECTIONALITY_RIGHT_TO_LEFT,
                            Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC,
                            Character.DIRECTIONALITY_ARABIC_NUMBER -> true;
                    default -> false;
                }) {
            return false;
        }
        return switch (Character.getType(character)) {
            case Character.CONTROL, Character.SURROGATE, Character.UNASSIGNED, Character.PRIVATE_USE -> false;
            case Character.FORMAT -> !paper && (character == 0x200C || character == 0x200D); // joins of letters
            default -> true;
        };
    }
}
