package counterstep.house;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import java.io.PrintStream;
import java.nio.file.Files;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class HouseRulesTest {
    /** Each library, and the packages it may be used in. */
    private static final Map<String, List<String>> ROOMS =
            Map.of(
                    "com.fasterxml.jackson..", List.of("json"),
                    "com.vladsch.flexmark..",
                            List.of("export.guide", "export.html", "export.markdown"),
                    "com.mxgraph..", List.of("editor.canvas"),
                    "com.formdev..", List.of("editor.theme"),
                    "javafx..", List.of("editor.preview"),
                    "com.drew..", List.of("export.picture"),
                    "com.openhtmltopdf..", List.of("export.pdf"),
                    "org.apache.pdfbox..", List.of("export.pdf"),
                    "org.jsoup..", List.of("export.pdf"),
                    "picocli..", List.of("cli"));

    @Test
    void everyPackageStandsOnAFloor() {
        Collection<String> packages =
                House.classes().stream()
                        .map(JavaClass::getPackageName)
                        .collect(Collectors.toCollection(TreeSet::new));
        Collection<String> planned =
                House.FLOORS.stream()
                        .flatMap(List::stream)
                        .map(House.PROGRAM::concat)
                        .collect(Collectors.toCollection(TreeSet::new));

        assertEquals(String.join("\n", planned), String.join("\n", packages));
    }

    @ParameterizedTest
    @MethodSource("floorNumbers")
    void aPackageImportsLowerFloorsOnly(int floor) {
        List<String> below = House.FLOORS.subList(0, floor).stream().flatMap(List::stream).toList();
        for (String room : House.FLOORS.get(floor)) {
            noClasses()
                    .that()
                    .resideInAPackage(House.PROGRAM + room)
                    .should()
                    .dependOnClassesThat(
                            resideInAPackage("counterstep..")
                                    .and(outside(Stream.concat(below.stream(), Stream.of(room)))))
                    .because(
                            "what is below can be understood, tested and kept without what is above")
                    .check(House.classes());
        }
    }

    static Stream<Integer> floorNumbers() {
        return Stream.iterate(0, floor -> floor < House.FLOORS.size(), floor -> floor + 1);
    }

    @Test
    void packagesFormNoRing() {
        slices().matching("counterstep.(**)")
                .should()
                .beFreeOfCycles()
                .because("packages in a ring are one large package under several names")
                .check(House.classes());
    }

    @Test
    void panelsAreIgnorantOfEachOther() {
        slices().matching(
                        "counterstep.editor.(items|details|findings|canvas|bench|timetable|preview)..")
                .should()
                .notDependOnEachOther()
                .because("panels meet at the desk alone, so that one can go without the others")
                .check(House.classes());
    }

    @ParameterizedTest
    @MethodSource("libraries")
    void eachLibraryLivesInItsRoom(String library) {
        noClasses()
                .that(outside(ROOMS.get(library).stream()))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library)
                .because("a library that lives in one room can be exchanged")
                .check(House.classes());
    }

    static Stream<String> libraries() {
        return ROOMS.keySet().stream().sorted();
    }

    @Test
    void theDiskIsTouchedInStoreAlone() {
        noClasses()
                .that(outside(Stream.of("store", "start")))
                .should()
                .dependOnClassesThat()
                .areAssignableTo(Files.class)
                .orShould()
                .dependOnClassesThat()
                .haveNameMatching(
                        "java\\.io\\.(FileInputStream|FileOutputStream|FileReader|FileWriter|RandomAccessFile)")
                .because("whole-file saves and folders that are never left are kept in one place")
                .check(House.classes());
    }

    @Test
    void outputAndExitBelongToTheCommandLine() {
        noClasses()
                .that(outside(Stream.of("cli", "start")))
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .orShould()
                .callMethod(Throwable.class, "printStackTrace")
                .orShould()
                .callMethod(Throwable.class, "printStackTrace", PrintStream.class)
                .because("a library that prints or ends the process cannot serve two masters")
                .check(House.classes());
    }

    @Test
    void theCommandLineIsFreeOfSwing() {
        noClasses()
                .that()
                .resideInAPackage("counterstep.cli..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.awt..", "javax.swing..", "counterstep.editor..")
                .because("it runs where there is no display")
                .check(House.classes());
    }

    @Test
    void paperIsFreeOfSwing() {
        noClasses()
                .that()
                .resideInAPackage("counterstep.export..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javax.swing..", "java.awt.event..")
                .orShould()
                .dependOnClassesThat()
                .areAssignableTo("java.awt.Component")
                .because("guides are written where there is no display")
                .check(House.classes());
    }

    private static DescribedPredicate<JavaClass> outside(Stream<String> rooms) {
        return not(resideInAnyPackage(rooms.map(House.PROGRAM::concat).toArray(String[]::new)));
    }
}
