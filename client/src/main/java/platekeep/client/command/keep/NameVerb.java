package platekeep.client.command.keep;

import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.model.plate.Plate;

/** Gives a name to a version of a plate, by which it is found again. */
public final class NameVerb extends LibraryVerb {

    private final Word word = takes(Times.ONCE, "PLATE", "Title, number, id or file of the plate.");

    private final Word version = takes(Times.ONCE, "VERSION", "The version's id or the beginning of it.");

    private final Word name = takes(Times.ONCE, "NAME", "The name.");

    public NameVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "name",
                        "Gives a name to a version of a plate.",
                        "platekeep name \"Harbour Light\" 3f2a90c1 \"Spring class\""));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        Plate plate = PlateChoice.amongAll(library).plate(word.text());
        PlateVersion step = VersionChoice.of(plate, library.history(plate.id()), version.text());
        library.nameVersion(plate.id(), step.version().id(), name.text());
        PlateVersion named = VersionChoice.of(
                plate, library.history(plate.id()), step.version().id());
        if (asJson()) {
            sayJson(Told.json(named));
        } else {
            say("Named: " + Told.line(named));
        }
        return Exit.FINE;
    }
}
