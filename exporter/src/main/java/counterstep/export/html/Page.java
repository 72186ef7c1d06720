package counterstep.export.html;

import counterstep.export.guide.Closing;
import counterstep.export.guide.Guide;
import counterstep.export.guide.Imprint;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.TitleLines;
import counterstep.model.Phase;
import java.util.List;
import java.util.regex.Pattern;

/** Sets a guide as one HTML page. */
final class Page {
    private static final Pattern LANGUAGE = Pattern.compile("[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*");

    private final Guide guide;
    private final Style style;
    private final Markup markup = new Markup();
    private final Tables tables = new Tables(markup);
    private final StepSetter steps;

    private Page(Guide guide, Style style, Medium medium) {
        this.guide = guide;
        this.style = style;
        this.steps = new StepSetter(markup, medium);
    }

    static String of(Guide guide, Style style, Medium medium) {
        return new Page(guide, style, medium).set();
    }

    private String set() {
        String language = guide.title().language();
        boolean known = LANGUAGE.matcher(language).matches();
        TitleLines title = guide.title();
        String name = title.title().isBlank() ? "Service procedure" : title.title();
        Head.set(markup, known ? language : "en", name, style);
        markup.open("body");
        title(title);
        markup.open("main");
        steps.hazards(guide.cautions());
        conditions();
        need();
        fasteners();
        guide.phases().forEach(this::phase);
        closing(guide.closing());
        times();
        markup.close();
        imprint(guide.imprint());
        return markup.close().close().own("\n").toString();
    }

    private void title(TitleLines title) {
        markup.open("header").open("p", "class", "facts");
        title.facts().forEach(fact -> markup.element("span", fact).text(" "));
        markup.close();
        markup.element("h1", title.title().isBlank() ? "Service procedure" : title.title());
        if (!title.unfinished().isEmpty()) {
            markup.element("p", title.unfinished(), "class", "unfinished");
        }
        markup.open("p", "class", "summary").text(title.summary());
        markup.text(title.summary().isBlank() ? "" : " ").text(title.figures()).close();
        markup.close();
    }

    private void conditions() {
        if (guide.conditions().isEmpty()) {
            return;
        }
        section("before", "Before you start", "");
        list(guide.conditions());
        markup.close();
    }

    private void need() {
        if (guide.tools().isEmpty() && guide.needs().isEmpty()) {
            return;
        }
        section("need", "You need", "");
        tables.needs(guide);
        markup.close();
    }

    private void fasteners() {
        if (guide.fasteners().isEmpty()) {
            return;
        }
        section("fastener", "Fasteners", "in the order in which they come off");
        tables.fasteners(guide.fasteners());
        markup.close();
    }

    private void phase(PhaseBlock phase) {
        section("phase " + phase.phase().word(), phase.title(), phase.range());
        int first = phase.steps().get(0).number();
        markup.open("ol", "start", Integer.toString(first));
        phase.steps().forEach(steps::set);
        markup.close().close();
    }

    private void closing(Closing closing) {
        section("closing", "Closing test", "before the device goes back");
        if (closing.steps().isEmpty()) {
            String phase = Phase.VERIFY.word();
            markup.element("p", "No step of the phase " + phase + " tries the device.");
        }
        markup.open("ul", "class", "ticks");
        closing.steps().forEach(step -> tick(step));
        tick(closing.totals());
        markup.close().close();
    }

    private void tick(String line) {
        markup.open("li").element("span", "", "class", "box");
        markup.element("span", line).close();
    }

    private void times() {
        section("time", "Time and tool changes", "");
        tables.times(guide.times());
        guide.notes().forEach(note -> markup.element("p", note, "class", "soft"));
        markup.close();
    }

    private void imprint(Imprint imprint) {
        markup.open("footer");
        if (!imprint.revisions().isEmpty()) {
            markup.element("h2", "Revisions");
            tables.revisions(imprint.revisions());
        }
        markup.element("p", imprint.name() + ". " + imprint.tried() + ".", "class", "soft");
        markup.open("p", "class", "soft").text("Fingerprint ");
        markup.element("span", imprint.fingerprint(), "class", "fingerprint").close();
        markup.close();
    }

    private void section(String kind, String heading, String beside) {
        markup.open("section", "class", kind).open("h2").text(heading);
        if (!beside.isEmpty()) {
            markup.text(" ").element("span", beside, "class", "beside");
        }
        markup.close();
    }

    private void list(List<String> lines) {
        markup.open("ul");
        lines.forEach(line -> markup.element("li", line));
        markup.close();
    }
}
