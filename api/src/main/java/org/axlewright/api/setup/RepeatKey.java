package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The contract's words for Idempotency-Key. */
@Parameter(
        description =
                "A key of the caller's choice, 1 to 200 visible ASCII characters: the same request with the same key is done once, and its answer repeated for 24 hours. 422 when another request comes with it, 409 while the first is at work.",
        schema = @Schema(type = "string", minLength = 1, maxLength = 200, pattern = "^[!-~]{1,200}$"))
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
@interface RepeatKey {}
