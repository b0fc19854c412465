package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The contract's words for the number of a revision. */
@Parameter(
        description = "Number of the revision, from 1.",
        schema = @Schema(type = "integer", format = "int64", minimum = "1"))
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
@interface Revision {}
