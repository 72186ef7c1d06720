package counterstep.check.sequence;

import counterstep.check.Facts;
import counterstep.check.Failed;
import counterstep.ledger.FastenerState;
import counterstep.ledger.ItemState;
import counterstep.ledger.OpenState;
import counterstep.ledger.PartState;
import counterstep.ledger.SettingState;
import counterstep.ledger.SourceState;
import counterstep.ledger.Turn;
import counterstep.model.Action;
import counterstep.model.FastenerSet;
import counterstep.model.Item;
import counterstep.model.ItemId;
import counterstep.model.Verb;

/** Why an action cannot be done, in the words of its item. */
final class WhyNot {
    private final Facts facts;
    private final Failed failed;
    private final Action action;
    private final ItemState state;

    WhyNot(Facts facts, Failed failed) {
        this.facts = facts;
        this.failed = failed;
        this.action = failed.happening().what();
        this.state = failed.happening().before();
    }

    String text() {
        Item item = facts.index().item(failed.item());
        if (failed.failure().impossible()) {
            return item instanceof FastenerSet set && set.captive()
                    ? "captive ones are only loosened and tightened"
                    : "that verb does not fit this kind of item";
        }
        if (!failed.about().equals(failed.item())) {
            return other(failed.about());
        }
        if (state instanceof FastenerState set) {
            return fasteners(set);
        }
        if (state instanceof PartState part) {
            return part(part);
        }
        if (state instanceof OpenState opened) {
            return opened(opened);
        }
        if (state instanceof SettingState setting) {
            return setting(setting);
        }
        return state instanceof SourceState source ? source(source) : joint();
    }

    private String other(ItemId about) {
        String name = facts.phrases().name(about);
        return name
                + (failed.failure().found() <= 0 && failed.failure().needed() > 0
                        ? " is still on its place"
                        : " is not in place yet");
    }

    private String fasteners(FastenerState set) {
        Verb verb = action.verb();
        if (verb == Verb.LOOSEN) {
            return count(set.tight(), "tight");
        }
        if (verb == Verb.TIGHTEN) {
            return count(set.loose(), "loose");
        }
        if (verb == Verb.REMOVE) {
            return count(set.tight() + set.loose(), "in");
        }
        boolean noHole = verb != Verb.DISCARD && set.missing() < action.count();
        return noHole ? count(set.missing(), "out") : count(set.onMat(), "on the mat");
    }

    private String part(PartState part) {
        Verb verb = action.verb();
        if (verb == Verb.MOVE_ASIDE || verb == Verb.REMOVE) {
            return count(part.on(), "on");
        }
        if (verb == Verb.TAKE_AWAY || verb == Verb.RETURN) {
            return count(part.aside(), "aside");
        }
        boolean noGap = verb != Verb.DISCARD && part.away() < action.count();
        return noGap ? count(part.away(), "away") : count(part.onMat(), "on the mat");
    }

    private String opened(OpenState opened) {
        return Turn.of(action.verb()) == Turn.APART
                ? count(opened.closed(), "closed")
                : count(opened.open(), "open");
    }

    private String setting(SettingState setting) {
        return setting == SettingState.DISTURBED ? "it is not noted" : "nothing has disturbed it";
    }

    private String source(SourceState source) {
        Verb verb = action.verb();
        if (verb == Verb.ISOLATE) {
            return "it is isolated already";
        }
        if (source == SourceState.LIVE) {
            return "it is live";
        }
        return verb == Verb.RESTORE_POWER
                ? "its connector, or what it hangs on, isolates it"
                : "the wait is "
                        + failed.failure().found()
                        + " s and must be "
                        + failed.failure().needed()
                        + " s";
    }

    private String joint() {
        Verb verb = action.verb();
        if (verb == Verb.RELEASE) {
            return "it does not hold";
        }
        if (verb == Verb.PRESS) {
            return "nothing is laid";
        }
        return failed.failure().needed() > 0 ? "it still holds" : "it is laid already";
    }

    private static String count(int there, String state) {
        if (there <= 0) {
            return "none is " + state;
        }
        return "only " + there + (there == 1 ? " is " : " are ") + state;
    }
}
