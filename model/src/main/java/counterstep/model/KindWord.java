package counterstep.model;

/** The word for each kind of item, in files and on screen. */
public final class KindWord implements Item.Cases<String> {
    /** The one of it. */
    public static final KindWord INSTANCE = new KindWord();

    private KindWord() {}

    @Override
    public String part(Part part) {
        return "part";
    }

    @Override
    public String fasteners(FastenerSet set) {
        return "fastener set";
    }

    @Override
    public String clips(ClipSet clips) {
        return "clip set";
    }

    @Override
    public String tie(Tie tie) {
        return "tie";
    }

    @Override
    public String connector(Connector connector) {
        return "connector";
    }

    @Override
    public String joint(Joint joint) {
        return "joint";
    }

    @Override
    public String setting(Setting setting) {
        return "setting";
    }

    @Override
    public String source(EnergySource source) {
        return "energy source";
    }
}
