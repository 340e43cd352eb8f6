/**
 * The surface on which a plate is looked at and drawn: chart or cloth at any zoom, with its rulers and the drawing
 * cursor. Tells what the pointer and the keys do by spots of the chart.
 *
 * <p>Knows no library and changes no plate. Read {@link platekeep.client.plate.chart.ChartSurface} first.
 */
package platekeep.client.plate.chart;
