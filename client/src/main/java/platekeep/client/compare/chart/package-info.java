/**
 * Two charts with their rows lined up: which row stands on which line, what is marked on it, which part of it is seen
 * and how large, and the painters for the three ways of looking (side by side, one over the other, one after the other).
 *
 * <p>Knows neither library nor presenter. What is worked out once for two plates is made in the background; painting
 * costs what is seen. Read {@link platekeep.client.compare.chart.PairedPlates} first.
 */
package platekeep.client.compare.chart;
