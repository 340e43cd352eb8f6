package platekeep.client.git.store;

import org.eclipse.jgit.lib.PersonIdent;

/**
 * What a new version says about itself.
 *
 * @param inNameOf whose change it is, and when
 * @param enteredBy who entered it, and when
 * @param reason why
 */
public record Facts(PersonIdent inNameOf, PersonIdent enteredBy, String reason) {}
