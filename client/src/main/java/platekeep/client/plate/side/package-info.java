/**
 * What stands beside the chart: colours with their counts, the plate's facts, what the check says, and the history as a
 * strip of pictures.
 *
 * <p>Each shows what it is handed and tells what is asked of it; none changes a plate by itself.
 */
package platekeep.client.plate.side;
