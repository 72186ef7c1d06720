/**
 * The panel of blocks: cautions, tool sets and precautions that a writer keeps and puts into one
 * document after another.
 */
package counterstep.editor.blocks;
