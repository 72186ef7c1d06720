/**
 * How long the checks take, each beside a peer in the same run; {@code ./benchmarks.sh} runs them.
 */
package counterstep.benchmark;
