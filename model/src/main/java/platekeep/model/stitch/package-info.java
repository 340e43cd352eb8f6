/**
 * The craft: which cables form a figure, which of them are up and which down, what holds together, what makes trouble,
 * and the ids and starts that a plate keeps through an edit.
 *
 * <p>It is plain arithmetic over the rows of a plate: it reads no text and draws nothing. Rows are counted from 0, top
 * row first, as in {@link platekeep.model.plate.Plate}; positions are left pleats. Only a {@link Finding} counts rows
 * from the bottom, as people do. Everything is linear in the cells of the chart and fit for 2000 rows of 2000 positions.
 *
 * <p>Read {@link Kinds} first.
 */
package platekeep.model.stitch;
