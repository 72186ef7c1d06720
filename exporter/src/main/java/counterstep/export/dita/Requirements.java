package counterstep.export.dita;

import counterstep.export.Print;
import counterstep.export.guide.Closing;
import counterstep.export.guide.Guide;
import counterstep.export.guide.NeedRow;
import counterstep.export.guide.PhaseTime;
import counterstep.export.guide.Sentences;
import counterstep.export.guide.StepNumbers;
import counterstep.export.guide.ToolRow;
import counterstep.model.Hazard;
import counterstep.model.Step;
import java.util.List;

/**
 * What must hold and lie ready before the work, and what must hold after it. Where nothing is
 * needed the element that says so stands, since an empty list would leave it open.
 */
final class Requirements {
    private final Xml xml;
    private final Print print;
    private final Guide guide;

    Requirements(Xml xml, Print print, Guide guide) {
        this.xml = xml;
        this.print = print;
        this.guide = guide;
    }

    void before() {
        xml.open("prelreqs");
        conditions(guide.conditions());
        people();
        listed("supequip", "nosupeq", "supeqli", "supequi", "Tools", tools());
        listed("supplies", "nosupply", "supplyli", "supply", "Supplies", needs(true));
        listed("spares", "nospares", "sparesli", "spare", "New parts", needs(false));
        safety(print.procedure().titleBlock().cautions());
        xml.close();
    }

    void after() {
        Closing closing = guide.closing();
        xml.open("closereqs").open("reqconds");
        closing.steps().forEach(step -> xml.element("reqcond", Sentences.begun(step)));
        xml.element("reqcond", closing.totals());
        xml.close().close();
    }

    private void conditions(List<String> conditions) {
        List<String> stated = conditions.stream().filter(one -> !one.isBlank()).toList();
        xml.open("reqconds");
        if (stated.isEmpty()) {
            xml.empty("noconds");
        }
        stated.forEach(condition -> xml.element("reqcond", Sentences.closed(condition)));
        xml.close();
    }

    private void people() {
        List<Integer> helped =
                print.procedure().steps().stream()
                        .filter(step -> !step.secondPerson().isBlank())
                        .map(Step::id)
                        .map(print.facts().index()::number)
                        .toList();
        String second =
                helped.isEmpty() ? "" : ", and a second one at " + StepNumbers.withWord(helped);
        PhaseTime all = guide.times().get(guide.times().size() - 1);
        xml.open("reqpers").element("personnel", "1 person" + second);
        String skill = print.procedure().titleBlock().skill();
        xml.stated("perskill", skill.isBlank() ? "" : "Skill: " + skill.strip());
        xml.element("esttime", "Time: " + all.time() + " (minutes and seconds)").close();
    }

    private List<String> tools() {
        return guide.tools().stream().map(Requirements::tool).toList();
    }

    private static String tool(ToolRow row) {
        return row.name() + ": " + StepNumbers.withWord(row.steps());
    }

    private List<String> needs(boolean usedUp) {
        return guide.needs().stream()
                .filter(row -> row.usedUp() == usedUp)
                .map(Requirements::need)
                .toList();
    }

    private static String need(NeedRow row) {
        String number = row.number().isBlank() ? "" : "no. " + row.number();
        String steps = row.steps().isEmpty() ? "" : StepNumbers.withWord(row.steps());
        return Sentences.listed(List.of(row.name(), number, row.amount(), steps));
    }

    private void listed(
            String name, String none, String list, String entry, String title, List<String> all) {
        xml.open(name);
        if (all.isEmpty()) {
            xml.empty(none);
        } else {
            xml.open(list, "spectitle", title);
            all.forEach(one -> xml.element(entry, one));
            xml.close();
        }
        xml.close();
    }

    private void safety(List<Hazard> cautions) {
        xml.open("safety");
        if (cautions.isEmpty()) {
            xml.empty("nosafety");
        } else {
            xml.open("safecond");
            new Notices(xml).set(cautions);
            xml.close();
        }
        xml.close();
    }
}
