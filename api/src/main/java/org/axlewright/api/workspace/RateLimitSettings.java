package org.axlewright.api.workspace;

import jakarta.validation.constraints.Min;
import org.springframework.boot.context.properties.ConfigurationProperties;
import org.springframework.boot.context.properties.bind.DefaultValue;
import org.springframework.validation.annotation.Validated;

/**
 * Requests a minute.
 *
 * @param address of one address, loopback apart
 * @param loopback of all programs of this machine together: more than it can answer
 * @param token of one token, on top of its address
 */
@Validated
@ConfigurationProperties("axlewright.requests-per-minute")
record RateLimitSettings(
        @Min(1) @DefaultValue("600") long address,
        @Min(1) @DefaultValue("1000000") long loopback,
        @Min(1) @DefaultValue("3000") long token) {}
