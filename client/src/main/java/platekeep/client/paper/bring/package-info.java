/**
 * Bringing scans and photos in: forty sheets of paper at one go, each a plate that is only a scan yet, or pictures for a
 * plate that is there. Files that are no pictures, are broken or are in the library already are named and left out; they
 * stop nothing.
 *
 * <p>Knows files and a library, and asks through a view. Read {@link platekeep.client.paper.bring.BringPresenter} first.
 */
package platekeep.client.paper.bring;
