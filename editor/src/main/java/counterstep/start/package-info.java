/** Decides what a start means: window or command line. Nothing else is decided here. */
package counterstep.start;
