/**
 * The Join screen: plates with open clashes, each clash decided by one side's value, by what was before, or by what
 * stands.
 *
 * <p>How a decision changes a plate is {@code model.join.Settling}; nothing is decided here by itself, and closing the
 * window decides nothing. Read {@code JoinPresenter} first.
 */
package platekeep.client.join;
