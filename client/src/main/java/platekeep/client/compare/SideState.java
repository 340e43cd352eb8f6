package platekeep.client.compare;

/**
 * What the head of one side says.
 *
 * @param title the plate's title and number; what to do where nothing is chosen
 * @param version which version: day, hand, reason, names
 * @param older whether there is an older version to step to
 * @param newer whether there is a newer one
 */
record SideState(String title, String version, Step older, Step newer) {
    /** Nothing is chosen. */
    static final SideState NONE = new SideState("Choose a plate", "", Step.NONE, Step.NONE);

    /** Whether one can step on. */
    enum Step {
        NONE,
        THERE
    }
}
