package counterstep.editor.start;

import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.Locale;

/** Says when something was, the way one says it today: shorter the nearer it is. */
final class Moment {
    private static final int DAYS_OF_A_WEEK = 7;

    private Moment() {}

    /** 'today 14:02', 'yesterday', 'Monday', '12 January', '12 January 2024'. */
    static String words(ZonedDateTime then, LocalDate today) {
        long days = ChronoUnit.DAYS.between(then.toLocalDate(), today);
        if (days == 0) {
            return "today " + as(then, "HH:mm");
        }
        if (days == 1) {
            return "yesterday";
        }
        if (days > 1 && days < DAYS_OF_A_WEEK) {
            return as(then, "EEEE");
        }
        return as(then, then.getYear() == today.getYear() ? "d MMMM" : "d MMMM yyyy");
    }

    private static String as(ZonedDateTime then, String pattern) {
        return then.format(DateTimeFormatter.ofPattern(pattern, Locale.ENGLISH));
    }
}
