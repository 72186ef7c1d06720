package counterstep.export.html;

import counterstep.export.guide.Closing;
import counterstep.export.guide.Guide;
import counterstep.export.guide.Imprint;
import counterstep.export.guide.PhaseBlock;
import counterstep.export.guide.StepBlock;
import counterstep.export.guide.TitleLines;
import counterstep.export.picture.EncodedPicture;
import counterstep.model.Phase;
import java.util.List;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Sets a guide as one HTML page. */
final class Page {
    private static final Pattern LANGUAGE = Pattern.compile("[A-Za-z]{2,3}(-[A-Za-z0-9]{2,8})*");

    private final Guide guide;
    private final Style style;
    private final Medium medium;
    private final Markup markup = new Markup();
    private final Tables tables = new Tables(markup);
    private final StepSetter steps;
    private final Boxes boxes;

    private Page(
            Guide guide, Style style, Medium medium, Function<EncodedPicture, String> address) {
        this.guide = guide;
        this.style = style;
        this.medium = medium;
        this.boxes = new Boxes(markup, medium);
        this.steps = new StepSetter(markup, medium, boxes, address);
    }

    /** One file that holds everything in itself. */
    static String forBrowser(Guide guide, Style style) {
        return new Page(guide, style, Medium.BROWSER, EncodedPicture::dataUri).set();
    }

    static PaperPage forPaper(Guide guide, Style style) {
        PaperPhotos photos = new PaperPhotos();
        String html = new Page(guide, style, Medium.PAPER, photos::address).set();
        return new PaperPage(html, photos.all());
    }

    private String set() {
        String language = guide.title().language();
        boolean known = LANGUAGE.matcher(language).matches();
        TitleLines title = guide.title();
        String name = title.title().isBlank() ? "Service procedure" : title.title();
        Head.set(markup, known ? language : "en", name, style, policy());
        markup.open("body", "data-print", guide.imprint().fingerprint().substring(0, 16));
        title(title);
        markup.open("main");
        steps.hazards(guide.cautions());
        conditions();
        contents();
        need();
        fasteners();
        for (int place = 0; place < guide.phases().size(); place++) {
            phase(guide.phases().get(place), place + 1);
        }
        closing(guide.closing());
        times();
        markup.close();
        imprint(guide.imprint());
        if (medium == Medium.BROWSER) {
            markup.own("\n" + LinkedData.element(guide, name, known ? language : "en"));
            markup.own(Script.element());
        }
        return markup.close().close().own("\n").toString();
    }

    private String policy() {
        return switch (medium) {
            case BROWSER -> style.policy() + "; script-src " + Script.source();
            case PAPER -> style.policy();
        };
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
        boxes.count();
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

    private void contents() {
        if (guide.phases().isEmpty()) {
            return;
        }
        markup.open("nav", "class", "contents", "aria-labelledby", "contents");
        markup.element("h2", "Contents", "id", "contents");
        markup.open("ol");
        for (int place = 0; place < guide.phases().size(); place++) {
            contents(guide.phases().get(place), place + 1);
        }
        markup.close().close();
    }

    private void contents(PhaseBlock phase, int place) {
        markup.open("li").open("a", "href", "#phase-" + place).text(phase.title() + " ");
        markup.element("span", phase.range(), "class", "soft").close();
        markup.open("ol");
        for (StepBlock step : phase.steps()) {
            String number = Integer.toString(step.number());
            markup.open("li").open("a", "href", "#step-" + number);
            markup.element("span", number, "class", "place").text(" ");
            markup.text(StepSetter.title(step)).close().close();
        }
        markup.close().close();
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

    private void phase(PhaseBlock phase, int place) {
        String kind = "phase " + phase.phase().word();
        markup.open("section", "class", kind, "id", "phase-" + place);
        heading(phase.title(), phase.range());
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
        closing.steps().forEach(boxes::line);
        boxes.line(closing.totals());
        markup.close().close();
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
        markup.open("section", "class", kind);
        heading(heading, beside);
    }

    private void heading(String heading, String beside) {
        markup.open("h2").text(heading);
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
