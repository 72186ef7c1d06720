/**
 * How the window looks: colours by role, type, marks and line icons, light and dark. Colours stand
 * in two properties files, never in code; nothing here knows a document's content.
 */
package counterstep.editor.theme;
