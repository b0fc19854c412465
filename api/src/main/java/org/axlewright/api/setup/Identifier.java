package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The contract's words for the id of a setup. */
@Parameter(description = "Identifier of the setup.", schema = @Schema(type = "string", format = "uuid"))
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
@interface Identifier {}
