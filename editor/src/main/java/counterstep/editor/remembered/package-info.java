/**
 * What the program remembers of its user from one run to the next: recent files, the place of the
 * window, where the panels stand, the theme. Nothing of a document is kept here.
 */
package counterstep.editor.remembered;
