package platekeep.client.carry;

/** How a plate gets into another library. */
public enum Way {
    COPY("Copy", "copied"),
    MOVE("Move", "moved");

    private final String word;
    private final String done;

    Way(String word, String done) {
        this.word = word;
        this.done = done;
    }

    public String word() {
        return word;
    }

    /** The word for a reason. */
    String done() {
        return done;
    }
}
