package platekeep.client.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Verb;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;

/** Opens the window on libraries. */
final class OpenVerb extends Verb {

    private final Word folders = takes(Times.ANY, "FOLDER", "The libraries' folders.");

    private final Word theme = option(Times.AT_MOST_ONCE, "THEME", ThemeWord.DESCRIPTION, "--theme");

    OpenVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "open",
                        "Opens the window, on these libraries too where some are named.",
                        "platekeep open patterns my-archive",
                        "platekeep open --theme dark"));
    }

    @Override
    protected int answer() throws Trouble {
        ThemeWord.of(theme);
        List<Path> libraries = new ArrayList<>();
        for (String folder : folders.values()) {
            if (!Files.isDirectory(desk.at(folder))) {
                throw new Trouble("There is no folder " + folder + ".");
            }
            libraries.add(desk.at(folder));
        }
        if (!desk.means().screen().isThere()) {
            throw new Trouble(
                    "There is no display to open a window on; \"platekeep --help\" tells what works without one.");
        }
        desk.means().screen().open(libraries, theme.value());
        return Exit.FINE;
    }
}
