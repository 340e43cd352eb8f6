package platekeep.client.command.desk;

/** What a command tells the program that called it; the same for all verbs. */
public final class Exit {

    /** Done, and nothing to see to. */
    public static final int FINE = 0;

    /** Done, and the answer is "different", "open clashes", "errors" or "some were left out". */
    public static final int FOUND = 1;

    /** Trouble: the command could not be carried out, and nothing was changed. */
    public static final int TROUBLE = 2;

    private Exit() {}
}
