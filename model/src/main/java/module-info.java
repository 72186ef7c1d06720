/** The document and everything that can be said about it; no window, no output format. */
module counterstep.model {
    requires com.fasterxml.jackson.core;

    exports counterstep.check;
    exports counterstep.check.completeness;
    exports counterstep.edit;
    exports counterstep.input;
    exports counterstep.json;
    exports counterstep.ledger;
    exports counterstep.links;
    exports counterstep.model;
    exports counterstep.mirror;
    exports counterstep.plan;
    exports counterstep.review;
    exports counterstep.store;
    exports counterstep.toolchange;
}
