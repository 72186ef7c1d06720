package counterstep.testing;

import counterstep.model.CommentId;
import counterstep.model.Extras;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Photo;
import counterstep.model.PhotoId;
import counterstep.model.Procedure;
import counterstep.model.Step;
import counterstep.model.StepId;
import counterstep.model.Supply;
import counterstep.model.SupplyId;
import counterstep.model.Tool;
import counterstep.model.ToolId;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;

/**
 * Any document at all, sense or nonsense: every component of every record is filled by what its
 * type allows, found by reflection, so that a component added to the model is in the very next
 * document. What a record refuses is drawn again.
 */
public final class AnyProcedure {
    private static final int TRIES = 10_000;
    private static final List<String> TEXTS =
            List.of(
                    "",
                    "screw",
                    "plate 2.png",
                    "en",
                    "Two\nlines\r\tand \\ \"quotes\"",
                    "<script>alert(1)</script> & [link](javascript:x)",
                    "µ Ω 螺丝 \uD83D\uDD29 e\u0301 \u202Eturned\u2028",
                    "half \uD83D a character",
                    "nul \u0000 and bell \u0007");
    private static final List<String> UNKNOWN =
            List.of(
                    "null",
                    "true",
                    "[]",
                    "{}",
                    "0.10",
                    "1e999999",
                    "\"text \\n\"",
                    "[1,[2,{\"a\":[{\"b\":null}]}],\"x\"]",
                    "{\"deep\":{\"er\":{\"est\":[1,2,3]}},\"name\":\"not ours\"}");
    private static final List<String> UNKNOWN_NAMES =
            List.of("colour", "x.y", "", "n\u00EDl\n", "drive.size", "Note");
    private static final double[] NUMBERS = {0.0, -0.0, 4, -12.5, 0.1, 1e-7, 3e20, 0.09};

    private final Random random;
    private final boolean withExtras;
    private final Map<Class<?>, List<Object>> ids = new LinkedHashMap<>();
    private final Map<Class<?>, List<Object>> given = new LinkedHashMap<>();
    private int lastNumber;

    private AnyProcedure(long seed, boolean withExtras) {
        this.random = new Random(seed);
        this.withExtras = withExtras;
        for (Class<?> kind : List.of(ItemId.class, ToolId.class, SupplyId.class, PhotoId.class)) {
            ids.put(kind, fresh(kind, 1 + random.nextInt(6)));
        }
        ids.put(StepId.class, fresh(StepId.class, 2 + random.nextInt(6)));
        ids.put(CommentId.class, fresh(CommentId.class, 8));
        ids.forEach((kind, list) -> given.put(kind, new ArrayList<>(list)));
    }

    /** The document of a seed, with unknown fields. */
    public static Procedure of(long seed) {
        return new AnyProcedure(seed, true).record(Procedure.class);
    }

    /** The document of a seed, without unknown fields. */
    public static Procedure withoutExtras(long seed) {
        return new AnyProcedure(seed, false).record(Procedure.class);
    }

    private List<Object> fresh(Class<?> kind, int number) {
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            list.add(made(kind, new Object[] {"a" + ++lastNumber}).orElseThrow());
        }
        return list;
    }

    private <T> T record(Class<T> kind) {
        RecordComponent[] components = kind.getRecordComponents();
        Optional<Object> own = ownId(components[0]);
        for (int i = 0; i < TRIES; i++) {
            Object[] values =
                    Arrays.stream(components)
                            .map(component -> value(component.getGenericType()))
                            .toArray();
            own.ifPresent(id -> values[0] = id);
            if (kind == Procedure.class) {
                values[0] = "any";
            }
            Optional<T> made = made(kind, values);
            if (made.isPresent()) {
                return made.get();
            }
        }
        throw new AssertionError("no " + kind + " can be drawn: it needs a rule here");
    }

    /** Records that are named take the next id nobody has; the others only name ids. */
    private Optional<Object> ownId(RecordComponent first) {
        List<Object> left = given.get(first.getType());
        return left == null || !first.getName().equals("id")
                ? Optional.empty()
                : Optional.of(left.remove(0));
    }

    private static <T> Optional<T> made(Class<T> kind, Object[] values) {
        Class<?>[] types =
                Arrays.stream(kind.getRecordComponents())
                        .map(RecordComponent::getType)
                        .toArray(Class<?>[]::new);
        try {
            Constructor<T> constructor = kind.getDeclaredConstructor(types);
            return Optional.of(constructor.newInstance(values));
        } catch (InvocationTargetException refused) {
            if (refused.getCause() instanceof IllegalArgumentException) {
                return Optional.empty();
            }
            throw new AssertionError(refused);
        } catch (ReflectiveOperationException broken) {
            throw new LinkageError(broken.getMessage(), broken);
        }
    }

    private Object value(Type type) {
        if (type instanceof ParameterizedType generic) {
            Type argument = generic.getActualTypeArguments()[0];
            return generic.getRawType() == List.class
                    ? list((Class<?>) argument)
                    : Optional.of(argument).filter(any -> random.nextBoolean()).map(this::value);
        }
        Class<?> kind = (Class<?>) type;
        if (ids.containsKey(kind)) {
            return anyOf(ids.get(kind));
        }
        if (kind == Extras.class) {
            return extras();
        }
        if (kind.isEnum()) {
            return anyOf(List.of(kind.getEnumConstants()));
        }
        if (kind.isSealed()) {
            return record((Class<?>) anyOf(List.of(kind.getPermittedSubclasses())));
        }
        return kind.isRecord() ? record(kind) : single(kind);
    }

    private Object single(Class<?> kind) {
        if (kind == int.class) {
            return random.nextInt(10);
        }
        if (kind == boolean.class) {
            return random.nextBoolean();
        }
        if (kind == double.class) {
            return number();
        }
        if (kind == OptionalInt.class) {
            return random.nextBoolean() ? OptionalInt.of(random.nextInt(10)) : OptionalInt.empty();
        }
        if (kind == OptionalDouble.class) {
            return random.nextBoolean() ? OptionalDouble.of(number()) : OptionalDouble.empty();
        }
        if (kind == String.class) {
            return anyOf(TEXTS);
        }
        throw new AssertionError("no rule for " + kind);
    }

    private double number() {
        return random.nextInt(3) == 0
                ? NUMBERS[random.nextInt(NUMBERS.length)]
                : random.nextDouble();
    }

    /** As many as there are ids for things that are named by others, else up to three. */
    private List<Object> list(Class<?> element) {
        Map<Class<?>, Class<?>> named =
                Map.of(
                        Item.class, ItemId.class,
                        Tool.class, ToolId.class,
                        Supply.class, SupplyId.class,
                        Photo.class, PhotoId.class,
                        Step.class, StepId.class);
        int size =
                named.containsKey(element) ? ids.get(named.get(element)).size() : random.nextInt(4);
        List<Object> list = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            list.add(value(element));
        }
        return list;
    }

    private Extras extras() {
        if (!withExtras || random.nextInt(3) > 0) {
            return Extras.NONE;
        }
        Map<String, String> fields = new LinkedHashMap<>();
        for (int i = random.nextInt(3); i >= 0; i--) {
            fields.put(anyOf(UNKNOWN_NAMES), anyOf(UNKNOWN));
        }
        return new Extras(fields);
    }

    private <T> T anyOf(List<T> choices) {
        return choices.get(random.nextInt(choices.size()));
    }
}
