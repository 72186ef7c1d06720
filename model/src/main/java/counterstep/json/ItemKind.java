package counterstep.json;

/** The kinds of item by the words that files use. */
enum ItemKind {
    PART("part"),
    FASTENER_SET("fastener set"),
    CLIP_SET("clip set"),
    TIE("tie"),
    CONNECTOR("connector"),
    JOINT("joint"),
    SETTING("setting"),
    ENERGY_SOURCE("energy source");

    static final Words<ItemKind> WORDS = Words.of("kind of item", values(), ItemKind::word);

    private final String word;

    ItemKind(String word) {
        this.word = word;
    }

    String word() {
        return word;
    }
}
