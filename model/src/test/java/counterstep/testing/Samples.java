package counterstep.testing;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** The sample procedures, and the folder of the project they lie in. */
public final class Samples {
    /** (a) A radio controller whose stick unit is replaced; without error. */
    public static final String STICK_UNIT = "orrin-c4-stick-unit";

    /** (b) The same by a hurried writer: nine faults. */
    public static final String HURRIED = "orrin-c4-stick-unit-hurried";

    /** (c) The fan of a mains bench supply. */
    public static final String SUPPLY_FAN = "bench-supply-fan";

    private Samples() {}

    /** The base names of all three. */
    public static List<String> names() {
        return List.of(STICK_UNIT, HURRIED, SUPPLY_FAN);
    }

    /** The file of a sample. */
    public static Path file(String name) {
        return projectFolder().resolve("samples").resolve(name + ".procedure.json");
    }

    /** The project's top folder, named by the build or found above the working directory. */
    public static Path projectFolder() {
        String named = System.getProperty("counterstep.root", "");
        if (!named.isEmpty()) {
            return Path.of(named);
        }
        Path folder = Path.of("").toAbsolutePath();
        while (!Files.isDirectory(folder.resolve(".mvn"))) {
            folder = folder.getParent();
        }
        return folder;
    }
}
