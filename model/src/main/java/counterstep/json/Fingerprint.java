package counterstep.json;

import counterstep.model.Procedure;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** Tells whether two procedures say the same to the bench. */
public final class Fingerprint {
    private Fingerprint() {}

    /**
     * SHA-256 over the document without the places of its steps on the canvas, comments, waivers
     * and the highest number given so far, which comments raise; 64 hexadecimal digits.
     */
    public static String of(Procedure procedure) {
        Procedure said =
                procedure
                        .draft()
                        .lastNumber(0)
                        .steps(
                                procedure.steps().stream()
                                        .map(step -> step.draft().place(Optional.empty()).step())
                                        .toList())
                        .comments(List.of())
                        .waivers(List.of())
                        .procedure();
        byte[] canonical =
                JsonText.compact(ProcedureWriter.fields(said)).getBytes(StandardCharsets.UTF_8);
        return HexFormat.of().formatHex(sha256().digest(canonical));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
