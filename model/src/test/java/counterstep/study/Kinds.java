package counterstep.study;

import counterstep.model.Verb;
import java.util.List;
import java.util.stream.Stream;

/** The list of all kinds of faults, in the order of the table. */
final class Kinds {
    private static final int RANDOM_ORDERS = 500;
    private static final Judge REPLAY = new ByReplay(RANDOM_ORDERS);

    private static final String[] ORDER = {
        "action-not-possible",
        "works-under-a-cover",
        "part-still-held",
        "part-still-tethered",
        "fastener-before-its-part",
        "connector-before-its-part",
        "closed-over-unfinished",
        "disturbed-before-noted",
        "power-not-isolated",
        "power-restored-too-early",
        "not-tried-at-the-end",
        "no-static-precaution"
    };

    private static final String[] STATE =
            Stream.concat(
                            Stream.of(ORDER),
                            Stream.of(
                                    "never-put-back",
                                    "put-back-more-than-removed",
                                    "left-loose",
                                    "left-open",
                                    "left-aside",
                                    "left-on-the-mat",
                                    "renewed-item-put-back-old",
                                    "noted-but-not-restored",
                                    "restored-without-note",
                                    "power-not-restored"))
                    .toArray(String[]::new);

    private Kinds() {}

    static List<Kind> all() {
        return Stream.of(
                        gone(),
                        uncounted(),
                        actions(),
                        steps(),
                        equipment(),
                        torques(),
                        items(),
                        words())
                .flatMap(List::stream)
                .toList();
    }

    private static List<Kind> gone() {
        return List.of(
                gone("a putting back", "never-put-back", Verb.REINSTALL),
                gone("a removal", "put-back-more-than-removed", Verb.REMOVE),
                gone("a loosening", "action-not-possible", Verb.LOOSEN),
                gone("a tightening", "left-loose", Verb.TIGHTEN),
                gone("a reconnecting or clipping", "left-open", Verb.RECONNECT, Verb.CLIP),
                gone(
                        "a disconnecting, unclipping or cutting",
                        "put-back-more-than-removed",
                        Verb.DISCONNECT,
                        Verb.UNCLIP,
                        Verb.CUT),
                gone("a return or bringing in", "left-aside", Verb.RETURN, Verb.BRING_IN),
                gone(
                        "a moving aside or taking away",
                        "action-not-possible",
                        Verb.MOVE_ASIDE,
                        Verb.TAKE_AWAY),
                gone("a release", "part-still-held", Verb.RELEASE),
                gone(
                        "a laying, pressing or rejoining",
                        "left-open",
                        Verb.LAY,
                        Verb.PRESS,
                        Verb.REJOIN),
                gone("a note", "restored-without-note", Verb.NOTE),
                gone("a restoring", "noted-but-not-restored", Verb.RESTORE),
                gone(
                        "an isolation or a proof",
                        "power-not-isolated",
                        Verb.ISOLATE,
                        Verb.PROVE_DEAD),
                gone("a restoring of power", "power-not-restored", Verb.RESTORE_POWER),
                gone("a discarding", "renewed-item-put-back-old", Verb.DISCARD),
                gone("a fitting of what is new", "never-put-back", Verb.FIT_NEW));
    }

    private static List<Kind> uncounted() {
        return List.of(
                uncounted("a wait", Verb.WAIT),
                uncounted("a check", Verb.CHECK),
                uncounted("an aligning", Verb.ALIGN),
                uncounted("a cleaning or applying", Verb.CLEAN, Verb.APPLY));
    }

    private static Kind gone(String what, String teller, Verb... verbs) {
        String[] tellers =
                Stream.concat(Stream.of(teller), Stream.of(STATE)).toArray(String[]::new);
        return Kind.of(what + " left out", REPLAY, Actions.gone(verbs), tellers);
    }

    /** What changes no state is there for a reason, though no item may ask for it. */
    private static Kind uncounted(String what, Verb... verbs) {
        return Kind.of(
                what + " left out",
                REPLAY.orByHand("the action changes no state, and no item asks for it"),
                Actions.gone(verbs),
                STATE);
    }

    private static List<Kind> actions() {
        return List.of(
                Kind.of("an action written twice", REPLAY, Actions::twice, STATE),
                Kind.of("a count one too low", REPLAY, Actions.count(-1), STATE),
                Kind.of("a count one too high", REPLAY, Actions.count(1), STATE),
                Kind.of("the verb that undoes the right one", REPLAY, Actions::inverse, STATE),
                Kind.of("another item of the same kind", REPLAY, Actions::otherItem, STATE),
                Kind.of("seated, never tightened", REPLAY, Actions::fingerTight, STATE),
                Kind.of("tight where it has to stay loose", REPLAY, Actions::tightAtOnce, STATE),
                Kind.of("loosened without tightening", REPLAY, Actions::loosenedAgain, STATE),
                Kind.of("loosened what has to come out", REPLAY, Actions::loosenedOnly, STATE),
                Kind.of("restored before noted", REPLAY, Actions::restoredBeforeNoted, STATE),
                Kind.of("two actions of a step exchanged", REPLAY, Actions::swapped, STATE),
                Kind.of("an action in the step before", REPLAY, Actions.toOtherStep(-1), STATE),
                Kind.of("an action in the step after", REPLAY, Actions.toOtherStep(1), STATE),
                Kind.of("a cover closed early", REPLAY, Actions::closedEarly, STATE),
                Kind.of("a fastener back before its part", REPLAY, Actions::beforeItsPart, STATE),
                Kind.of("a powered test not marked", REPLAY, Actions::noPoweredTest, STATE),
                Kind.of(
                        "a wait too short",
                        REPLAY.orByHand("the wait is that of no energy source"),
                        Actions::shorterWait,
                        STATE));
    }

    private static List<Kind> steps() {
        String[] broken = {"page-order-breaks-a-link", "loop-in-the-links"};
        String[] linked = Stream.concat(Stream.of(broken), Stream.of(STATE)).toArray(String[]::new);
        return List.of(
                Kind.of("a step left out, its links bridged", REPLAY, Steps::gone, STATE),
                Kind.of("a step left out with its links", REPLAY, Steps::goneWithLinks, STATE),
                Kind.of(
                        "two neighbours exchanged, with their links",
                        REPLAY,
                        Steps::swapped,
                        STATE),
                Kind.of(
                        "two neighbours exchanged on the page",
                        REPLAY,
                        Steps::swappedOnPage,
                        linked),
                Kind.of("a step moved and linked there", REPLAY, Steps::moved, STATE),
                Kind.of("a step moved on the page", REPLAY, Steps::movedOnPage, linked),
                Kind.of("a link left out", REPLAY, LinkFaults::gone, STATE),
                Kind.of("a link drawn the wrong way", REPLAY, LinkFaults::reversed, linked));
    }

    private static List<Kind> equipment() {
        Judge hurts = Judge.BY_DEFINITION;
        return List.of(
                Kind.of(
                        "another driver of the list",
                        hurts,
                        Equipment::otherDriver,
                        "tool-does-not-fit"),
                Kind.of(
                                "a tool that turns nothing",
                                hurts,
                                Equipment::noDriver,
                                "tool-does-not-fit")
                        .missedWhere(
                                "its kind is 'other', which may be anything, also a made-up driver"),
                Kind.of("a driver not listed", hurts, Equipment::notListed, "tool-not-listed"));
    }

    private static List<Kind> torques() {
        Judge hurts = Judge.BY_DEFINITION;
        return List.of(
                Kind.of(
                        "a torque left to the set",
                        (base, mutant) -> Verdict.harmless("the action has that of its set", 0),
                        Equipment::noTorque,
                        "torque-not-stated-again"),
                Kind.of("half the torque", hurts, Equipment::halfTorque, "torque-not-stated-again"),
                Kind.of(
                        "a torque ten times too high, once",
                        hurts,
                        Equipment::tenfoldTorque,
                        "torque-above-breaking",
                        "torque-doubtful"),
                Kind.of(
                                "a torque ten times too high, throughout",
                                hurts,
                                Equipment::tenfoldTorqueOfSet,
                                "torque-above-breaking",
                                "torque-doubtful")
                        .missedWhere(
                                "no table at hand states when screws that form their thread in plastic strip it"),
                Kind.of(
                        "look-alikes in one tray",
                        Equipment.together(RANDOM_ORDERS),
                        Equipment::lookAlikes,
                        "look-alikes"));
    }

    private static List<Kind> words() {
        Judge hurts = Judge.BY_DEFINITION;
        return List.of(
                Kind.of("a hazard a step late", hurts, Words::hazardLate, "hazard-too-late"),
                Kind.of("a hazard left out", hurts, Words::noHazard, "heat-near-a-cell")
                        .missedWhere(
                                "what is dangerous about a step the writer knows; only heat near a cell is derived,"
                                        + " and there the joint still states the limit"),
                Kind.of(
                        "a hazard without one of its parts",
                        hurts,
                        Words::halfHazard,
                        "hazard-incomplete"),
                Kind.of("no strap", hurts, Words::noStrap, "no-static-precaution"),
                Kind.of(
                        "a wrong number in the text",
                        hurts,
                        Words::number,
                        "number-differs-from-count"),
                Kind.of(
                        "a photo without alternative text",
                        hurts,
                        Words::noAlternative,
                        "photo-without-alternative-text"),
                Kind.of(
                        "a callout on another thing",
                        hurts,
                        Words::otherCallout,
                        "callout-without-action",
                        "action-without-callout"),
                Kind.of("a step without time", hurts, Words::noTime, "step-without-time"));
    }

    private static List<Kind> items() {
        Judge hurts = Judge.BY_DEFINITION;
        return List.of(
                Kind.of(
                        "a renewed part without number",
                        hurts,
                        Items::noPartNumber,
                        "missing-from-the-parts-list"),
                Kind.of(
                        "heat without a limit nearby",
                        hurts,
                        Items::noHeatLimit,
                        "heat-without-limit"),
                Kind.of("two parts of one name", hurts, Items::sameName, "name-used-twice"));
    }
}
