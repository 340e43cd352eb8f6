/**
 * The port through which everything above speaks of a plate library: versions, hands, plates at a version, the
 * partner's shared copy. No type of the machinery underneath appears here; {@code git} fulfils it.
 *
 * <p>Every call may touch disk, so no call belongs on the event thread. Read {@link platekeep.client.library.Library}
 * first.
 */
package platekeep.client.library;
