package counterstep.export.report;

import counterstep.export.html.Head;
import counterstep.export.html.Markup;
import counterstep.export.html.Rules;
import counterstep.export.html.Style;

/** Sets a report as one HTML page. */
final class ReportPage {
    private static final String SHEET = Rules.beside(ReportPage.class, "report.css");

    private final Report report;
    private final Markup markup = new Markup();
    private final EntrySetter entries = new EntrySetter(markup);

    private ReportPage(Report report) {
        this.report = report;
    }

    static String of(Report report) {
        return new ReportPage(report).set();
    }

    private String set() {
        Style style = Style.ofGuide(report.imprint(), SHEET);
        Head.set(markup, "en", "Review report: " + report.title(), style);
        markup.open("body");
        title();
        markup.open("main");
        findings();
        accepted();
        comments();
        checks();
        signOff();
        return markup.close().close().close().own("\n").toString();
    }

    private void title() {
        markup.open("header").open("p", "class", "facts");
        report.facts().forEach(fact -> markup.element("span", fact).text(" "));
        markup.close().element("h1", report.title());
        markup.element("p", report.verdict(), "class", "unfinished");
        markup.open("table", "class", "about").open("tbody");
        report.about().forEach(this::about);
        markup.closeTable();
        markup.openTable("counts", "Severity", "count", "accepted");
        report.counts().forEach(this::count);
        markup.closeTable().close();
    }

    private void about(Report.Fact fact) {
        markup.open("tr").element("th", fact.name(), "scope", "row");
        String kind = fact.name().equals("Fingerprint") ? "fingerprint" : "plain";
        markup.element("td", fact.value(), "class", kind).close();
    }

    private void count(Report.Count count) {
        markup.open("tr").element("th", count.severity(), "scope", "row");
        markup.element("td", Long.toString(count.open()));
        markup.element("td", Long.toString(count.accepted())).close();
    }

    private void findings() {
        section("Findings", "tick the box when one is settled");
        if (report.open().isEmpty()) {
            markup.element("p", "Nothing that counts was found.");
        } else {
            entries.list(report.open());
        }
        markup.close();
    }

    private void accepted() {
        if (!report.accepted().isEmpty()) {
            section("Accepted findings", "they do not count");
            entries.list(report.accepted());
            markup.close();
        }
    }

    private void comments() {
        if (report.comments().isEmpty()) {
            return;
        }
        section("Comments", "");
        markup.openTable("comments", "On", "Author", "Date", "Comment");
        for (Remark remark : report.comments()) {
            markup.open("tr").element("th", remark.place(), "scope", "row");
            markup.element("td", remark.author());
            markup.element("td", remark.date());
            markup.element("td", remark.text()).close();
        }
        markup.closeTable().close();
    }

    private void checks() {
        section("Checks", "every check, and how many of its findings count");
        markup.openTable("checks", "Check", "Severity", "Found", "Remark");
        for (CheckRow row : report.checks()) {
            markup.open("tr", "class", row.found().equals("0") ? "none" : "some");
            markup.element("th", row.name(), "scope", "row");
            markup.element("td", row.severity()).element("td", row.found());
            markup.element("td", row.remark()).close();
        }
        markup.closeTable().close();
    }

    private void signOff() {
        markup.open("section", "class", "sign-off").element("h2", "Sign-off");
        markup.element("p", SignOff.holdsFor(report.imprint()), "class", "soft");
        markup.openTable("signatures", "Signs as", "Name", "Date", "Signature");
        for (String role : SignOff.ROLES) {
            markup.open("tr").element("th", role, "scope", "row");
            markup.element("td", "").element("td", "").element("td", "").close();
        }
        markup.closeTable().close();
    }

    private void section(String heading, String beside) {
        markup.open("section").open("h2").text(heading);
        if (!beside.isEmpty()) {
            markup.text(" ").element("span", beside, "class", "beside");
        }
        markup.close();
    }
}
