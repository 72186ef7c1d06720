package counterstep.shorthand;

import counterstep.model.Item;
import java.util.Optional;

/**
 * One way to go on with a line.
 *
 * @param line the whole line as it then reads
 * @param offered what is offered: a name, a verb, a drive
 * @param explanation what that is
 * @param item the item that it is, if it is one
 */
public record Completion(String line, String offered, String explanation, Optional<Item> item) {}
