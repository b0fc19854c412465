package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The contract's words for If-Match, which is needed though a request without it gets an answer of its own. */
@Parameter(
        description = "ETag of the revision that is changed; 428 when absent, 412 when another one is stored.",
        required = true,
        schema = @Schema(type = "string"))
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
@interface IfMatch {}
