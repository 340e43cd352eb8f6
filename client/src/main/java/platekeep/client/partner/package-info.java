/**
 * The Partner screen: where the shared copy is, what came, what waits to be sent; sending and bringing in.
 *
 * <p>How two edits are joined is {@code model.join}; deciding clashes is the Join screen. Read {@code PartnerPresenter}
 * first.
 */
package platekeep.client.partner;
