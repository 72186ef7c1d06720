/**
 * The contract of an exporter and what it is given. No format is known here, and no list of
 * exporters.
 */
package counterstep.export;
