package counterstep.check.wording;

import counterstep.check.About;
import counterstep.check.Check;
import counterstep.check.Facts;
import counterstep.check.Finding;
import counterstep.model.Item;
import counterstep.model.Severity;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** One name for one thing (ASD-STE100 section 1, second-hand). */
final class NameUsedTwice implements Check {
    private static final Pattern BLANKS = Pattern.compile("\\s+");

    @Override
    public About about() {
        return new About("name-used-twice", Severity.HINT, "Several items have the same name.");
    }

    @Override
    public Stream<Finding> examine(Facts facts) {
        Map<String, List<Item>> byName =
                facts.procedure().items().stream()
                        .filter(item -> !item.name().isBlank())
                        .collect(
                                Collectors.groupingBy(
                                        NameUsedTwice::plain,
                                        LinkedHashMap::new,
                                        Collectors.toList()));
        return byName.values().stream().filter(same -> same.size() > 1).map(this::finding);
    }

    private static String plain(Item item) {
        return BLANKS.matcher(item.name().strip()).replaceAll(" ").toLowerCase(Locale.ROOT);
    }

    private Finding finding(List<Item> same) {
        String message = "%d items are called '%s'.".formatted(same.size(), same.get(0).name());
        return about().finding(message, List.of(), same.stream().map(Item::id).toList());
    }
}
