package counterstep.ledger;

/** What is the case with one item at one moment. */
public sealed interface ItemState
        permits FastenerState,
                PartState,
                OpenState,
                JointState,
                SettingState,
                SourceState,
                NoState {
    /** Whether the item is as a finished device has it: in place, tight, mated, holding, live. */
    boolean finished();
}
