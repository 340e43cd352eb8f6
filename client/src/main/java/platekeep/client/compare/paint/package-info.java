/**
 * Paints two lined-up charts: ground, cables, marks of what changed, the column of row numbers and signs between them.
 *
 * <p>Every mark can be told from the others by its shape: solid, dashed and double outlines, hatching that rises or
 * falls, signs beside the rows. Only what lies in the clip is painted. Read
 * {@link platekeep.client.compare.paint.PairedCharts} first.
 */
package platekeep.client.compare.paint;
