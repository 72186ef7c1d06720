package counterstep.shorthand;

import counterstep.model.Action;
import counterstep.model.Attendance;
import counterstep.model.Drive;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.KindWord;
import counterstep.model.Numbers;
import counterstep.model.Tool;
import counterstep.model.Torque;
import counterstep.model.Wait;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Says what an entry will do: 'remove 2 × T5 4 mm cable clamp screws (new item)'. */
final class Explanation {
    private Explanation() {}

    static String of(Understood one) {
        Action action = one.action();
        List<String> words = new ArrayList<>(List.of(action.verb().word()));
        one.item().ifPresent(item -> words.addAll(things(item, one)));
        if (action.fingerTight()) {
            words.add("finger-tight");
        }
        action.waiting().map(Wait::seconds).ifPresent(time -> words.add(time(time)));
        action.waiting()
                .filter(wait -> wait.attendance() == Attendance.WATCHED)
                .ifPresent(wait -> words.add(wait.attendance().word()));
        action.torque().map(Torque::label).ifPresent(words::add);
        one.tool().map(tool -> "with " + tool.name()).ifPresent(words::add);
        words.add(action.remark());
        words.add(action.reading());
        words.removeIf(String::isEmpty);
        return String.join(" ", words) + mark(one);
    }

    private static List<String> things(Item item, Understood one) {
        int count = one.action().count();
        boolean sized = item instanceof FastenerSet;
        List<String> words = new ArrayList<>();
        if (count > 1 || sized) {
            words.add(Integer.toString(count));
        }
        if (!one.newItem() && count != item.quantity()) {
            words.add("of " + item.quantity());
        }
        if (sized && one.newItem()) {
            words.add(sizes((FastenerSet) item));
        }
        words.add(item.name());
        return words;
    }

    private static String sizes(FastenerSet set) {
        String drive = set.drive().map(Drive::label).orElse("");
        String told = set.name().startsWith(drive) ? "" : drive; // 'T5 screws' say it already
        String sizes = (told + " " + set.size()).strip();
        return sizes.isEmpty() ? "×" : "× " + sizes;
    }

    private static String time(int seconds) {
        return Numbers.minutesAndSeconds(seconds) + " min:s";
    }

    private static String mark(Understood one) {
        Optional<Item> item = one.item();
        if (item.isEmpty()) {
            return "";
        }
        String which =
                one.newItem()
                        ? "new item: " + item.get().match(KindWord.INSTANCE)
                        : item.get().id().toString();
        return " (" + which + (one.facts().isEmpty() ? "" : "; " + facts(one.facts())) + ")";
    }

    /** What an entry without a verb says of an item. */
    static String registered(Item item, boolean fresh, List<String> facts) {
        String which = fresh ? "new item: " + item.match(KindWord.INSTANCE) : "" + item.id();
        return item.name() + " (" + which + "; " + facts(facts) + ")";
    }

    /** How a tool reads that a step or an action gets. */
    static String tool(Tool tool, boolean fresh) {
        return "with " + tool.name() + (fresh ? " (new tool: " + tool.kind().word() + ")" : "");
    }

    private static String facts(List<String> facts) {
        return String.join("; ", facts);
    }
}
