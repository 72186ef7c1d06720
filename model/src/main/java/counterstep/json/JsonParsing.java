package counterstep.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import counterstep.input.BadInput;
import counterstep.input.Limits;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Turns text into a tree that remembers lines, one token after the other, so that hostile input is
 * refused before it takes much memory or stack.
 */
final class JsonParsing {
    private static final JsonFactory FACTORY =
            JsonFactory.builder()
                    .streamReadConstraints(
                            StreamReadConstraints.builder()
                                    .maxStringLength(Limits.TEXT_LENGTH)
                                    .maxNameLength(Limits.NAME_LENGTH)
                                    .maxNumberLength(Limits.NUMBER_LENGTH)
                                    .build())
                    .build();

    private final JsonParser parser;
    private final long length;
    private int values;

    private JsonParsing(JsonParser parser, long length) {
        this.parser = parser;
        this.length = length;
    }

    /** The value that UTF-8 bytes say; a byte order mark at the start is passed over. */
    static Json parse(byte[] bytes) {
        if (bytes.length > Limits.FILE_BYTES) {
            throw new Place(1, "")
                    .refused(
                            "more than " + (Limits.FILE_BYTES >> 20) + " MiB",
                            "a procedure is far shorter");
        }
        int start = Utf8.start(bytes);
        long length = Utf8.length(bytes, start);
        return parse(
                new InputStreamReader(
                        new ByteArrayInputStream(bytes, start, bytes.length - start),
                        StandardCharsets.UTF_8),
                length);
    }

    /** The value that JSON text says. */
    static Json parse(String text) {
        return parse(new StringReader(text), text.length());
    }

    private static Json parse(Reader reader, long length) {
        try (JsonParser parser = FACTORY.createParser(reader)) {
            return new JsonParsing(parser, length).document();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private Json document() throws IOException {
        try {
            if (parser.nextToken() == null) {
                throw here().refused("the file is empty", "");
            }
            Json value = value(0);
            if (parser.nextToken() != null) {
                throw here().refused("more text after the end of the document", "take it out");
            }
            return value;
        } catch (StreamConstraintsException tooLong) {
            throw here().refused("a text, a name or a number without end", "shorten it");
        } catch (JsonProcessingException broken) {
            throw refused(broken);
        }
    }

    private BadInput refused(JsonProcessingException broken) {
        boolean atTheEnd =
                broken instanceof JsonEOFException
                        || broken.getLocation().getCharOffset() >= length;
        return atTheEnd
                ? here().refused(
                                "the file ends in the middle",
                                "it was cut off; take a whole copy of it")
                : here().refused(
                                "not JSON at column " + broken.getLocation().getColumnNr(),
                                "mend it, or take a copy that was saved whole");
    }

    private Json value(int depth) throws IOException {
        if (++values > Limits.VALUES) {
            throw here().refused("more than a million values", "a procedure is far shorter");
        }
        int line = parser.currentTokenLocation().getLineNr();
        JsonToken token = parser.currentToken();
        return switch (token) {
            case START_OBJECT -> new Json.JsonObject(line, fields(depth + 1));
            case START_ARRAY -> new Json.JsonList(line, elements(depth + 1));
            case VALUE_STRING -> new Json.JsonString(line, parser.getText());
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT ->
                    new Json.JsonNumber(line, parser.getText());
            case VALUE_TRUE, VALUE_FALSE, VALUE_NULL -> new Json.JsonWord(line, token.asString());
            default -> throw new IllegalStateException("no value begins with " + token);
        };
    }

    private Map<String, Json> fields(int depth) throws IOException {
        requireShallow(depth);
        Map<String, Json> fields = new LinkedHashMap<>();
        while (parser.nextToken() != JsonToken.END_OBJECT) {
            String name = parser.currentName();
            if (fields.containsKey(name)) {
                throw here().refused(
                                "the field is given twice, first in line "
                                        + fields.get(name).line(),
                                "take one of them out");
            }
            parser.nextToken();
            fields.put(name, value(depth));
        }
        return fields;
    }

    private List<Json> elements(int depth) throws IOException {
        requireShallow(depth);
        List<Json> elements = new ArrayList<>();
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            elements.add(value(depth));
        }
        return elements;
    }

    private void requireShallow(int depth) {
        if (depth > Limits.DEPTH) {
            throw here().refused(
                            "lists or objects within each other more than "
                                    + Limits.DEPTH
                                    + " deep",
                            "a procedure needs fewer than ten");
        }
    }

    private Place here() {
        return new Place(parser.currentLocation().getLineNr(), path(parser.getParsingContext()));
    }

    private static String path(JsonStreamContext context) {
        if (context.inRoot()) {
            return "";
        }
        String outer = path(context.getParent());
        if (context.inArray()) {
            return context.hasCurrentIndex()
                    ? Place.element(outer, context.getCurrentIndex())
                    : outer;
        }
        return context.hasCurrentName() ? Place.field(outer, context.getCurrentName()) : outer;
    }
}
