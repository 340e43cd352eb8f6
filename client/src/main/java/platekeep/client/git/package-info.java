/**
 * Libraries kept as folders with all their versions: what fulfils the port {@code library}. The only room that knows
 * JGit; any other version-control program can read the same folder.
 *
 * <p>{@code store} keeps files and versions, {@code history} knows which version changed which plate, {@code plates}
 * knows which file is which plate, {@code desk} works on one library, {@code partner} exchanges with another. Read
 * {@link platekeep.client.git.GitLibraries} first.
 */
package platekeep.client.git;
