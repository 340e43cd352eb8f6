package platekeep.model.look;

/** The ways in which a picture can be like another without being turned on its side. Each undoes itself. */
public enum Mirror {
    NONE("not mirrored"),
    ACROSS("mirrored left to right"),
    OVER("mirrored top to bottom"),
    BOTH("turned by half a turn");

    private final String words;

    Mirror(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether left and right change places. */
    public boolean turnsAcross() {
        return this == ACROSS || this == BOTH;
    }

    /** Whether top and bottom change places. */
    public boolean turnsOver() {
        return this == OVER || this == BOTH;
    }

    /** The index of the place in a grid of this size from which the place at an index is taken. */
    int from(int at, int width, int height) {
        int row = at / width;
        int place = at % width;
        return (turnsOver() ? height - 1 - row : row) * width + (turnsAcross() ? width - 1 - place : place);
    }
}
