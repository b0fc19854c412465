package org.axlewright.api.sheet;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.axlewright.api.problem.Declined;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpStatus;
import org.springframework.http.InvalidMediaTypeException;
import org.springframework.http.MediaType;
import org.springframework.util.InvalidMimeTypeException;
import org.springframework.util.MimeTypeUtils;

/** What a build sheet is written as. */
public enum Medium {
    HTML("html"),
    PDF("pdf");

    private final String token;

    Medium(String token) {
        this.token = token;
    }

    MediaType type() {
        return this == PDF ? MediaType.APPLICATION_PDF : new MediaType(MediaType.TEXT_HTML, StandardCharsets.UTF_8);
    }

    @Override
    public String toString() {
        return token;
    }

    /**
     * What the caller likes best; HTML when it does not care (RFC 9110, section 12.5.1).
     *
     * @throws Declined 406 when it takes neither
     */
    public static Medium accepted(@Nullable String accept) {
        if (accept == null || accept.isBlank()) {
            return HTML;
        }
        Medium best = null;
        double most = 0;
        List<MediaType> ranges = ranges(accept);
        for (Medium medium : values()) {
            double quality = medium.quality(ranges);
            if (quality > most) {
                best = medium;
                most = quality;
            }
        }
        if (best == null) {
            throw new Declined(
                    HttpStatus.NOT_ACCEPTABLE,
                    "not-acceptable",
                    "Not Acceptable",
                    "A build sheet is text/html or application/pdf; Accept names neither");
        }
        return best;
    }

    private static List<MediaType> ranges(String accept) {
        try {
            List<MediaType> ranges = new ArrayList<>(MediaType.parseMediaTypes(accept));
            MimeTypeUtils.sortBySpecificity(ranges);
            return ranges;
        } catch (InvalidMediaTypeException | InvalidMimeTypeException unreadable) {
            throw Declined.parameter("unknown-value", "The Accept header can't be read");
        }
    }

    /** The most specific range that includes the type decides. */
    private double quality(List<MediaType> ranges) {
        MediaType bare = this == PDF ? MediaType.APPLICATION_PDF : MediaType.TEXT_HTML;
        return ranges.stream()
                .filter(range -> range.includes(bare))
                .findFirst()
                .map(MediaType::getQualityValue)
                .orElse(0.0);
    }
}
