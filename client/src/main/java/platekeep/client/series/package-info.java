/**
 * The Series screen: the plates of a series in order as pictures, with what may be done to the order, the colours that
 * they share or nearly share, and the series' notes.
 *
 * <p>Changes are kept on disk as she makes them and become one version when she saves. Read
 * {@link platekeep.client.series.SeriesPresenter} first.
 */
package platekeep.client.series;
