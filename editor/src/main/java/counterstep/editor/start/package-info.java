/**
 * The page shown while nothing lies open: what one can begin with. What each choice does is decided
 * by the window.
 */
package counterstep.editor.start;
