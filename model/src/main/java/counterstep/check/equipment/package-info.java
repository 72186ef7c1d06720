/** Checks that tools, fasteners and connectors suit each other. */
package counterstep.check.equipment;
