package counterstep.json;

import counterstep.model.Crew;
import counterstep.model.Device;
import counterstep.model.Extras;
import counterstep.model.TitleBlock;
import java.util.Map;

/** The head of the document, which stands flat in the document's own object. */
final class TitleFormat {
    private static final String LANGUAGE = "en";
    private static final Device NO_DEVICE = new Device("", "", "");

    private TitleFormat() {}

    static TitleBlock read(Fields document, Known known) {
        return new TitleBlock(
                document.text("title"),
                document.plain("device", TitleFormat::readDevice).orElse(NO_DEVICE),
                document.text("summary"),
                document.text("language", LANGUAGE),
                document.text("skill"),
                document.list("conditions", Value::text),
                document.list("cautions", hazard -> HazardFormat.read(hazard, known)));
    }

    static void write(Out out, TitleBlock block, Extras documentExtras) {
        out.put("title", block.title())
                .plain("device", writeDevice(block.device()), documentExtras)
                .text("summary", block.summary())
                .text("language", block.language(), LANGUAGE)
                .text("skill", block.skill())
                .list("conditions", block.conditions(), condition -> condition)
                .list("cautions", block.cautions(), HazardFormat::write);
    }

    private static Device readDevice(Fields fields) {
        return new Device(fields.text("maker"), fields.text("model"), fields.text("designation"));
    }

    private static Map<String, Object> writeDevice(Device device) {
        return new Out()
                .text("maker", device.maker())
                .text("model", device.model())
                .text("designation", device.designation())
                .fields();
    }

    static Crew readCrew(Fields document) {
        return document.plain(
                        "crew",
                        fields ->
                                new Crew(
                                        fields.whole("technicians", 1, "a crew", 1),
                                        fields.flag("secondHolds", false)))
                .orElse(Crew.ONE);
    }

    static Map<String, Object> writeCrew(Crew crew) {
        return new Out()
                .whole("technicians", crew.technicians(), Crew.ONE.technicians())
                .flag("secondHolds", crew.secondHolds(), Crew.ONE.secondHolds())
                .fields();
    }
}
