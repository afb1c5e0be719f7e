package roundwright.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the house: which room may know which, and who alone may touch the screen, the database and the terminal. */
class ArchitectureTest {
    private static final JavaClasses MAIN = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("roundwright");

    /** A room, and all the rooms it may know. */
    private record Room(String name, String... below) {
        String packages() {
            return "roundwright." + name + "..";
        }
    }

    private static final String[] CORE = {"wording", "notation", "pattern", "technique", "course", "group", "mistakes"};

    private static List<Room> rooms() {
        return List.of(
                new Room("wording"),
                new Room("notation", upTo("notation")),
                new Room("pattern", upTo("pattern")),
                new Room("technique", upTo("technique")),
                new Room("course", upTo("course")),
                new Room("group", upTo("group")),
                new Room("mistakes", upTo("mistakes")),
                new Room("store", CORE),
                new Room("sheet", CORE),
                new Room("workbook", with(CORE, "store")),
                new Room("command", with(CORE, "store", "workbook", "sheet")),
                new Room("desktop", with(CORE, "store", "workbook", "sheet")));
    }

    private static String[] upTo(String room) {
        return Arrays.copyOf(CORE, Arrays.asList(CORE).indexOf(room));
    }

    private static String[] with(String[] rooms, String... more) {
        String[] all = Arrays.copyOf(rooms, rooms.length + more.length);
        System.arraycopy(more, 0, all, rooms.length, more.length);
        return all;
    }

    @Test
    void everyRoomIsThereAndKnown() {
        Map<String, Long> found = MAIN.stream()
                .filter(type -> type.getPackageName().startsWith("roundwright."))
                .collect(Collectors.groupingBy(type -> type.getPackageName().split("\\.")[1], Collectors.counting()));
        List<String> named = rooms().stream().map(Room::name).toList();
        assertTrue(named.containsAll(found.keySet()), "rooms that the house does not name: " + found.keySet());
        assertTrue(found.keySet().containsAll(named), "rooms of the house without a class: " + found.keySet());
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void aRoomKnowsOnlyTheRoomsBelow(Room room) {
        List<String> allowed = Arrays.stream(with(room.below(), room.name()))
                .map(name -> "roundwright." + name)
                .toList();
        DescribedPredicate<JavaClass> forbidden = DescribedPredicate.describe(
                "rooms of this house not in " + allowed,
                type -> type.getPackageName().startsWith("roundwright")
                        && allowed.stream()
                                .noneMatch(name -> type.getPackageName().equals(name)
                                        || type.getPackageName().startsWith(name + ".")));
        noClasses()
                .that()
                .resideInAPackage(room.packages())
                .should()
                .dependOnClassesThat(forbidden)
                .check(MAIN);
    }

    @Test
    void noCirclesOfPackages() {
        slices().matching("roundwright.(**)").should().beFreeOfCycles().check(MAIN);
    }

    @Test
    void onlyTheStoreKnowsSql() {
        onlyIn("store", "java.sql..", "javax.sql..", "org.sqlite..");
    }

    @Test
    void onlyTheDesktopKnowsSwing() {
        onlyIn("desktop", "javax.swing..", "java.awt.event..", "com.formdev..", "net.miginfocom..", "org.fife..");
    }

    private static void onlyIn(String room, String... packages) {
        noClasses()
                .that()
                .resideOutsideOfPackage("roundwright." + room + "..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages)
                .check(MAIN);
    }

    @Test
    void onlyCommandsSpeakToTheTerminal() {
        noClasses()
                .that()
                .resideOutsideOfPackages("roundwright.command..", "roundwright.desktop.start..", "roundwright")
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .check(MAIN);
    }

    @Test
    void onlyTheMainClassEndsTheProgram() {
        noClasses()
                .that()
                .resideOutsideOfPackage("roundwright")
                .should()
                .callMethod(System.class, "exit", int.class)
                .check(MAIN);
    }

    @Test
    void nothingBelowTheWorkbookAsksForTheTime() {
        noClasses()
                .that()
                .resideInAnyPackage(Arrays.stream(CORE)
                        .map(name -> "roundwright." + name + "..")
                        .toArray(String[]::new))
                .should()
                .callMethod(java.time.Instant.class, "now")
                .orShould()
                .callMethod(java.time.LocalDate.class, "now")
                .orShould()
                .callMethod(java.time.LocalDateTime.class, "now")
                .check(MAIN);
    }

    @Test
    void testsAreNotReachedFromTheProgram() {
        classes()
                .that()
                .resideInAPackage("roundwright..")
                .should()
                .haveSimpleNameNotEndingWith("Test")
                .check(MAIN);
    }
}
