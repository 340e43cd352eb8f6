package platekeep.client.command.keep;

import java.util.List;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Version;
import platekeep.model.plate.Plate;

/** The history of a plate, or of the whole library: who made each version, when and why, newest first. */
public final class HistoryVerb extends LibraryVerb {

    private final Word word = takes(
            Times.AT_MOST_ONCE,
            "PLATE",
            "Title, number, id or file of a plate; without it all versions of the library.");

    public HistoryVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "history",
                        "Says who made each version of a plate, when and why, newest first.",
                        "platekeep history \"Harbour Light\"",
                        "platekeep history --json"));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        if (word.value().isPresent()) {
            Plate plate = PlateChoice.amongAll(library).plate(word.value().get());
            tell(library.history(plate.id()));
        } else {
            tellAll(library.versions(Integer.MAX_VALUE));
        }
        return Exit.FINE;
    }

    private void tell(List<PlateVersion> history) {
        if (asJson()) {
            sayJson(history.stream().map(Told::json).toList());
        } else {
            history.forEach(step -> say(Told.line(step)));
        }
    }

    private void tellAll(List<Version> versions) {
        if (asJson()) {
            sayJson(versions.stream().map(Told::json).toList());
        } else {
            versions.forEach(version -> say(Told.line(version)));
        }
    }
}
