package org.axlewright.api.setup;

import java.nio.file.Path;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionMessage;
import org.springframework.boot.autoconfigure.condition.ConditionOutcome;
import org.springframework.boot.autoconfigure.condition.SpringBootCondition;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.util.StringUtils;

/** Which database: the one of {@code spring.datasource.url}, or an embedded server when none is given. */
@Configuration(proxyBeanMethods = false)
class SetupConfiguration {

    /** The start doesn't wait for the database: {@link Migration} does. */
    @Bean
    FlywayMigrationStrategy migrateLater() {
        return flyway -> {};
    }

    @Configuration(proxyBeanMethods = false)
    @Conditional(NoDatabaseGiven.class)
    static class Embedded {

        @Bean
        EmbeddedServer embeddedServer(@Value("${axlewright.data}") Path data) {
            return EmbeddedServer.start(data);
        }

        @Bean
        JdbcConnectionDetails embeddedConnection(EmbeddedServer server) {
            return new JdbcConnectionDetails() {
                @Override
                public String getUsername() {
                    return EmbeddedServer.NAME;
                }

                @Override
                public String getPassword() {
                    return server.password();
                }

                @Override
                public String getJdbcUrl() {
                    return server.url();
                }
            };
        }
    }

    static class NoDatabaseGiven extends SpringBootCondition {

        @Override
        public ConditionOutcome getMatchOutcome(ConditionContext context, AnnotatedTypeMetadata metadata) {
            boolean given = StringUtils.hasText(context.getEnvironment().getProperty("spring.datasource.url"))
                    || StringUtils.hasText(context.getEnvironment().getProperty("spring.datasource.jndi-name"));
            return new ConditionOutcome(!given, ConditionMessage.of(given ? "a database is given" : "no database"));
        }
    }
}
