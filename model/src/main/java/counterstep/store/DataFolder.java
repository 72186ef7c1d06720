package counterstep.store;

import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Where programs of this kind of system keep data of their own, one folder a user. */
public final class DataFolder {
    private static final String PROGRAM = "counterstep";

    private DataFolder() {}

    /** The folder of the user who runs the program; it need not be there yet. */
    public static Path ofUser() {
        return of(
                System.getProperty("os.name", ""),
                Path.of(System.getProperty("user.home", ".")),
                name -> String.valueOf(System.getenv().getOrDefault(name, "")));
    }

    /**
     * The folder on a kind of system.
     *
     * @param system its name
     * @param home the user's folder
     * @param environment a variable by its name; an empty one counts as none
     */
    static Path of(String system, Path home, UnaryOperator<String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return below(environment.apply("LOCALAPPDATA"), home.resolve("AppData/Local"));
        }
        if (name.startsWith("mac")) {
            return home.resolve("Library/Application Support").resolve(PROGRAM);
        }
        return below(environment.apply("XDG_DATA_HOME"), home.resolve(".local/share"));
    }

    private static Path below(String named, Path otherwise) {
        Path folder = named.isEmpty() ? otherwise : Path.of(named);
        return (folder.isAbsolute() ? folder : otherwise).resolve(PROGRAM);
    }
}
