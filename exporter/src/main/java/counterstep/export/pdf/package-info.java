/**
 * How a page of ours becomes a PDF: layout, tags, bookmarks, embedded fonts. What stands on the
 * page belongs to the package that sets it.
 */
package counterstep.export.pdf;
