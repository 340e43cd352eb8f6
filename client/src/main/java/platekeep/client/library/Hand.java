package platekeep.client.library;

/**
 * Somebody who makes versions.
 *
 * @param name as it is shown
 * @param address an e-mail address or any text that tells two people of one name apart
 */
public record Hand(String name, String address) {}
