package platekeep.client.gallery.tag;

import javax.swing.JCheckBox;

/** A tag to give to all plates or to take from all; until it is touched, each plate keeps what it has. */
final class Tick extends JCheckBox {
    private static final long serialVersionUID = 1L;

    private final String tag;
    private final boolean wasWithAll;
    private boolean touched;

    /**
     * @param have how many of the plates have it
     * @param all how many plates there are
     */
    Tick(String name, String tag, int have, int all) {
        super(have > 0 && have < all ? tag + " · " + have + " of " + all : tag, have == all);
        this.tag = tag;
        this.wasWithAll = have == all;
        boolean isSome = have > 0 && have < all;
        setName(name + "-" + tag);
        addActionListener(e -> {
            touched = true;
            if (isSome) {
                setText(tag + (isSelected() ? " · all" : " · none"));
            }
        });
    }

    String tag() {
        return tag;
    }

    boolean gives() {
        return touched && isSelected() && !wasWithAll;
    }

    boolean takes() {
        return touched && !isSelected();
    }
}
