/** The document and everything that can be said about it; no window, no output format. */
module counterstep.model {
    requires com.fasterxml.jackson.core;

    exports counterstep.check.completeness;
    exports counterstep.check.equipment;
    exports counterstep.check.safety;
    exports counterstep.check.sequence;
    exports counterstep.check.wording;
    exports counterstep.check;
    exports counterstep.crew;
    exports counterstep.edit;
    exports counterstep.estimate;
    exports counterstep.excerpt;
    exports counterstep.find;
    exports counterstep.handbook;
    exports counterstep.implied;
    exports counterstep.input;
    exports counterstep.json;
    exports counterstep.ledger;
    exports counterstep.links;
    exports counterstep.mending;
    exports counterstep.mirror;
    exports counterstep.model;
    exports counterstep.plan;
    exports counterstep.reach;
    exports counterstep.review;
    exports counterstep.shorthand;
    exports counterstep.store;
    exports counterstep.timetable;
    exports counterstep.toolchange;
    exports counterstep.words;
}
