package org.axlewright.api.contract;

import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.core.converter.ResolvedSchema;
import io.swagger.v3.oas.models.OpenAPI;
import org.axlewright.api.problem.Problem;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.core.Ordered;
import org.springframework.core.annotation.Order;
import org.springframework.stereotype.Component;

/** Brings in the schema of the problem document, which no controller returns. */
@Component
@Order(Ordered.HIGHEST_PRECEDENCE)
final class ProblemSchema implements OpenApiCustomizer {

    @Override
    public void customise(OpenAPI document) {
        ResolvedSchema resolved = ModelConverters.getInstance(true)
                .resolveAsResolvedSchema(new AnnotatedType(Problem.class).resolveAsRef(true));
        resolved.referencedSchemas.forEach(
                (name, schema) -> document.getComponents().addSchemas(name, schema));
    }
}
