package platekeep.client.task;

/**
 * How far work has come.
 *
 * @param done how much is done
 * @param total of how much; 0 when it is not known
 * @param what in plain words
 */
public record Step(int done, int total, String what) {}
