package org.axlewright.api.workspace;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.time.Instant;
import java.util.Set;
import java.util.UUID;
import java.util.function.Supplier;
import org.axlewright.api.problem.Declined;
import org.axlewright.api.workspace.Tokens.Grant;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;

/** Finds the workspace of one request, once, when it is first asked for: calculations never knock. */
final class Door implements Supplier<UUID> {

    private static final String SCHEME = "Bearer ";

    static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");

    /** Posts that change nothing saved: they name setups to read. */
    static final Set<String> READING = Set.of("/v1/comparisons", "/v1/candidates", "/v1/assessments");

    private final HttpServletRequest request;
    private final HttpServletResponse response;
    private final Access access;
    private final Tokens tokens;
    private final RateLimits limits;
    private @Nullable UUID workspace;

    Door(HttpServletRequest request, HttpServletResponse response, Access access, Tokens tokens, RateLimits limits) {
        this.request = request;
        this.response = response;
        this.access = access;
        this.tokens = tokens;
        this.limits = limits;
    }

    /** @throws Declined 401, 403 or 429 when the request has no business here */
    @Override
    public UUID get() {
        if (workspace == null) {
            workspace = opened();
        }
        return workspace;
    }

    private UUID opened() {
        String authorization = request.getHeader(HttpHeaders.AUTHORIZATION);
        if (authorization == null) {
            if (access.tokensRequired()) {
                throw unauthorised(
                        "token-needed", "Saved setups need a token: send it as Authorization: Bearer axw_...", null);
            }
            LocalRequests.require(request);
            return CurrentWorkspace.LOCAL;
        }
        if (!authorization.regionMatches(true, 0, SCHEME, 0, SCHEME.length())) {
            throw unauthorised("token-needed", "Authorization must be of the scheme Bearer", null);
        }
        Token token = Token.read(authorization.substring(SCHEME.length()).strip())
                .orElseThrow(() -> invalid("The token is cut or mistyped"));
        Grant grant = tokens.use(token).orElseThrow(() -> invalid("The token is not known"));
        if (grant.revoked()) {
            throw invalid("The token has been revoked");
        }
        if (!grant.expiresAt().isAfter(Instant.now())) {
            throw invalid("The token expired at " + grant.expiresAt());
        }
        limits.countToken(grant.token(), response);
        if (grant.scope() != Scope.WRITE && !reads()) {
            throw new Declined(
                            HttpStatus.FORBIDDEN,
                            "insufficient-scope",
                            "The token may only read",
                            "This changes what is saved; it needs a token of the scope write")
                    .header(
                            HttpHeaders.WWW_AUTHENTICATE,
                            "Bearer realm=\"axlewright\", error=\"insufficient_scope\", scope=\"write\"");
        }
        return grant.workspace();
    }

    private boolean reads() {
        return SAFE.contains(request.getMethod()) || READING.contains(request.getRequestURI());
    }

    private static Declined invalid(String detail) {
        return unauthorised("token-invalid", detail, detail);
    }

    /** RFC 6750, section 3: without a token no error is named. */
    private static Declined unauthorised(String kind, String detail, @Nullable String error) {
        String challenge = "Bearer realm=\"axlewright\"";
        return new Declined(HttpStatus.UNAUTHORIZED, kind, "Not admitted", detail)
                .header(
                        HttpHeaders.WWW_AUTHENTICATE,
                        error == null
                                ? challenge
                                : challenge + ", error=\"invalid_token\", error_description=\"" + error + "\"");
    }
}
