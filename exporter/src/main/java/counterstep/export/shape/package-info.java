/**
 * Outlines of drives, connectors, phases and severities, one drawing for canvas and paper. No
 * colours (the caller has them), no components, no text.
 */
package counterstep.export.shape;
