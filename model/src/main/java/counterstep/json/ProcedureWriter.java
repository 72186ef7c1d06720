package counterstep.json;

import counterstep.model.Extras;
import counterstep.model.OrderRule;
import counterstep.model.Procedure;
import java.nio.charset.StandardCharsets;
import java.util.Map;

/** Writes a procedure as the bytes of its file. */
public final class ProcedureWriter {
    private ProcedureWriter() {}

    /**
     * UTF-8 JSON, fields always in the same order, what says nothing left out; reading it gives an
     * equal procedure, and writing that gives the same bytes.
     */
    public static byte[] write(Procedure procedure) {
        return (JsonText.of(fields(procedure)) + "\n").getBytes(StandardCharsets.UTF_8);
    }

    static Map<String, Object> fields(Procedure procedure) {
        Extras extras = procedure.extras();
        Out out =
                new Out()
                        .put("format", Versions.FORMAT)
                        .put("version", Versions.ALL.newest())
                        .put("id", procedure.id())
                        .put("lastNumber", procedure.lastNumber());
        TitleFormat.write(out, procedure.titleBlock(), extras);
        return out.list("revisions", procedure.revisions(), ReviewFormat::writeRevision)
                .plain("crew", TitleFormat.writeCrew(procedure.crew()), extras)
                .list("tools", procedure.tools(), ToolFormat::writeTool)
                .list("supplies", procedure.supplies(), ToolFormat::writeSupply)
                .list("items", procedure.items(), ItemWriter::write)
                .list("photos", procedure.photos(), PhotoFormat::writePhoto)
                .list("steps", procedure.steps(), StepFormat::write)
                .list("links", procedure.links(), OrderFormat::writeLink)
                .list("groups", procedure.groups(), OrderFormat::writeGroup)
                .list("orderRules", procedure.orderRules(), OrderRule::word)
                .list("settings", procedure.settings(), ReviewFormat::writeSetting)
                .list("comments", procedure.comments(), ReviewFormat::writeComment)
                .list("waivers", procedure.waivers(), ReviewFormat::writeWaiver)
                .with(extras, "device", "crew");
    }
}
