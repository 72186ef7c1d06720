/**
 * The guide as CommonMark that reads well as plain text, with its photos in a folder beside it.
 * What the guide says is decided in the guide package.
 */
package counterstep.export.markdown;
