package counterstep.excerpt;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Things of one kind that come to others of their kind.
 *
 * @param ids what each is called there: the id of the one it is alike to, or a fresh one
 * @param strangers those that have no like there, as they were
 */
record Meeting<T, I>(Map<I, I> ids, List<T> strangers) {
    /** Where several are alike, that of the same id is meant, else the first. */
    static <T, I> Meeting<T, I> of(
            List<T> coming,
            List<T> there,
            Function<T, I> id,
            BiPredicate<T, T> alike,
            Function<T, I> fresh) {
        Meeting<T, I> meeting = new Meeting<>(new HashMap<>(), new ArrayList<>());
        for (T one : coming) {
            List<T> likes = there.stream().filter(other -> alike.test(one, other)).toList();
            Stream<T> same = likes.stream().filter(like -> id.apply(like).equals(id.apply(one)));
            Optional<I> known = Stream.concat(same, likes.stream()).map(id).findFirst();
            if (known.isEmpty()) {
                meeting.strangers.add(one);
            }
            meeting.ids.put(id.apply(one), known.orElseGet(() -> fresh.apply(one)));
        }
        return meeting;
    }

    I idOf(I before) {
        return ids.get(before);
    }
}
