/** The Findings panel: what the checks report, live; a click goes to the place. */
package counterstep.editor.findings;
