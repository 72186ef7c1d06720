package counterstep.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.domain.JavaClass;
import counterstep.check.Check;
import counterstep.editor.desk.DeskPanel;
import counterstep.export.Exporter;
import counterstep.export.catalogue.Catalogue;
import counterstep.review.AllChecks;
import counterstep.testing.Samples;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Command;

/** Fails when something was added in one place and forgotten in another. */
final class CompleteHouseTest {
    private static final Path PROJECT = Samples.projectFolder();

    @Test
    void everyCheckIsOnTheListOnce() {
        assertEquals(names(House.fulfilling(Check.class)), listed(AllChecks.list()));
        List<String> ids = AllChecks.list().stream().map(check -> check.about().id()).toList();
        assertEquals(ids.size(), new TreeSet<>(ids).size(), () -> "an id twice: " + ids);
    }

    @Test
    void everyCheckIsNamedAfterItsId() {
        for (Check check : AllChecks.list()) {
            assertEquals(
                    check.about().id(),
                    check.getClass()
                            .getSimpleName()
                            .replaceAll("(?<=.)(?=\\p{Lu})", "-")
                            .toLowerCase(Locale.ROOT));
        }
    }

    @Test
    void everyCheckHasATestAndAPage() {
        for (Check check : AllChecks.list()) {
            assertTested("model", check.getClass().getName());
            Path page = PROJECT.resolve("docs/checks/" + check.about().id() + ".md");
            assertTrue(Files.isRegularFile(page), () -> page + " is missing");
        }
    }

    @Test
    void everyCheckPageBelongsToACheck() throws Exception {
        Collection<String> ids =
                AllChecks.list().stream()
                        .map(check -> check.about().id() + ".md")
                        .collect(Collectors.toCollection(TreeSet::new));
        try (Stream<Path> pages = Files.list(PROJECT.resolve("docs/checks"))) {
            assertEquals(
                    String.join("\n", ids),
                    pages.map(page -> page.getFileName().toString())
                            .sorted()
                            .collect(Collectors.joining("\n")));
        }
    }

    @Test
    void everyExporterIsInTheCatalogueAndTested() {
        assertEquals(names(House.fulfilling(Exporter.class)), listed(Catalogue.all()));
        Catalogue.all()
                .forEach(exporter -> assertTested("exporter", exporter.getClass().getName()));
    }

    @Test
    void everyCommandIsTested() {
        List<String> commands =
                House.classes().stream()
                        .filter(type -> type.isAnnotatedWith(Command.class))
                        .map(JavaClass::getName)
                        .toList();

        assertFalse(commands.isEmpty());
        commands.forEach(command -> assertTested("editor", command));
    }

    @Test
    void everyPanelIsTestedAndHasAPackageOfItsOwn() {
        List<JavaClass> panels = House.fulfilling(DeskPanel.class).toList();

        panels.forEach(panel -> assertTested("editor", panel.getName()));
        assertEquals(
                House.PANELS.stream()
                        .filter(panel -> !panel.equals("editor.canvas")) // the middle of the window
                        .map(House.PROGRAM::concat)
                        .sorted()
                        .toList(),
                panels.stream().map(JavaClass::getPackageName).sorted().toList());
    }

    private static void assertTested(String module, String type) {
        Path test =
                PROJECT.resolve(module)
                        .resolve("src/test/java")
                        .resolve(type.replace('.', '/') + "Test.java");
        assertTrue(Files.isRegularFile(test), () -> test + " is missing");
    }

    private static String names(Stream<JavaClass> types) {
        return types.map(JavaClass::getName).sorted().collect(Collectors.joining("\n"));
    }

    private static String listed(List<?> all) {
        return all.stream()
                .map(one -> one.getClass().getName())
                .sorted()
                .collect(Collectors.joining("\n"));
    }
}
