/**
 * The mutation study: complete procedures broken in every single-fault way, and which faults the
 * checks find; {@code ./mutations.sh} runs it. What is harmless is judged without the checks.
 */
package counterstep.study;
