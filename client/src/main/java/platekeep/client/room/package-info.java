/**
 * The room in which the screens stand: which libraries are open, where one is, how one goes from screen to screen, and
 * how a screen tells that something was done or went wrong.
 *
 * <p>Shows nothing itself; the window does. To add a screen, write a {@link platekeep.client.room.Screen} and hand it to
 * the window. Read {@link platekeep.client.room.Workroom} first.
 */
package platekeep.client.room;
