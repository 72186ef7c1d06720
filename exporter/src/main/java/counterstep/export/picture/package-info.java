/**
 * Photos made fit for an export: turned, scaled down, without camera data, numbered. Where a photo
 * stands on the page does not belong here.
 */
package counterstep.export.picture;
