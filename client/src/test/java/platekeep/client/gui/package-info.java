/**
 * Drives the finished program as a user would: the jar runs as a process of its own, keys and mouse are the display's, and
 * {@link platekeep.client.gui.Eye} tells where on the screen things are. Read {@link platekeep.client.gui.Program} first.
 */
package platekeep.client.gui;
