package platekeep.model.compare;

/**
 * Neighbouring cables of one row that changed in the same way.
 *
 * @param from first position
 * @param to last position
 * @param how what happened to them
 */
public record CableChange(int from, int to, How how) {

    /** What happened to a cable. */
    public enum How {
        PUT_IN,
        TAKEN_OUT,
        /** Another colour of thread lies there. */
        RECOLOURED
    }
}
