/** Published tables and common practice of the trade, as data files with their source. */
package counterstep.handbook;
