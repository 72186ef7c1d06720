/** The bar to find a step with. Which steps the words lead to is known below, in the model. */
package counterstep.editor.find;
