package platekeep.client.command;

import java.util.List;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.Word;

/** How the window is to look, as it is typed on the command line. */
final class ThemeWord {
    static final String DESCRIPTION = "How the window looks, light or dark; without it as it looked last.";

    private static final List<String> THEMES = List.of("light", "dark");

    private ThemeWord() {}

    /** Refuses a theme that is not there, before anything else is done. */
    static void of(Word theme) throws Trouble {
        if (theme.value().filter(word -> !THEMES.contains(word)).isPresent()) {
            throw new Trouble("There is no theme \"" + theme.text() + "\"; there are light and dark.");
        }
    }
}
