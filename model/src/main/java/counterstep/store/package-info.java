/**
 * The only room that touches the disk: files are read within limits and put in place whole. What
 * the bytes mean is not known here.
 */
package counterstep.store;
