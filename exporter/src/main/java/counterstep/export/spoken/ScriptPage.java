package counterstep.export.spoken;

import static counterstep.export.markdown.Inline.escaped;

import counterstep.export.SpeechRate;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.StepBlock;
import counterstep.export.guide.TitleLines;
import counterstep.export.markdown.Inline;
import counterstep.export.markdown.Lines;
import counterstep.handbook.SpeakingRates;
import counterstep.model.Numbers;

/** Sets a narration as Markdown: what is said in paragraphs, all else in a line above it. */
final class ScriptPage {
    private final Narration narration;
    private final Lines lines = new Lines();

    private ScriptPage(Narration narration) {
        this.narration = narration;
    }

    static String of(Narration narration) {
        return new ScriptPage(narration).set();
    }

    private String set() {
        TitleLines title = narration.guide().title();
        lines.block("# Narration: " + escaped(title.title()));
        lines.block(String.join(" · ", title.facts().stream().map(Inline::escaped).toList()));
        lines.block(title.unfinished().isEmpty() ? "" : "**" + title.unfinished() + "**");
        lines.block(length());
        lines.block("## Opening");
        part(narration.step(0));
        narration.guide().phases().forEach(this::phase);
        lines.block("## How the lengths are reckoned");
        lines.block(
                "Words divided by words per minute; pauses come on top. Rates in words per minute:");
        lines.list(SpeakingRates.sources().stream().map(Inline::escaped).toList());
        lines.block(escaped(narration.guide().imprint().name()) + ".");
        lines.block("Fingerprint " + narration.guide().imprint().fingerprint());
        return lines.toString();
    }

    private String length() {
        int words = narration.words();
        int rate = narration.rate().wordsPerMinute();
        return "%d words, spoken in %s at %d words per minute (%s at %d, %s at %d)."
                .formatted(
                        words,
                        time(narration.rate().seconds(words)),
                        rate,
                        time(new SpeechRate(SpeakingRates.slow()).seconds(words)),
                        SpeakingRates.slow(),
                        time(new SpeechRate(SpeakingRates.fast()).seconds(words)),
                        SpeakingRates.fast());
    }

    private void phase(PhaseBlock phase) {
        lines.block("## " + phase.title() + ", " + phase.range());
        for (StepBlock step : phase.steps()) {
            Spoken spoken = narration.step(step.number());
            lines.block(("### " + step.number() + ". " + escaped(spoken.title())).strip());
            part(spoken);
        }
    }

    private void part(Spoken spoken) {
        lines.block("*" + measure(spoken) + "*");
        spoken.shown().forEach(photo -> lines.block("*Shown: " + escaped(photo) + "*"));
        for (Passage passage : spoken.passages()) {
            String words = escaped(String.join(" ", passage.sentences()));
            lines.block((passage.notice() ? "> " : "") + words);
        }
    }

    /** '0:12 to 0:20, 20 words in 0:08, from its text; the step takes 0:40'. */
    private String measure(Spoken spoken) {
        SpeechRate rate = narration.rate();
        long spent = rate.seconds(spoken.words());
        String said =
                "%s to %s, %s in %s, from %s"
                        .formatted(
                                time(rate.seconds(spoken.from())),
                                time(rate.seconds((long) spoken.from() + spoken.words())),
                                spoken.words() == 1 ? "1 word" : spoken.words() + " words",
                                time(spent),
                                spoken.source());
        if (spoken.seconds().isEmpty()) {
            return said;
        }
        int taken = spoken.seconds().getAsInt();
        String longer = spent > taken ? ", less than is said" : "";
        return said + "; the step takes " + time(taken) + longer;
    }

    private static String time(long seconds) {
        return Numbers.minutesAndSeconds(seconds);
    }
}
