package counterstep.model;

import java.util.Optional;

/**
 * How this document wants a check taken.
 *
 * @param check id of the check
 * @param severity another severity; empty switches the check off
 * @param reason why
 * @param extras unknown fields
 */
public record CheckSetting(
        String check, Optional<Severity> severity, String reason, Extras extras) {}
