package counterstep.study;

import counterstep.model.EnergySource;
import counterstep.model.Extras;
import counterstep.model.FastenerSet;
import counterstep.model.ItemId;
import counterstep.model.Phase;
import counterstep.model.SourceKind;
import counterstep.store.ProcedureFile;
import counterstep.testing.Samples;
import counterstep.testing.Sketch;
import java.util.List;
import java.util.Optional;

/** The complete procedures that are broken. */
final class Bases {
    private Bases() {}

    static List<Base> all() {
        return List.of(supplyFan(), poweredTest(), stickUnit());
    }

    static Base supplyFan() {
        return sample(
                Samples.SUPPLY_FAN,
                Asked.of("s13", "s14", "the earth is tested before the mains is on"),
                Asked.of("s12", "s13", "the earth is tested with the cover on"));
    }

    static Base stickUnit() {
        return sample(
                Samples.STICK_UNIT,
                Asked.of("s1", "s4", "nobody opens a unit with a swollen cell"),
                Asked.of("s1", "s6", "nobody opens a unit with a swollen cell"),
                Asked.of("s2", "s4", "what comes off needs its tray"),
                Asked.of("s2", "s6", "what comes off needs its tray"),
                Asked.of("s3", "s7", "the strap is on before the first contact is open"),
                Asked.of("s23", "s24", "the pad has no room beside the plate"),
                Asked.of("s24", "s25", "the joint lets go only while it is warm"),
                Asked.of("s25", "s27", "the edge is free only when the unit is out"),
                Asked.of("s27", "s28", "a new strip on an old one does not hold"),
                Asked.of("s31", "s32", "there is nothing to centre without the plate"),
                Asked.of("s32", "s33", "the plate moves only while its screws are loose"),
                Asked.of("s48", "s49", "the count is of use only while the back is open"),
                Asked.of("s47", "s48", "the count comes when all but the shell is on"),
                Asked.of("s39", "s48", "the count comes when all but the shell is on"),
                Asked.of("s42", "s48", "the count comes when all but the shell is on"),
                Asked.of("s44", "s48", "the count comes when all but the shell is on"),
                Asked.of("s45", "s48", "the count comes when all but the shell is on"),
                Asked.of("s55", "s56", "a trial of an open device says little"),
                Asked.of("s56", "s57", "calibration needs a device that starts"),
                Asked.of("s57", "s58", "the trial is that of the calibrated stick"));
    }

    /** The verbs that the samples do not use: isolate, a powered test, renewed screws, rejoin. */
    static Base poweredTest() {
        return new Base(
                "powered test",
                Sketch.of()
                        .item(mains())
                        .part("p1", "f1", "", "f2 p2 c1 j1")
                        .screws("f1", 4)
                        .part("p2", "f2 j1", "c1", "")
                        .item(renewed("f2"))
                        .connectors("c1", 1)
                        .joint("j1")
                        .steps("isolate e1; wait wait 60", "remove f1; remove p1", "prove dead e1")
                        .steps("disconnect c1", "remove f2; discard f2; release j1; remove p2")
                        .phase(Phase.REASSEMBLY)
                        .steps("reinstall p2; rejoin j1; fit new f2", "reconnect c1")
                        .steps("restore power e1; check p2 test; isolate e1")
                        .steps("reinstall p1; reinstall f1")
                        .phase(Phase.VERIFY)
                        .steps("restore power e1; check")
                        .procedure(),
                List.of());
    }

    private static EnergySource mains() {
        return new EnergySource(
                new ItemId("e1"),
                "mains",
                SourceKind.MAINS,
                List.of(new ItemId("p2"), new ItemId("c1")),
                Optional.empty(),
                Optional.empty(),
                "switch off and lock",
                60,
                true,
                "below 5 V",
                "",
                Extras.NONE);
    }

    private static FastenerSet renewed(String id) {
        FastenerSet set = FastenerSet.screws(new ItemId(id), "board screws", 2, Optional.empty());
        return new FastenerSet(
                set.id(),
                set.name(),
                set.quantity(),
                set.form(),
                set.drive(),
                set.head(),
                set.thread(),
                set.length(),
                set.propertyClass(),
                set.seat(),
                set.torque(),
                set.tightening(),
                set.locking(),
                false,
                true,
                set.tray(),
                set.note(),
                set.extras());
    }

    private static Base sample(String name, Asked... asked) {
        return new Base(name, ProcedureFile.read(Samples.file(name)), List.of(asked));
    }
}
