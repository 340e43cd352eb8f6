package platekeep.client.command.keep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;

/** Puts plates away: they leave the library and stay in its history. */
public final class PutAwayVerb extends LibraryVerb {

    private final Word words = takes(Times.AT_LEAST_ONCE, "PLATE", "Title, number, id or file of each plate.");

    private final Word reason = option(Times.ONCE, "REASON", "Why.", "--reason");

    public PutAwayVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "put-away",
                        "Puts plates away; they stay in the history and can be brought back.",
                        "platekeep put-away \"Old Snail\" --reason \"Replaced by the snail on a leaf\""));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        Optional<String> seen = library.newest().map(Version::id);
        PlateChoice choice = PlateChoice.among(library);
        List<Change> changes = new ArrayList<>();
        for (String word : words.values()) {
            changes.add(new Change.PutAway(choice.plate(word).id()));
        }
        tellSaved(library.save(new Saving(changes, reason.text(), Optional.empty(), seen)));
        return Exit.FINE;
    }
}
