package org.axlewright.api.setup;

import io.swagger.v3.oas.annotations.Parameter;
import io.swagger.v3.oas.annotations.media.Schema;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/** The contract's words for where a page begins. */
@Parameter(description = "The `next` of the page before; it keeps the search.", schema = @Schema(type = "string"))
@Target(ElementType.PARAMETER)
@Retention(RetentionPolicy.RUNTIME)
@interface PageCursor {}
