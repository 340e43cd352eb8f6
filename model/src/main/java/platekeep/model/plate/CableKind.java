package platekeep.model.plate;

/** How a cable lies: with the thread below the needle (down) or above it (up). */
public enum CableKind {
    DOWN("down"),
    UP("up");

    private final String word;

    CableKind(String word) {
        this.word = word;
    }

    /** The other kind. */
    public CableKind turned() {
        return this == DOWN ? UP : DOWN;
    }

    /** This kind turned once for each of {@code steps}, which may be negative. */
    public CableKind turned(int steps) {
        return (steps & 1) == 0 ? this : turned();
    }

    /** The word in the text of a plate: {@code down} or {@code up}. */
    public String word() {
        return word;
    }
}
