package counterstep.export;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.stream.Collectors;
import nu.validator.client.EmbeddedValidator;

/** Somebody else's opinion of our pages. */
public final class NuValidator {
    private NuValidator() {}

    /** What the validator says, but for one property of 2021 that this one of 2020 cannot know. */
    public static String complaints(String page) throws Exception {
        EmbeddedValidator validator = new EmbeddedValidator();
        validator.setOutputFormat(EmbeddedValidator.OutputFormat.GNU);
        var bytes = new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8));
        return validator
                .validate(bytes)
                .lines()
                .filter(line -> !line.contains("print-color-adjust"))
                .collect(Collectors.joining("\n"));
    }
}
