package platekeep.client.command.keep;

import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.model.plate.Plate;

/** Brings an old version of a plate back as a new version, or a plate that was put away. */
public final class BringBackVerb extends LibraryVerb {

    private final Word word = takes(Times.ONCE, "PLATE", "Title, number, id or file of the plate.");

    private final Word version = option(
            Times.AT_MOST_ONCE,
            "VERSION",
            "Which version, by its id or name; without it the last one of a plate that was put away.",
            "--version");

    private final Word reason = option(Times.AT_MOST_ONCE, "REASON", "Why.", "--reason");

    public BringBackVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "bring-back",
                        "Brings an old version of a plate back, or a plate that was put away, as a new version.",
                        "platekeep bring-back \"Harbour Light\" --version \"Spring class\"",
                        "platekeep bring-back \"Old Snail\""));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        Optional<String> seen = library.newest().map(Version::id);
        Plate plate = PlateChoice.amongAll(library).plate(word.text());
        List<PlateVersion> history = library.history(plate.id());
        PlateVersion step = version.value().isPresent()
                ? VersionChoice.of(plate, history, version.value().get())
                : lastBeforePutAway(plate, history);
        String why = reason.value()
                .orElseGet(() -> "Brought back " + plate.title() + " as of "
                        + step.version().on().toLocalDate());
        List<Change> changes = List.of(new Change.PutPlate(old(plate, step)));
        tellSaved(library.save(new Saving(changes, why, Optional.empty(), seen)));
        return Exit.FINE;
    }

    private static PlateVersion lastBeforePutAway(Plate plate, List<PlateVersion> history) throws Trouble {
        boolean away = !history.isEmpty() && history.get(0).entry().isEmpty();
        return history.stream()
                .filter(step -> away && step.entry().isPresent())
                .findFirst()
                .orElseThrow(() -> new Trouble(
                        plate.title() + " was not put away; say with --version which version to bring back."));
    }

    private static Plate old(Plate plate, PlateVersion step) throws Trouble {
        Entry entry = step.entry().orElseThrow(() -> new Trouble(plate.title() + " was put away in that version."));
        if (entry instanceof Entry.Damaged damaged) {
            throw Trouble.of(damaged.problems());
        }
        return entry.plate().orElseThrow();
    }
}
