package platekeep.client.command.keep;

import java.nio.file.Files;
import java.util.List;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.file.PlateFile;
import platekeep.client.command.file.ReadablePlate;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Verb;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/** Shows a plate, from a library or a file, as plain text; with {@code --text} for tools that show changed lines. */
public final class ShowVerb extends Verb {

    private final Word word =
            takes(Times.ONCE, "PLATE", "A plate file, or title, number, id or file of a plate in a library.");

    private final Word folder = option(
            Times.AT_MOST_ONCE, "FOLDER", "The library; without it the one around the current folder.", "--library");

    private final Word version =
            option(Times.AT_MOST_ONCE, "VERSION", "The plate as of a version: its id or its name.", "--version");

    private final Word text =
            flag("For tools that show changed lines (textconv): PLATE is a file, rows go by their ids.", "--text");

    private final Word json = flag("The plate's own text, which is JSON.", "--json");

    public ShowVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "show",
                        "Shows a plate as plain text: what is known about it, its chart, what is open.",
                        "platekeep show \"Harbour Light\" --version \"Spring class\"",
                        "platekeep show --text plates/h/harbour-light.json"));
    }

    @Override
    protected int answer() throws Trouble, LibraryException {
        if (text.given()) {
            return answerText(new PlateFile(word.text(), desk.at(word.text())));
        }
        boolean file =
                version.value().isEmpty() && folder.value().isEmpty() && Files.isRegularFile(desk.at(word.text()));
        Plate plate = file ? new PlateFile(word.text(), desk.at(word.text())).read() : fromLibrary();
        if (json.given()) {
            desk.out().print(PlateText.write(plate));
        } else {
            desk.say(ReadablePlate.numbered(plate));
        }
        return Exit.FINE;
    }

    /** A file that is no plate is shown as it stands, after what is wrong with it, so that its changes can be seen. */
    private int answerText(PlateFile file) throws Trouble {
        byte[] bytes = file.bytes();
        List<String> lines = PlateText.read(file.name(), bytes)
                .fold(
                        good -> ReadablePlate.withRowIds(good.read()),
                        bad -> bad.problems().stream()
                                .map(problem -> "This is no plate: " + problem.text())
                                .toList());
        desk.say(lines);
        if (PlateText.read(file.name(), bytes).value().isEmpty()) {
            desk.out().writeBytes(bytes);
        }
        return Exit.FINE;
    }

    private Plate fromLibrary() throws Trouble, LibraryException {
        try (Library library = desk.library(folder.value())) {
            Plate plate = PlateChoice.amongAll(library).plate(word.text());
            if (version.value().isEmpty()) {
                return plate;
            }
            Entry entry = VersionChoice.of(
                            plate, library.history(plate.id()), version.value().get())
                    .entry()
                    .orElseThrow(() -> new Trouble(plate.title() + " was put away in that version."));
            if (entry instanceof Entry.Damaged damaged) {
                throw Trouble.of(damaged.problems());
            }
            return entry.plate().orElseThrow();
        }
    }
}
