/** All checks together, as a document wants them taken, with its waivers applied. */
package counterstep.review;
