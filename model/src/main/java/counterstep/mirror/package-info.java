/**
 * A removal and its reinstall: which belongs to which, drawing the one that is missing, and how the
 * two columns of steps stand beside each other. Pixels and colours do not belong here.
 */
package counterstep.mirror;
