/**
 * What the client remembers between two starts: theme, open libraries, sizes, the window's place. Nothing here belongs
 * to a library. Read {@link platekeep.client.settings.Settings} first.
 */
package platekeep.client.settings;
