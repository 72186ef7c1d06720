package counterstep.shorthand;

import counterstep.model.Drive;
import counterstep.model.DriveKind;
import counterstep.model.ScrewThread;
import counterstep.model.ThreadKind;
import counterstep.model.Torque;
import counterstep.words.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes the figures out of the words of one entry; what is left is a name. */
final class SizeReader {
    private static final Pattern NUMBER = Pattern.compile("[0-9]{1,4}(?:[.,][0-9]{1,4})?");
    private static final Pattern THREAD =
            Pattern.compile("(m|k|st)([0-9]{1,3}(?:[.,][0-9]{1,3})?)");
    private static final Pattern DRIVE_SIZE = Pattern.compile("[0-9]{1,3}(?:\\.[0-9]{1,2})?");
    private static final Map<String, Double> TORQUE_UNITS =
            Map.of("nm", 1.0, "n·m", 1.0, "cnm", 0.01, "cn·m", 0.01);
    private static final int MOST = 999;

    private final Vocabulary vocabulary;
    private final List<String> words;
    private final boolean fasteners;
    private final List<String> left = new ArrayList<>();
    private OptionalInt count = OptionalInt.empty();
    private Optional<Drive> drive = Optional.empty();
    private Optional<ScrewThread> thread = Optional.empty();
    private OptionalDouble length = OptionalDouble.empty();
    private OptionalInt seconds = OptionalInt.empty();
    private Optional<Torque> torque = Optional.empty();
    private boolean afterSize;

    /**
     * @param fasteners whether the words can speak of fasteners, whose sizes are then read
     */
    SizeReader(Vocabulary vocabulary, List<String> words, boolean fasteners) {
        this.vocabulary = vocabulary;
        this.words = words;
        this.fasteners = fasteners;
        for (int at = 0; at < words.size(); ) {
            int taken = take(at);
            if (taken == 0) {
                left.add(words.get(at));
            }
            afterSize = taken > 0 && (drive.isPresent() || thread.isPresent());
            at += Math.max(1, taken);
        }
    }

    Sizes sizes() {
        return new Sizes(count, drive, thread, length, seconds, torque);
    }

    /** The words that are no figures, in order. */
    List<String> left() {
        return left;
    }

    private String word(int at) {
        return at < words.size() ? words.get(at).toLowerCase(Locale.ROOT) : "";
    }

    private boolean number(int at) {
        return NUMBER.matcher(word(at)).matches();
    }

    private double value(int at) {
        return Double.parseDouble(word(at).replace(',', '.'));
    }

    private static boolean times(String word) {
        return word.equals("x") || word.equals("×");
    }

    /** How many words from a place are figures; 0 where the word is part of a name. */
    private int take(int at) {
        int taken = waiting(at);
        taken = taken > 0 || !fasteners ? taken : torqueAt(at);
        taken = taken > 0 || !fasteners ? taken : driveAt(at);
        taken = taken > 0 || !fasteners ? taken : threadAt(at);
        taken = taken > 0 || !fasteners ? taken : lengthAt(at);
        return taken > 0 ? taken : countAt(at);
    }

    private int waiting(int at) {
        OptionalInt unit = vocabulary.tradeWords().seconds(word(at + 1));
        if (seconds.isPresent() || fasteners || unit.isEmpty() || !number(at)) {
            return 0;
        }
        seconds = OptionalInt.of((int) Math.round(value(at) * unit.getAsInt()));
        return 2;
    }

    private int torqueAt(int at) {
        Double unit = TORQUE_UNITS.get(word(at + 1));
        if (torque.isPresent() || unit == null || !number(at) || value(at) <= 0) {
            return 0;
        }
        double newtonMetres = Math.round(value(at) * unit * 10_000) / 10_000.0;
        torque = newtonMetres > 0 ? Optional.of(new Torque(newtonMetres)) : torque;
        return torque.isPresent() ? 2 : 0;
    }

    private int countAt(int at) {
        OptionalInt said = vocabulary.numbers().value(word(at));
        boolean named = said.isPresent() && !Character.isDigit(word(at).charAt(0));
        boolean first = left.isEmpty() && !afterSize;
        if (count.isPresent() || said.isEmpty() || !first && !times(word(at + 1))) {
            return 0;
        }
        if (said.getAsInt() < 1 || said.getAsInt() > MOST || named && !left.isEmpty()) {
            return 0;
        }
        count = said;
        return times(word(at + 1)) ? 2 : 1;
    }

    private int driveAt(int at) {
        if (drive.isPresent()) {
            return 0;
        }
        for (DriveKind kind : DriveKind.values()) {
            int taken = driveAt(at, kind, kind.prefix().strip().toLowerCase(Locale.ROOT));
            if (taken > 0) {
                return taken;
            }
        }
        return 0;
    }

    private int driveAt(int at, DriveKind kind, String prefix) {
        int prefixWords = prefix.split(" ").length;
        String start = prefixWords == 1 ? word(at) : word(at) + " " + word(at + 1);
        int last = at + prefixWords - 1;
        if (start.equals(prefix) && DRIVE_SIZE.matcher(word(last + 1)).matches()) {
            return drive(kind, word(last + 1), last + 2, at);
        }
        if (start.equals(prefix) && prefix.contains("-")) {
            return drive(kind, "", last + 1, at);
        }
        boolean joined = start.startsWith(prefix) && kind.prefix().length() <= 3;
        String size = joined ? start.substring(prefix.length()) : "";
        return DRIVE_SIZE.matcher(size).matches() ? drive(kind, size, last + 1, at) : 0;
    }

    private int drive(DriveKind kind, String size, int next, int from) {
        boolean pin =
                kind == DriveKind.HEXALOBULAR
                        && word(next).equals("with")
                        && word(next + 1).equals("pin");
        drive = Optional.of(new Drive(pin ? DriveKind.HEXALOBULAR_PIN : kind, size));
        return next - from + (pin ? 2 : 0);
    }

    /** 'M1.6', 'M1.6 x 4' with its length, 'M8 x 1 x 20' with pitch and length. */
    private int threadAt(int at) {
        Matcher matcher = THREAD.matcher(word(at));
        if (thread.isPresent() || !matcher.matches()) {
            return 0;
        }
        double diameter = Double.parseDouble(matcher.group(2).replace(',', '.'));
        boolean one = times(word(at + 1)) && number(at + 2) && value(at + 2) > 0;
        boolean two = one && times(word(at + 3)) && number(at + 4) && value(at + 4) > 0;
        if (diameter <= 0) {
            return 0;
        }
        OptionalDouble pitch = two ? OptionalDouble.of(value(at + 2)) : OptionalDouble.empty();
        thread = Optional.of(new ScrewThread(kind(matcher.group(1)), diameter, pitch));
        if (one) {
            length = OptionalDouble.of(value(two ? at + 4 : at + 2));
        }
        int taken = two ? 5 : one ? 3 : 1;
        return taken + (one && word(at + taken).equals("mm") ? 1 : 0);
    }

    private static ThreadKind kind(String prefix) {
        for (ThreadKind kind : ThreadKind.values()) {
            if (kind.prefix().equalsIgnoreCase(prefix)) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no thread: " + prefix);
    }

    private int lengthAt(int at) {
        boolean unit = word(at + 1).equals("mm");
        boolean last = unit || afterSize && !times(word(at + 1));
        if (length.isPresent() || !number(at) || !last || value(at) <= 0) {
            return 0;
        }
        length = OptionalDouble.of(value(at));
        return unit ? 2 : 1;
    }
}
