package platekeep.client.library;

/**
 * What sending did.
 *
 * @param versions how many versions went
 */
public record Sent(int versions) {}
