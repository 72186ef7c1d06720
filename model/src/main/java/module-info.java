/** The document and everything that can be said about it; no window, no output format. */
module counterstep.model {
    requires com.fasterxml.jackson.databind;

    exports counterstep.check.completeness;
    exports counterstep.check;
    exports counterstep.edit;
    exports counterstep.input;
    exports counterstep.ledger;
    exports counterstep.links;
    exports counterstep.model;
    exports counterstep.plan;
    exports counterstep.review;
    exports counterstep.toolchange;
}
