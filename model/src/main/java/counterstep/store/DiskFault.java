package counterstep.store;

import counterstep.input.BadInput;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

/** What the disk refuses, as one sentence with the file in front. */
final class DiskFault {
    private DiskFault() {}

    static BadInput reading(Path file, IOException fault) {
        return told(file, "it cannot be read", fault);
    }

    static BadInput writing(Path file, IOException fault) {
        return told(file, "it cannot be written", fault);
    }

    private static BadInput told(Path file, String what, IOException fault) {
        BadInput told = new BadInput(name(file), what + ": " + cause(file, fault), "");
        told.initCause(fault);
        return told;
    }

    private static String cause(Path file, IOException fault) {
        if (fault instanceof AccessDeniedException) {
            return "permission is missing";
        }
        if (fault instanceof NoSuchFileException) {
            return "there is no folder " + folder(file);
        }
        String reason =
                fault instanceof FileSystemException disk ? disk.getReason() : fault.getMessage();
        return Optional.ofNullable(reason).orElse("the disk refuses").strip();
    }

    static String name(Path file) {
        return Optional.ofNullable(file.getFileName()).orElse(file).toString();
    }

    static Path folder(Path file) {
        Path absolute = file.toAbsolutePath();
        return Optional.ofNullable(absolute.getParent()).orElse(absolute);
    }
}
