/**
 * The verbs between two partners: create, share, send, bring, and who makes versions; and the set-up for those who use
 * Git itself.
 *
 * <p>Read {@link platekeep.client.command.partner.BringVerb} first.
 */
package platekeep.client.command.partner;
