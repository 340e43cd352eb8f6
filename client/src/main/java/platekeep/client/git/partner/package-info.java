/**
 * The partner: the shared copy in a folder, what came and what waits there, and the join of two libraries file by file.
 *
 * <p>How two edits of one plate are joined is not known here; that is {@code platekeep.model.join}'s. Read {@link
 * platekeep.client.git.partner.TreeJoin} for the join of libraries, {@link platekeep.client.git.partner.SharedCopy} for
 * the exchange.
 */
package platekeep.client.git.partner;
