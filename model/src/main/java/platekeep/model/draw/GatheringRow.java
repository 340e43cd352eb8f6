package platekeep.model.draw;

/**
 * A gathering thread on the chart.
 *
 * @param label its number from the top ({@code 5}); empty where the plate does not say how the picture lies on the rows
 * @param y how far down, in rows from the top edge of the chart; may lie above it
 */
public record GatheringRow(String label, double y) {}
