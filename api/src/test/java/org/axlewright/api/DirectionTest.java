package org.axlewright.api;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A room of the service knows the room of the same name below, the lower rooms, and what all rooms share; nothing else. */
class DirectionTest {

    private static final String API = "org.axlewright.api";
    private static final String DOMAIN = "org.axlewright.domain";
    private static final Set<String> BELOW =
            Set.of("quantity", "trace", "check", "axles", "tyre", "pack", "roadload", "cable", "motor");

    /** Rooms that ask another on the way to their own answer: the range with one pack and with the other, the current of a route. */
    private static final Map<String, Set<String>> ASKS =
            Map.of("repack", Set.of("energy"), "conductor", Set.of("energy"));

    private static final JavaClasses ALL = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(API, DOMAIN);

    private static Set<String> rooms(String root) {
        return ALL.stream()
                .map(JavaClass::getPackageName)
                .filter(name -> name.startsWith(root + "."))
                .map(name -> name.substring(root.length() + 1).replaceAll("\\..*", ""))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void aRoomKnowsTheRoomOfItsNameBelowAndNoOther() {
        Set<String> questions = rooms(DOMAIN);
        questions.removeAll(BELOW);
        Set<String> served = rooms(API);
        served.retainAll(questions);
        assertThat(served).contains("mass");
        for (String room : served) {
            String[] others = questions.stream()
                    .filter(other -> !other.equals(room))
                    .filter(other -> !ASKS.getOrDefault(room, Set.of()).contains(other))
                    .flatMap(other -> java.util.stream.Stream.of(DOMAIN + "." + other + "..", API + "." + other + ".."))
                    .toArray(String[]::new);
            noClasses()
                    .that()
                    .resideInAPackage(API + "." + room + "..")
                    .should()
                    .dependOnClassesThat()
                    .resideInAnyPackage(others)
                    .check(ALL);
        }
    }

    @Test
    void onlyWhatIsSavedKnowsTheDatabase() {
        noClasses()
                .that()
                .resideInAPackage(API + "..")
                .and()
                .resideOutsideOfPackages(API + ".database..", API + ".workspace..", API + ".setup..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.sql..",
                        "javax.sql..",
                        "org.springframework.jdbc..",
                        "org.flywaydb..",
                        "org.postgresql..",
                        "io.zonky..")
                .check(ALL);
    }

    @Test
    void noBodyIsReadByAnnotationsThatTheContractDoesNotSee() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAPackage("tools.jackson.databind.annotation..")
                .check(ALL);
    }
}
