/**
 * What every command has around it: streams, the current folder, exit codes, trouble, and the means that only some
 * commands need.
 *
 * <p>Holds no verb. Read {@link platekeep.client.command.desk.Desk} first.
 */
package platekeep.client.command.desk;
