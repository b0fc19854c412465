package org.axlewright.api.workspace;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import jakarta.servlet.http.HttpServletResponse;
import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.UnknownHostException;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.UUID;
import org.axlewright.api.problem.Declined;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.http.HttpHeaders;
import org.springframework.http.HttpStatus;
import org.springframework.stereotype.Component;

/**
 * How often one address and one token may ask, as token buckets. Answers tell what is left in the fields of
 * draft-ietf-httpapi-ratelimit-headers-11: {@code RateLimit-Policy: "address";q=600;w=60} and {@code RateLimit: "address";r=599;t=1}.
 */
@Component
@EnableConfigurationProperties(RateLimitSettings.class)
class RateLimits {

    static final String POLICY = "RateLimit-Policy";
    static final String LEFT = "RateLimit";

    private static final Duration WINDOW = Duration.ofMinutes(1);

    /** Buckets kept at once, each some hundred bytes; the one asked for least goes first. A bucket left alone for a window is full again. */
    private static final int MOST_BUCKETS = 100_000;

    private final RateLimitSettings settings;
    private final Cache<Object, Bucket> buckets = Caffeine.newBuilder()
            .maximumSize(MOST_BUCKETS)
            .expireAfterAccess(WINDOW.multipliedBy(2))
            .build();

    RateLimits(RateLimitSettings settings) {
        this.settings = settings;
    }

    /**
     * Counts a request of an address.
     *
     * @param address as the container tells it: that of a proxy, unless proxies are configured
     * @throws Declined 429 when it has asked too often
     */
    void countAddress(String address, HttpServletResponse response) {
        InetAddress from = parsed(address);
        if (from.isLoopbackAddress()) {
            count("address", "loopback", settings.loopback(), response);
        } else {
            count("address", network(from), settings.address(), response);
        }
    }

    /** @throws Declined 429 when the token has been used too often */
    void countToken(UUID token, HttpServletResponse response) {
        count("token", token, settings.token(), response);
    }

    private void count(String policy, Object key, long quota, HttpServletResponse response) {
        Bucket bucket = buckets.get(
                key,
                fresh -> Bucket.builder()
                        .addLimit(limit -> limit.capacity(quota).refillGreedy(quota, WINDOW))
                        .build());
        ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
        add(response, POLICY, "\"" + policy + "\";q=" + quota + ";w=" + WINDOW.toSeconds());
        add(
                response,
                LEFT,
                "\"" + policy + "\";r=" + probe.getRemainingTokens() + ";t=" + seconds(probe.getNanosToWaitForReset()));
        if (!probe.isConsumed()) {
            long wait = Math.max(1, seconds(probe.getNanosToWaitForRefill()));
            throw new Declined(
                            HttpStatus.TOO_MANY_REQUESTS,
                            "too-many-requests",
                            "Too many requests",
                            "This " + policy + " may ask " + quota + " times a minute; ask again in " + wait + " s")
                    .header(HttpHeaders.RETRY_AFTER, String.valueOf(wait));
        }
    }

    /** Both fields are lists (RFC 9651): the address first, then the token. */
    private static void add(HttpServletResponse response, String field, String item) {
        String before = response.getHeader(field);
        response.setHeader(field, before == null ? item : before + ", " + item);
    }

    private static long seconds(long nanos) {
        return (nanos + 999_999_999) / 1_000_000_000;
    }

    /** One household or one machine: an IPv4 address, or the /64 that an IPv6 address lies in. */
    private static Object network(InetAddress address) {
        return address instanceof Inet6Address
                ? ByteBuffer.wrap(address.getAddress()).getLong()
                : address;
    }

    private static InetAddress parsed(String address) {
        try {
            return InetAddress.getByName(address); // a literal: no name is looked up
        } catch (UnknownHostException noAddress) {
            return InetAddress.getLoopbackAddress();
        }
    }
}
