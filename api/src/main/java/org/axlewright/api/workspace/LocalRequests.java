package org.axlewright.api.workspace;

import jakarta.servlet.http.HttpServletRequest;
import java.util.List;
import java.util.regex.Pattern;
import org.axlewright.api.problem.Declined;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;

/**
 * Requests without a token, to the loopback address: from a program or a page of this machine, and not from somebody else's page in its
 * browser. Another name in Host is a name that was bound anew to this machine (DNS rebinding); another Origin, or a site of another origin
 * in the browser's own words, is a page from elsewhere; a proxy speaks for people who are not here.
 */
final class LocalRequests {

    private static final Pattern HERE =
            Pattern.compile("(localhost|127(\\.\\d{1,3}){3}|\\[::1])(:\\d{1,5})?", Pattern.CASE_INSENSITIVE);

    private static final List<String> PROXIED = List.of("Forwarded", "X-Forwarded-For", "X-Forwarded-Host", "Via");

    private LocalRequests() {}

    /** @throws Declined 403 when it is none */
    static void require(HttpServletRequest request) {
        String host = request.getHeader(HttpHeaders.HOST);
        if (host == null || !HERE.matcher(host).matches()) {
            throw declined(
                    "foreign-host",
                    "Without a token, setups are for this machine alone: Host must be localhost, 127.0.0.1 or [::1], was "
                            + shown(host));
        }
        String origin = request.getHeader(HttpHeaders.ORIGIN);
        if (origin != null && !origin.equalsIgnoreCase(request.getScheme() + "://" + host)) {
            throw declined(
                    "foreign-origin",
                    "Without a token, setups are for the service's own page: Origin must be " + request.getScheme()
                            + "://" + host + ", was " + shown(origin));
        }
        String site = request.getHeader("Sec-Fetch-Site");
        if (site != null && !site.equals("same-origin") && !site.equals("none") && !followsALink(request)) {
            throw declined(
                    "foreign-origin",
                    "Without a token, setups are for the service's own page: the browser asks for a page of another origin"
                            + " (Sec-Fetch-Site: " + shown(site) + ")");
        }
        for (String header : PROXIED) {
            if (request.getHeader(header) != null) {
                throw declined(
                        "proxied",
                        "Without a token, setups are for this machine alone, and " + header
                                + " says that a proxy asks for somebody else. Set axlewright.tokens-required=true");
            }
        }
    }

    /** The page that holds the link sees nothing of what it leads to. */
    private static boolean followsALink(HttpServletRequest request) {
        return request.getMethod().equals("GET")
                && "navigate".equals(request.getHeader("Sec-Fetch-Mode"))
                && "document".equals(request.getHeader("Sec-Fetch-Dest"));
    }

    private static Declined declined(String kind, String detail) {
        return new Declined(HttpStatus.FORBIDDEN, kind, "Not from here", detail);
    }

    private static String shown(@Nullable String value) {
        return value == null
                ? "absent"
                : "\"" + (value.length() <= 100 ? value : value.substring(0, 100) + "...") + "\"";
    }
}
