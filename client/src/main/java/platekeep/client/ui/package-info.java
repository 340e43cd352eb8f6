/**
 * What the screens are made of: the painters over {@code draw}'s geometry, the theme, and the few widgets that all
 * screens share.
 *
 * <p>Knows plates and how they lie, but no library and no screen. {@link platekeep.client.ui.PlatePainter}
 * draws charts and cloth, {@link platekeep.client.ui.Thumbnails} small pictures; {@link platekeep.client.ui.Theme} is
 * where colours come from. Text is shown as it is, never read as mark-up: {@link platekeep.client.ui.PlainText}.
 */
package platekeep.client.ui;
