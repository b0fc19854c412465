package org.axlewright.domain;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Who may know whom. Kernel, lower rooms, rooms: each knows what stands before it, and no other room. */
class DirectionTest {

    private static final String ROOT = "org.axlewright.domain";
    private static final Set<String> KERNEL = Set.of("quantity", "trace", "check");
    private static final Set<String> LOWER = Set.of("axles", "tyre", "pack", "roadload", "cable", "motor");

    /** Rooms of one floor that know each other, and why there is no other way. Empty is the wish. */
    private static final Map<String, Set<String>> PAIRS = Map.of();

    private static final JavaClasses DOMAIN = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages(ROOT);

    private static String room(JavaClass type) {
        String name = type.getPackageName();
        return name.equals(ROOT) ? "" : name.substring(ROOT.length() + 1).replaceAll("\\..*", "");
    }

    private static Set<String> rooms() {
        return DOMAIN.stream()
                .map(DirectionTest::room)
                .filter(room -> !room.isEmpty())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static void onlyKnows(String room, Set<String> others) {
        Set<String> allowed = new LinkedHashSet<>(others);
        allowed.add(room);
        allowed.addAll(PAIRS.getOrDefault(room, Set.of()));
        String[] forbidden = rooms().stream()
                .filter(other -> !allowed.contains(other))
                .map(other -> ROOT + "." + other + "..")
                .toArray(String[]::new);
        assertThat(forbidden).isNotEmpty();
        noClasses()
                .that()
                .resideInAPackage(ROOT + "." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(forbidden)
                .check(DOMAIN);
    }

    @Test
    void theKernelKnowsNoRoom() {
        assertThat(rooms()).containsAll(KERNEL);
        KERNEL.forEach(part -> onlyKnows(part, KERNEL));
    }

    @Test
    void lowerRoomsKnowTheKernelOnly() {
        rooms().stream().filter(LOWER::contains).forEach(room -> onlyKnows(room, KERNEL));
    }

    @Test
    void roomsKnowTheKernelAndLowerRoomsButNotEachOther() {
        Set<String> below = Stream.concat(KERNEL.stream(), LOWER.stream()).collect(Collectors.toSet());
        Set<String> rooms = new TreeSet<>(rooms());
        rooms.removeAll(below);
        assertThat(rooms).contains("mass");
        rooms.forEach(room -> onlyKnows(room, below));
    }

    @Test
    void theDomainIsPlainJava() {
        classes()
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(ROOT + "..", "java..", "org.jspecify..", "org.hipparchus..")
                .check(DOMAIN);
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.sql..", "java.net..", "java.net.http..", "java.time.Clock")
                .check(DOMAIN);
    }
}
