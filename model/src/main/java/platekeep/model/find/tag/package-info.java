/**
 * Tags of many plates at once: giving and taking them, renaming and merging themes over a whole library, and what may be
 * missing or double.
 *
 * <p>Changes plates in memory only; whoever saves them makes one version of it. Read
 * {@link platekeep.model.find.tag.Tagging} first.
 */
package platekeep.model.find.tag;
