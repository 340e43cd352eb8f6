/**
 * Plates copied or moved from one open library to another: their ids, what they were started from and their pictures go
 * along, their history stays where it was made. What is in the other library already is never written over.
 *
 * <p>A move is two versions, one there and one here, in this order, so that a plate is never in neither. Read
 * {@link platekeep.client.carry.CarryPresenter} first.
 */
package platekeep.client.carry;
