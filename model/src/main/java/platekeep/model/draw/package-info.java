/**
 * Where everything on a plate lies when it is drawn: cables, pleats, rows, gathering rows, lines and marks, as cheap
 * numbers. True to the cloth: a cable is a bar two pleats wide and half a row high, up cables on the upper half-level
 * of their row, down cables on the lower.
 *
 * <p>Draws nothing and knows no graphics library; the painters do. All lengths are in pleats across and rows down until
 * a {@link platekeep.model.draw.ChartScale} turns them into dots. Read {@link platekeep.model.draw.Drawing} first.
 */
package platekeep.model.draw;
