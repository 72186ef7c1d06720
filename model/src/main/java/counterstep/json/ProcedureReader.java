package counterstep.json;

import counterstep.input.BadInput;
import counterstep.model.Item;
import counterstep.model.Procedure;
import counterstep.model.ProcedureDraft;
import java.util.List;

/** Reads a procedure from the bytes of its file. */
public final class ProcedureReader {
    private static final int HIGHEST_NUMBER = 999_999_999;

    private ProcedureReader() {}

    /**
     * The procedure that UTF-8 JSON text describes.
     *
     * @throws BadInput with the line, the field and the cause, if it describes none
     */
    public static Procedure read(byte[] bytes) {
        Json.JsonObject document = Versions.ALL.upgraded(JsonParsing.parse(bytes));
        return new Value(document, new Place(document.line(), "")).made(ProcedureReader::procedure);
    }

    private static Procedure procedure(Value document) {
        Fields fields = document.fields();
        fields.need("format");
        fields.need("version");
        Known known = Known.in(fields);
        List<Item> items = fields.list("items", new ItemReader(known)::read);
        known.counted(items);
        String id = Known.document(fields);
        return new ProcedureDraft(id, TitleFormat.read(fields, known))
                .lastNumber(lastNumber(fields))
                .revisions(fields.list("revisions", ReviewFormat::readRevision))
                .crew(TitleFormat.readCrew(fields))
                .tools(fields.list("tools", ToolFormat::readTool))
                .supplies(fields.list("supplies", ToolFormat::readSupply))
                .items(items)
                .photos(fields.list("photos", PhotoFormat::readPhoto))
                .steps(fields.list("steps", step -> StepFormat.read(step, known)))
                .links(fields.list("links", link -> OrderFormat.readLink(link, known)))
                .groups(fields.list("groups", group -> OrderFormat.readGroup(group, known)))
                .orderRules(fields.list("orderRules", rule -> rule.word(Vocabulary.ORDER_RULE)))
                .settings(fields.list("settings", ReviewFormat::readSetting))
                .comments(
                        fields.list(
                                "comments", comment -> ReviewFormat.readComment(comment, known)))
                .waivers(fields.list("waivers", ReviewFormat::readWaiver))
                .extras(fields.extras())
                .procedure();
    }

    private static int lastNumber(Fields fields) {
        int number = fields.whole("lastNumber", 0, "a last number", 0);
        if (number > HIGHEST_NUMBER) {
            throw fields.need("lastNumber")
                    .refused("a last number of " + number, "write " + HIGHEST_NUMBER + " or less");
        }
        return number;
    }
}
