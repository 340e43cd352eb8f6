package platekeep.client.ui;

import com.formdev.flatlaf.FlatLaf;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Light or dark. */
public enum Theme {
    LIGHT,
    DARK;

    /** The word for the settings and the command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Theme> of(String word) {
        return Arrays.stream(values())
                .filter(theme -> theme.word().equals(word))
                .findFirst();
    }

    /** The other one. */
    public Theme other() {
        return this == LIGHT ? DARK : LIGHT;
    }

    /**
     * Puts the theme on all windows, those that are open too. Text components show their text as it is from then on.
     * On the event thread.
     */
    public void putOn() {
        FlatLaf.setup(this == LIGHT ? new PlatekeepLight() : new PlatekeepDark());
        PlainText.install();
        FlatLaf.updateUI();
    }
}
