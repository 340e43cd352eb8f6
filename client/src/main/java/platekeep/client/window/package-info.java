/**
 * The window: a rail with the screens, the screen in front, the menu, and a line that tells what happened.
 *
 * <p>Knows screens only as {@link platekeep.client.room.Screen}; which ones there are it is told. Read
 * {@link platekeep.client.window.MainWindow} first.
 */
package platekeep.client.window;
