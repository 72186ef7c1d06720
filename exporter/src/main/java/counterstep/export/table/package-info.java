/**
 * Tools, parts, fasteners and steps as tables that other programs read. What the rows say is
 * decided in the guide package.
 */
package counterstep.export.table;
