/**
 * Work on one open library: saving versions, naming them, taking in what was changed by hand, looking at what there is.
 *
 * <p>It knows one folder; the partner's is another package's. Read {@link platekeep.client.git.desk.Workroom} first.
 */
package platekeep.client.git.desk;
