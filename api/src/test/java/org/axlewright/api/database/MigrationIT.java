package org.axlewright.api.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import org.axlewright.api.database.TestDatabase.Access;
import org.flywaydb.core.Flyway;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;

/** What becomes of the tables and of the service's rights at a start, by the login that it is given. */
class MigrationIT {

    private static final String INIT = "set role axlewright_service";

    private final Access database = TestDatabase.fresh();

    @Test
    void giveWhatWasSavedBeforeToTheLocalWorkspace() throws SQLException {
        Flyway.configure()
                .dataSource(database.url(), database.user(), database.password())
                .target("1")
                .skipDefaultCallbacks(true)
                .load()
                .migrate();
        ask(
                database,
                "insert into setups (id, name, document) values (gen_random_uuid(), 'from before', '{}') returning 1");
        TestDatabase.bringUpToDate(database);
        assertThat(
                        ask(
                                database,
                                "select workspaces.name from setups join workspaces on workspaces.id = workspace_id where setups.name = 'from before'"))
                .isEqualTo("local");
    }

    @Test
    void aSuperuserTakesOnTheServicesRole() throws SQLException {
        try (HikariDataSource pool = pool(database.user(), database.password(), INIT)) {
            Migration migration = migration(database.user(), database.password(), pool);
            migration.start();
            assertThat(migration.done()).isTrue();
            assertThat(JdbcClient.create(pool)
                            .sql("select current_user")
                            .query(String.class)
                            .single())
                    .isEqualTo("axlewright_service");
        }
    }

    @Test
    void anOwnerOfTheSchemaServesWhenItIsGivenTheRole() throws SQLException {
        owner("owner_given");
        ask(database, "grant axlewright_service to owner_given; select 1");
        try (HikariDataSource pool = pool("owner_given", "owner", INIT)) {
            Migration migration = migration("owner_given", "owner", pool);
            migration.start();
            assertThat(migration.done()).isTrue();
        }
    }

    @Test
    void anOwnerThatIsNotGivenTheRoleIsToldHow() throws SQLException {
        owner("owner_not_given");
        try (HikariDataSource pool = pool("owner_not_given", "owner", INIT)) {
            Migration migration = migration("owner_not_given", "owner", pool);
            assertThatThrownBy(migration::start)
                    .isInstanceOfSatisfying(
                            StartRefused.class,
                            refused -> assertThat(refused.action()).contains("grant axlewright_service to"));
            assertThat(migration.done()).isFalse();
        }
    }

    @Test
    void aServiceWithoutTheRoleIsRefusedWhoeverLogsIn() throws SQLException {
        try (HikariDataSource pool = pool(database.user(), database.password(), "select 1")) {
            assertThatThrownBy(migration(database.user(), database.password(), pool)::start)
                    .isInstanceOf(StartRefused.class)
                    .hasMessageContaining("row-level security does not hold");
        }
    }

    @Test
    void theOwnerItselfIsRefusedAsServant() throws SQLException {
        owner("owner_serving");
        try (HikariDataSource pool = pool("owner_serving", "owner", "select 1")) {
            assertThatThrownBy(migration("owner_serving", "owner", pool)::start)
                    .isInstanceOf(StartRefused.class)
                    .hasMessageContaining("owner_serving");
        }
    }

    /** A table that forgets its policy can't be used, so it can't leak. */
    @Test
    void onlyTablesThatAreHeldAreGivenToTheService() throws SQLException {
        TestDatabase.bringUpToDate(database);
        ask(database, "create table forgetful (n int); select 1");
        TestDatabase.bringUpToDate(database);
        String may = "select has_table_privilege('axlewright_service', '%s', 'select')";
        assertThat(ask(database, may.formatted("forgetful"))).isEqualTo("f");
        assertThat(ask(database, may.formatted("tokens"))).isEqualTo("f");
        assertThat(ask(database, may.formatted("setups"))).isEqualTo("t");
    }

    private Migration migration(String user, String password, HikariDataSource pool) {
        return new Migration(
                Flyway.configure().dataSource(database.url(), user, password).load(), JdbcClient.create(pool));
    }

    private HikariDataSource pool(String user, String password, String init) {
        HikariConfig config = new HikariConfig();
        config.setJdbcUrl(database.url());
        config.setUsername(user);
        config.setPassword(password);
        config.setConnectionInitSql(init);
        config.setInitializationFailTimeout(-1);
        config.setConnectionTimeout(1000);
        config.setMaximumPoolSize(2);
        return new HikariDataSource(config);
    }

    /** A login that owns the schema and may do nothing else. The role of the service is there already. */
    private void owner(String name) throws SQLException {
        TestDatabase.bringUpToDate(TestDatabase.fresh());
        ask(database, "create role " + name + " login password 'owner'; select 1");
        ask(database, "alter database " + database.name() + " owner to " + name + "; select 1");
    }

    private static String ask(Access database, String sql) throws SQLException {
        try (Connection connection = DriverManager.getConnection(database.url(), database.user(), database.password());
                Statement statement = connection.createStatement()) {
            boolean rows = statement.execute(sql);
            while (!rows) {
                rows = statement.getMoreResults();
            }
            try (ResultSet result = statement.getResultSet()) {
                result.next();
                return result.getString(1);
            }
        }
    }
}
