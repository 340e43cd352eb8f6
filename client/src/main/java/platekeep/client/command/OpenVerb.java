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

    OpenVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "open",
                        "Opens the window, on these libraries too where some are named.",
                        "platekeep open patterns my-archive"));
    }

    @Override
    protected int answer() throws Trouble {
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
        desk.means().screen().open(libraries);
        return Exit.FINE;
    }
}
