/**
 * Parts of a picture: chosen on the chart, lifted off, turned, put down elsewhere and kept for later, each stitch with
 * the kind that it had.
 *
 * <p>Plain functions from plate to plate; knows no window and no library. Read {@link platekeep.client.plate.piece.Area},
 * then {@link platekeep.client.plate.piece.Piece}.
 */
package platekeep.client.plate.piece;
