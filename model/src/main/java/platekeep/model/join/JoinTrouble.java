package platekeep.model.join;

/** Two plates that cannot be joined at all; the message is one sentence for the user. Nothing was changed. */
public final class JoinTrouble extends RuntimeException {
    private static final long serialVersionUID = 1L;

    public JoinTrouble(String sentence) {
        super(sentence);
    }
}
