/**
 * The quick line: one field to type steps into, with what the line will do and how it can go on
 * below it. What a line means is the shorthand's business.
 */
package counterstep.editor.quickline;
