/**
 * Photos examined as they come in, and made fit to be shown and exported: turned, scaled down,
 * without camera data, numbered. Where a photo stands on the page does not belong here.
 */
package counterstep.export.picture;
