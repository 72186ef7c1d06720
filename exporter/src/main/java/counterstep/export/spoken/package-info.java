/**
 * What is said while the work is shown: the script for the speaker and the captions under the film.
 * The words come from the guide; voices and films do not belong here.
 */
package counterstep.export.spoken;
