package platekeep.client.command;

import java.nio.file.Path;
import java.util.List;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Verb;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.LibraryException;

/** Opens the sample library, which is made at the first opening; without a display it is shown in the terminal. */
final class SampleVerb extends Verb {

    private final Word sample = flag("", "--sample");

    private final Word folder = option(
            Times.AT_MOST_ONCE,
            "FOLDER",
            "Where the sample library lies or is made; without it in the folder of your data.",
            "--sample-folder");

    private final Word tour = flag("Show it in the terminal even where there is a display.", "--tour");

    private final Word theme = option(Times.AT_MOST_ONCE, "THEME", ThemeWord.DESCRIPTION, "--theme");

    SampleVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "--sample",
                        "Opens the sample library; without a display it shows it in the terminal.",
                        "platekeep --sample --sample-folder try-it"));
    }

    @Override
    protected int answer() throws Trouble, LibraryException {
        ThemeWord.of(theme);
        Path parent = folder.value().isPresent()
                ? desk.at(folder.value().get())
                : desk.means().dataFolder().resolve("sample");
        Path library = desk.means().samples().madeIn(parent);
        if (!tour.given() && desk.means().screen().isThere()) {
            desk.means().screen().open(List.of(library), theme.value());
        } else {
            Tour.take(desk, library);
        }
        return Exit.FINE;
    }
}
