/**
 * The bench sheet: what the technician ticks, counts and writes down beside the work. How a page of
 * HTML or PDF is made belongs to the packages html and pdf.
 */
package counterstep.export.bench;
