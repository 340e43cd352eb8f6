package platekeep.model.join.edits.change;

/** The edits do not determine the answer, so no case is made of them. */
public final class Undetermined extends RuntimeException {
    private static final long serialVersionUID = 1;

    public Undetermined(String why) {
        super(why);
    }
}
