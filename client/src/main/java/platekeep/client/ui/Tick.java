package platekeep.client.ui;

import javax.swing.JCheckBox;

/**
 * A tag to give to all of some things or to take from all; until it is touched, each keeps what it has. Where only some
 * have it, a press gives it to all, the next takes it from all, the next leaves it as it was.
 */
public final class Tick extends JCheckBox {
    private static final long serialVersionUID = 1L;

    private final String tag;
    private final String word;
    private final int have;
    private final int all;
    private State state = State.AS_IT_IS;

    private enum State {
        AS_IT_IS,
        GIVE,
        TAKE
    }

    /**
     * @param have how many have it
     * @param all how many there are, at least one
     */
    public Tick(String name, String tag, int have, int all) {
        this(name, tag, tag, have, all);
    }

    /**
     * The same under another word.
     *
     * @param word as it is shown
     */
    public Tick(String name, String tag, String word, int have, int all) {
        this.tag = tag;
        this.word = word;
        this.have = have;
        this.all = all;
        setName(name + "-" + tag);
        addActionListener(e -> {
            state = next();
            refresh();
        });
        refresh();
    }

    private boolean isSome() {
        return have > 0 && have < all;
    }

    private State next() {
        if (state == State.AS_IT_IS) {
            return have == all ? State.TAKE : State.GIVE;
        }
        return isSome() && state == State.GIVE ? State.TAKE : State.AS_IT_IS;
    }

    private void refresh() {
        boolean isOpen = isSome() && state == State.AS_IT_IS;
        // a line in the box instead of a tick
        putClientProperty("JButton.selectedState", isOpen ? "indeterminate" : null);
        setSelected(state == State.GIVE || state == State.AS_IT_IS && have == all);
        String of = isOpen ? have + " of " + all : state == State.GIVE ? "all" : "none";
        setText(isSome() ? word + " · " + of : word);
        // where there is no room for all of it
        setToolTipText(getText());
    }

    public String tag() {
        return tag;
    }

    /** Whether all are to have it. */
    public boolean gives() {
        return state == State.GIVE;
    }

    /** Whether none is to have it. */
    public boolean takes() {
        return state == State.TAKE;
    }
}
