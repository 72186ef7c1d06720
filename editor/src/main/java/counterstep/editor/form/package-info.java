/**
 * Labelled fields of a form, and lists whose entries are edited in one: what every panel with
 * fields is made of. Knows neither desk nor procedure.
 */
package counterstep.editor.form;
