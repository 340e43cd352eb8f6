package platekeep.model.compare;

/** One of the two plates that are compared. */
public enum Side {
    BEFORE,
    AFTER
}
