/**
 * What tests of several panels need: a real mouse on what it would easily miss, and things to drop.
 */
package counterstep.editor.testing;
