/**
 * The commands of the command line: options, one call, print, exit code. No window, no analysis.
 */
package counterstep.cli;
