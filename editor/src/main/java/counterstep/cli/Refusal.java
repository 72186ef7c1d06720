package counterstep.cli;

import counterstep.input.BadInput;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;

/** What a user is told when a command ends early. */
final class Refusal {
    private Refusal() {}

    /** One sentence: place and cause of a refusal; for a fault of the program, how to see more. */
    static String sentence(Throwable fault) {
        if (fault instanceof BadInput refused) {
            return ended(refused.getMessage());
        }
        if (fault instanceof UncheckedIOException unchecked) {
            return ended(disk(unchecked.getCause()));
        }
        return "Counterstep failed (%s: %s); run it again with --debug to see where."
                .formatted(fault.getClass().getSimpleName(), fault.getMessage());
    }

    private static String disk(IOException fault) {
        if (fault instanceof FileSystemException named && named.getFile() != null) {
            return named.getFile() + ": " + cause(named);
        }
        return String.valueOf(fault.getMessage());
    }

    private static String cause(FileSystemException fault) {
        if (fault instanceof AccessDeniedException) {
            return "access is denied";
        }
        if (fault instanceof NoSuchFileException) {
            return "no such file or directory";
        }
        if (fault instanceof FileAlreadyExistsException) {
            return "is in the way";
        }
        return fault.getReason() == null ? "cannot be read or written" : fault.getReason();
    }

    private static String ended(String sentence) {
        return sentence.endsWith(".") ? sentence : sentence + ".";
    }
}
