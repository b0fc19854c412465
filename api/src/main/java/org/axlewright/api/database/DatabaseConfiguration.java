package org.axlewright.api.database;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.autoconfigure.condition.ConditionMessage;
import org.springframework.boot.autoconfigure.condition.ConditionOutcome;
import org.springframework.boot.autoconfigure.condition.SpringBootCondition;
import org.springframework.boot.flyway.autoconfigure.FlywayConfigurationCustomizer;
import org.springframework.boot.flyway.autoconfigure.FlywayMigrationStrategy;
import org.springframework.boot.flyway.autoconfigure.FlywayProperties;
import org.springframework.boot.jdbc.autoconfigure.JdbcConnectionDetails;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ConditionContext;
import org.springframework.context.annotation.Conditional;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.type.AnnotatedTypeMetadata;
import org.springframework.jdbc.datasource.DriverManagerDataSource;

/**
 * Which database: the one of {@code spring.datasource.url}, or an embedded server when none is given; and who asks it. Tables belong to
 * one login, which brings them up to date and asks nothing else. The service works under the role {@code axlewright_service}
 * ({@code spring.datasource.hikari.connection-init-sql}), which owns nothing.
 */
@Configuration(proxyBeanMethods = false)
class DatabaseConfiguration {

    /** The start doesn't wait for the database: {@link Migration} does. */
    @Bean
    FlywayMigrationStrategy migrateLater() {
        return flyway -> {};
    }

    /** With the time limits of the pool, so that a database that has frozen holds the start no longer than a request. */
    @Bean
    FlywayConfigurationCustomizer migrateAsOwner(Owner owner, HikariDataSource pool) {
        DriverManagerDataSource connections = new DriverManagerDataSource(Objects.requireNonNull(pool.getJdbcUrl()));
        connections.setUsername(owner.user());
        connections.setPassword(owner.password());
        connections.setConnectionProperties(pool.getDataSourceProperties());
        return flyway -> flyway.dataSource(connections);
    }

    /** Whom the tables belong to: {@code spring.flyway.user}, or else the login of the service, which then takes on less than it may. */
    @Bean
    Owner owner(ObjectProvider<EmbeddedServer> embedded, FlywayProperties given, HikariDataSource pool) {
        EmbeddedServer server = embedded.getIfAvailable();
        if (server != null) {
            return new Owner(EmbeddedServer.NAME, server.password());
        }
        return given.getUser() == null
                ? new Owner(pool.getUsername(), pool.getPassword())
                : new Owner(given.getUser(), given.getPassword());
    }

    record Owner(@Nullable String user, @Nullable String password) {}

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
                    return EmbeddedServer.SERVICE;
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
            boolean given = GivenDatabase.in(context.getEnvironment());
            return new ConditionOutcome(!given, ConditionMessage.of(given ? "a database is given" : "no database"));
        }
    }
}
