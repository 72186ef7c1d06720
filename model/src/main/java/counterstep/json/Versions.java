package counterstep.json;

import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The versions of the format: the first, and one more for each upgrade. An upgrade takes the tree
 * of a document to the next version; the chain of them is kept for good.
 *
 * @param upgrades the first takes version 1 to 2, the next 2 to 3
 */
record Versions(List<UnaryOperator<Json.JsonObject>> upgrades) {
    /** The mark at the head of each file. */
    static final String FORMAT = "counterstep procedure";

    /** The versions so far: the first alone. */
    static final Versions ALL = new Versions(List.of());

    int newest() {
        return upgrades.size() + 1;
    }

    /** The document in the newest version; refuses other files and versions yet to come. */
    Json.JsonObject upgraded(Json tree) {
        if (!(tree instanceof Json.JsonObject document)) {
            throw new Place(tree.line(), "")
                    .refused(tree.what() + " where a procedure is expected", "");
        }
        int version = version(new Fields(document, ""));
        Json.JsonObject upgraded = document;
        for (UnaryOperator<Json.JsonObject> upgrade : upgrades.subList(version - 1, newest() - 1)) {
            upgraded = upgrade.apply(upgraded);
        }
        return upgraded;
    }

    private int version(Fields document) {
        Value format =
                document.find("format")
                        .orElseThrow(
                                () ->
                                        document.place()
                                                .refused(
                                                        "the field 'format' is missing",
                                                        "a procedure says \"format\": \""
                                                                + FORMAT
                                                                + "\""));
        if (!format.text().equals(FORMAT)) {
            throw format.refused(
                    "of the format " + OneLine.quoted(format.text()) + ", no procedure", "");
        }
        Value value = document.need("version");
        int version = value.whole(1, "a version");
        if (version > newest()) {
            throw value.refused(
                    "made by a newer Counterstep (format version %d, this one reads up to %d)"
                            .formatted(version, newest()),
                    "open it with a newer one");
        }
        return version;
    }
}
