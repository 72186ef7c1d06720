/**
 * The procedure as a DITA task for machinery, in the part that DITA 1.2 and 1.3 share. What it says
 * is decided in the guide package.
 */
package counterstep.export.dita;
