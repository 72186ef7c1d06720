package counterstep.house;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;
import java.util.List;
import java.util.stream.Stream;

/** The classes of the program as compiled, and its packages floor by floor. */
final class House {
    /** What each package of the program is called after this. */
    static final String PROGRAM = "counterstep.";

    /** The panels: each knows the desk, none knows another. */
    static final List<String> PANELS =
            List.of(
                    "editor.canvas",
                    "editor.items",
                    "editor.details",
                    "editor.findings",
                    "editor.quickline",
                    "editor.find",
                    "editor.bench",
                    "editor.timetable",
                    "editor.blocks",
                    "editor.photos",
                    "editor.preview",
                    "editor.text");

    /** From the ground up; a package imports lower floors only. */
    static final List<List<String>> FLOORS =
            List.of(
                    List.of("model", "input"),
                    List.of("edit", "handbook", "links", "words", "json", "timetable"),
                    List.of("find", "ledger", "mending", "plan", "toolchange", "store", "excerpt"),
                    List.of("mirror", "implied", "check", "shorthand", "crew", "estimate"),
                    List.of(
                            "reach",
                            "check.completeness",
                            "check.sequence",
                            "check.safety",
                            "check.equipment",
                            "check.wording"),
                    List.of("review"),
                    List.of("export.shape", "export.picture"),
                    List.of("export"),
                    List.of("export.guide"),
                    List.of("export.html", "export.markdown", "export.table"),
                    List.of("export.pdf"),
                    List.of(
                            "export.report",
                            "export.bench",
                            "export.tray",
                            "export.spoken",
                            "export.dita"),
                    List.of("export.catalogue"),
                    List.of("editor.analysis", "editor.theme", "cli"),
                    List.of("editor.form"),
                    List.of("editor.desk", "editor.remembered"),
                    List.of("editor.start", "editor.clipboard", "editor.exporting", "editor.order"),
                    PANELS,
                    List.of("editor.window"),
                    List.of("start"));

    private static final JavaClasses CLASSES =
            new ClassFileImporter()
                    .withImportOption(new ImportOption.DoNotIncludeTests())
                    .withImportOption(House::isProgram)
                    .importPackages("counterstep");

    private House() {}

    /** Every class of the three modules, tests left out. */
    static JavaClasses classes() {
        return CLASSES;
    }

    /** The concrete classes that fulfil a contract. */
    static Stream<JavaClass> fulfilling(Class<?> contract) {
        return CLASSES.stream()
                .filter(type -> type.isAssignableTo(contract))
                .filter(type -> !type.isInterface() && !type.isAnonymousClass());
    }

    private static boolean isProgram(Location location) {
        return !location.contains("-tests.jar");
    }
}
