/** The list of exporters, in the order in which people see them. Nothing else. */
package counterstep.export.catalogue;
