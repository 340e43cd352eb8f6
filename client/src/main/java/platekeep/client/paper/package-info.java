/**
 * The Paper screen: plates one after the other, the picture large on one side and the facts on the other, so that a binder
 * of forty scans has its titles, themes, ages, places and permissions within an evening. It serves any plates, also charted
 * ones, one by one or many at once.
 *
 * <p>What is typed is kept as drafts at once and becomes one version when it is saved. Read
 * {@link platekeep.client.paper.PaperPresenter} first.
 */
package platekeep.client.paper;
