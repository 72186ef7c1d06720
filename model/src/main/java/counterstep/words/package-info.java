/**
 * The words of a language as the trade uses them, from one data file a language: how an instruction
 * is phrased, how numbers are written, which words command, and step text read as prose. What a
 * sentence means for the procedure does not belong here.
 */
package counterstep.words;
