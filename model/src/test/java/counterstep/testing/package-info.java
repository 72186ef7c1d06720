/**
 * What the tests of all three modules share: the project's folder, the samples, generators and
 * oracles. Nothing of it reaches the jar.
 */
package counterstep.testing;
