package counterstep.export.report;

import counterstep.check.WitnessWords;
import counterstep.export.html.Markup;
import java.util.List;

/** Sets findings as a numbered list; what is open has a box to tick. */
final class EntrySetter {
    private final Markup markup;

    EntrySetter(Markup markup) {
        this.markup = markup;
    }

    void list(List<Entry> entries) {
        markup.open("ol", "class", "entries", "start", Integer.toString(entries.get(0).number()));
        entries.forEach(this::entry);
        markup.close();
    }

    private void entry(Entry entry) {
        String kind = "entry " + entry.severity();
        markup.open("li", "class", kind, "value", Integer.toString(entry.number()));
        markup.open("div", "class", "count");
        markup.element("span", Integer.toString(entry.number()), "class", "number");
        if (entry.accepted().isEmpty()) {
            markup.element("span", "", "class", "box");
        }
        markup.close();
        markup.open("div", "class", "work").open("h3");
        markup.element("span", entry.severity(), "class", "severity").text(" ");
        markup.text(entry.name()).close();
        markup.element("p", entry.place(), "class", "soft");
        markup.element("p", entry.message(), "class", "message");
        order(entry);
        line("proposed fix", entry.fix());
        line("accepted by", entry.accepted());
        markup.close().close();
    }

    private void order(Entry entry) {
        if (entry.order().isEmpty()) {
            return;
        }
        markup.element("p", "It goes wrong in this order, which the links allow:", "class", "lead");
        markup.open("ol", "class", "order");
        entry.order().forEach(line -> markup.element("li", line));
        markup.close();
        if (entry.bound()) {
            markup.element("p", WitnessWords.BOUND, "class", "soft");
        }
    }

    private void line(String name, String value) {
        if (!value.isEmpty()) {
            markup.open("p", "class", "line").element("strong", name).text(" " + value).close();
        }
    }
}
