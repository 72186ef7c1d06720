package counterstep.testing;

import java.util.HashMap;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/**
 * Counts what is out, open or loose, and off, action by action, straight from a document's JSON. It
 * shares no code with the ledger and knows procedures in which nothing fails.
 */
public final class Recount {
    private final Map<String, String> kinds = new HashMap<>();
    private final Map<String, Integer> sizes = new HashMap<>();
    private final Map<String, Integer> loose = new HashMap<>();
    private int out;
    private int openOrLoose;
    private int partsOff;

    /** Nothing is out yet. */
    public Recount(JsonNode document) {
        for (JsonNode item : document.path("items")) {
            kinds.put(item.path("id").stringValue(), item.path("kind").stringValue());
            sizes.put(item.path("id").stringValue(), item.path("quantity").asInt(1));
        }
    }

    /** Does what a step says. */
    public void add(JsonNode step) {
        for (JsonNode action : step.path("actions")) {
            if (action.has("item")) {
                add(action, action.path("item").stringValue());
            }
        }
    }

    private void add(JsonNode action, String item) {
        int count = action.path("count").asInt(sizes.get(item));
        boolean seatedOnly = action.path("fingerTight").asBoolean(false);
        String verb = action.path("verb").stringValue();
        switch (kinds.get(item)) {
            case "part" -> part(verb, count);
            case "fastener set" -> fasteners(verb, item, count, seatedOnly);
            default -> other(verb, count);
        }
    }

    private void part(String verb, int count) {
        switch (verb) {
            case "remove" -> partsOff += count;
            case "reinstall", "fit new" -> partsOff -= count;
            case "move aside" -> openOrLoose += count;
            case "return" -> openOrLoose -= count;
            case "take away" -> {
                openOrLoose -= count;
                partsOff += count;
            }
            case "bring in" -> {
                openOrLoose += count;
                partsOff -= count;
            }
            default -> {}
        }
    }

    private void fasteners(String verb, String item, int count, boolean seatedOnly) {
        int before = loose.getOrDefault(item, 0);
        int after = before;
        switch (verb) {
            case "loosen" -> after += count;
            case "tighten" -> after -= count;
            case "remove" -> {
                out += count;
                after -= Math.min(before, count);
            }
            case "reinstall", "fit new" -> {
                out -= count;
                after += seatedOnly ? count : 0;
            }
            default -> {}
        }
        loose.put(item, after);
        openOrLoose += after - before;
    }

    private void other(String verb, int count) {
        switch (verb) {
            case "disconnect", "unclip", "cut", "release" -> openOrLoose += count;
            case "reconnect", "clip", "fit new", "press", "rejoin" -> openOrLoose -= count;
            default -> {}
        }
    }

    /** The totals so far, in the words of the ledger's. */
    public String totals() {
        return "Totals[out=%d, openOrLoose=%d, partsOff=%d]".formatted(out, openOrLoose, partsOff);
    }
}
