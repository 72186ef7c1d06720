package counterstep.model;

import java.util.List;
import java.util.Optional;

/** An action in the making: set what differs, then take the {@link #action()}. Not shared. */
public final class ActionDraft {
    private Verb verb;
    private Optional<ItemId> item;
    private int count;
    private boolean fingerTight;
    private boolean aside;
    private Optional<ToolId> tool = Optional.empty();
    private Optional<Torque> torque = Optional.empty();
    private String reading = "";
    private Optional<Wait> waiting = Optional.empty();
    private boolean poweredTest;
    private List<SupplyUse> supplies = List.of();
    private String remark = "";
    private Extras extras = Extras.NONE;

    /** A plain action: nothing but verb, item and count. */
    public ActionDraft(Verb verb, Optional<ItemId> item, int count) {
        this.verb = verb;
        this.item = item;
        this.count = count;
    }

    ActionDraft(Action action) {
        this(action.verb(), action.item(), action.count());
        fingerTight = action.fingerTight();
        aside = action.aside();
        tool = action.tool();
        torque = action.torque();
        reading = action.reading();
        waiting = action.waiting();
        poweredTest = action.poweredTest();
        supplies = action.supplies();
        remark = action.remark();
        extras = action.extras();
    }

    /** The action as drafted. */
    public Action action() {
        return new Action(
                verb,
                item,
                count,
                fingerTight,
                aside,
                tool,
                torque,
                reading,
                waiting,
                poweredTest,
                supplies,
                remark,
                extras);
    }

    /** Sets what is done. */
    public ActionDraft verb(Verb value) {
        this.verb = value;
        return this;
    }

    /** Sets to what. */
    public ActionDraft item(Optional<ItemId> value) {
        this.item = value;
        return this;
    }

    /** Sets how many. */
    public ActionDraft count(int value) {
        this.count = value;
        return this;
    }

    /** Sets whether it is seated only, so that the part can still be moved. */
    public ActionDraft fingerTight(boolean value) {
        this.fingerTight = value;
        return this;
    }

    /** Sets whether a new part lies beside its place, to be returned. */
    public ActionDraft aside(boolean value) {
        this.aside = value;
        return this;
    }

    /** Sets the tool; empty = the step's. */
    public ActionDraft tool(Optional<ToolId> value) {
        this.tool = value;
        return this;
    }

    /** Sets the tightening torque. */
    public ActionDraft torque(Optional<Torque> value) {
        this.torque = value;
        return this;
    }

    /** Sets what is to be noted, measured or judged. */
    public ActionDraft reading(String value) {
        this.reading = value;
        return this;
    }

    /** Sets the wait it brings. */
    public ActionDraft waiting(Optional<Wait> value) {
        this.waiting = value;
        return this;
    }

    /** Sets whether it is part of a marked powered test. */
    public ActionDraft poweredTest(boolean value) {
        this.poweredTest = value;
        return this;
    }

    /** Sets what it uses up. */
    public ActionDraft supplies(List<SupplyUse> value) {
        this.supplies = value;
        return this;
    }

    /** Sets a few words on how. */
    public ActionDraft remark(String value) {
        this.remark = value;
        return this;
    }

    /** Sets the unknown fields. */
    public ActionDraft extras(Extras value) {
        this.extras = value;
        return this;
    }
}
