/**
 * What lies beside one plate: its scans and the photos of the finished work, in a list and large.
 *
 * <p>Part of the Plate screen, which says which plate it is. Read {@link platekeep.client.paper.beside.BesidePresenter}
 * first.
 */
package platekeep.client.paper.beside;
