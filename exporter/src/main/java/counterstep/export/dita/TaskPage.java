package counterstep.export.dita;

import counterstep.export.Print;
import counterstep.export.guide.FastenerRow;
import counterstep.export.guide.Guide;
import counterstep.export.guide.Sentences;
import counterstep.export.guide.StepNumbers;
import counterstep.export.guide.TitleLines;
import counterstep.export.markdown.PhotoFiles;
import counterstep.model.Device;
import counterstep.model.Drive;
import counterstep.model.Revision;
import counterstep.model.TitleBlock;
import java.util.List;

/** Sets a guide as one task: head, requirements, fasteners, steps, closing requirements. */
final class TaskPage {
    /** The grammar that readers of 1.3 know by another name and take as well. */
    private static final String DOCTYPE =
            "<!DOCTYPE task PUBLIC \"-//OASIS//DTD DITA 1.2 Machinery Task//EN\""
                    + " \"machineryTask.dtd\">";

    private static final List<String> FASTENERS =
            List.of(
                    "Fasteners",
                    "Drive",
                    "Size, head",
                    "Goes into",
                    "Torque, order",
                    "Use, tray",
                    "Off in",
                    "Back in");

    private final Print print;
    private final Guide guide;
    private final Xml xml = new Xml(DOCTYPE);

    private TaskPage(Print print, Guide guide) {
        this.print = print;
        this.guide = guide;
    }

    static String of(Print print, Guide guide, PhotoFiles photos) {
        return new TaskPage(print, guide).set(photos);
    }

    private String set(PhotoFiles photos) {
        TitleBlock block = print.procedure().titleBlock();
        String title = block.title().isBlank() ? "Service procedure" : block.title();
        xml.open("task", "id", print.procedure().id(), "xml:lang", language(block.language()));
        xml.element("title", title);
        xml.stated("shortdesc", block.summary());
        prolog(block.device());
        Requirements requirements = new Requirements(xml, print, guide);
        xml.open("taskbody");
        requirements.before();
        context(guide.title());
        fasteners();
        new StepSetter(xml, print, photos).set(guide.phases());
        requirements.after();
        return xml.close().close().toString();
    }

    private static String language(String tag) {
        return tag.matches("[A-Za-z]{1,8}(-[A-Za-z0-9]{1,8})*") ? tag : "und";
    }

    private void prolog(Device device) {
        List<Revision> revisions = print.procedure().revisions();
        xml.open("prolog");
        revisions.stream()
                .map(Revision::author)
                .distinct()
                .forEach(author -> xml.stated("author", author));
        List<String> dates =
                revisions.stream().map(Revision::date).filter(date -> !date.isBlank()).toList();
        if (!dates.isEmpty()) {
            xml.open("critdates").empty("created", "date", dates.get(0));
            dates.stream().skip(1).forEach(date -> xml.empty("revised", "modified", date));
            xml.close();
        }
        String name = (device.maker() + " " + device.model()).strip();
        if (!name.isEmpty()) {
            xml.open("metadata").open("prodinfo").element("prodname", name);
            xml.open("vrmlist").empty("vrm", "version", device.designation());
            xml.close().close().close();
        }
        xml.empty("data", "name", "fingerprint", "value", print.fingerprint());
        xml.close();
    }

    private void context(TitleLines title) {
        xml.open("context");
        if (!title.unfinished().isEmpty()) {
            xml.element("note", title.unfinished(), "type", "important");
        }
        xml.element("p", Sentences.listed(title.facts()));
        xml.element("p", title.figures());
        guide.notes().forEach(note -> xml.element("p", note));
        xml.element("p", guide.imprint().tried() + ".");
        xml.close();
    }

    private void fasteners() {
        if (guide.fasteners().isEmpty()) {
            return;
        }
        xml.open("section").element("title", "Fasteners").open("simpletable").open("sthead");
        FASTENERS.forEach(column -> xml.element("stentry", column));
        xml.close();
        for (FastenerRow row : guide.fasteners()) {
            xml.open("strow");
            cells(row).forEach(cell -> xml.element("stentry", cell));
            xml.close();
        }
        xml.close().close();
    }

    private static List<String> cells(FastenerRow row) {
        return List.of(
                row.count() + " × " + row.name(),
                row.drive().map(Drive::label).orElse(""),
                Sentences.listed(List.of(row.size(), row.head())),
                row.into(),
                Sentences.listed(List.of(row.torque(), row.order())),
                Sentences.listed(
                        List.of(row.use(), row.tray().isBlank() ? "" : "tray " + row.tray())),
                StepNumbers.text(row.off()),
                StepNumbers.text(row.back()));
    }
}
