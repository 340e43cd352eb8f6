/**
 * The only place where threads start. Work runs in the background, answers come back on the event thread, long work
 * shows its progress and can be cancelled.
 *
 * <p>Knows nothing of plates or libraries. Read {@link platekeep.client.task.Tasks} first.
 */
package platekeep.client.task;
