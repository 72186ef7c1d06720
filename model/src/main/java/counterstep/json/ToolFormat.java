package counterstep.json;

import counterstep.model.Drive;
import counterstep.model.Supply;
import counterstep.model.SupplyId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import counterstep.model.ToolKind;
import java.util.Map;
import java.util.Optional;

/** Tools, the drives they turn, and supplies in a file. */
final class ToolFormat {
    private ToolFormat() {}

    static Tool readTool(Value value) {
        Fields fields = value.fields();
        return new Tool(
                Known.own(fields, ToolId::new),
                fields.need("name").text(),
                fields.word("kind", Vocabulary.TOOL, ToolKind.OTHER),
                readDrive(fields),
                fields.flag("inHand", true),
                fields.text("note"),
                fields.extras());
    }

    static Map<String, Object> writeTool(Tool tool) {
        Out out = new Out().put("id", tool.id().value()).put("name", tool.name());
        out.word("kind", tool.kind(), ToolKind.OTHER, ToolKind::word);
        tool.drive().ifPresent(drive -> out.plain("drive", writeDrive(drive), tool.extras()));
        return out.flag("inHand", tool.inHand(), true)
                .text("note", tool.note())
                .with(tool.extras(), "drive");
    }

    static Optional<Drive> readDrive(Fields owner) {
        return owner.plain(
                "drive",
                fields ->
                        new Drive(fields.need("kind").word(Vocabulary.DRIVE), fields.text("size")));
    }

    static Map<String, Object> writeDrive(Drive drive) {
        return new Out().put("kind", drive.kind().word()).text("size", drive.size()).fields();
    }

    static Supply readSupply(Value value) {
        Fields fields = value.fields();
        return new Supply(
                Known.own(fields, SupplyId::new),
                fields.need("name").text(),
                fields.text("amount"),
                fields.text("note"),
                fields.extras());
    }

    static Map<String, Object> writeSupply(Supply supply) {
        return new Out()
                .put("id", supply.id().value())
                .put("name", supply.name())
                .text("amount", supply.amount())
                .text("note", supply.note())
                .with(supply.extras());
    }
}
