/**
 * The fastener sheet: every screw at true size in a cell to lay it on. How a page of HTML or PDF is
 * made belongs to the packages html and pdf.
 */
package counterstep.export.tray;
