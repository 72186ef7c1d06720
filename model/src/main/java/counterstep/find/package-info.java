/**
 * What is found by words: steps, places in their texts, terms; and other words put there. How it is
 * shown does not belong here.
 */
package counterstep.find;
