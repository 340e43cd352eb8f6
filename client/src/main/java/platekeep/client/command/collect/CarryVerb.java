package platekeep.client.command.collect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Carrier;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.keep.LibraryVerb;
import platekeep.client.command.keep.PlateChoice;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.model.plate.Value;

/** Copies plates into another library, or moves them there. */
public final class CarryVerb extends LibraryVerb {

    private final Word words = takes(Times.AT_LEAST_ONCE, "PLATE", "Title, number, id or file of each plate.");

    private final Word to = option(Times.ONCE, "FOLDER", "The library that they go to.", "--to");

    private final Word move = flag("Put them away here afterwards; their history stays.", "--move");

    private final Word look = flag("Only say what would happen; nothing is changed.", "--look");

    public CarryVerb(Desk desk) {
        super(
                desk,
                new About(
                        "carry",
                        "Copies plates into another library, or moves them there, with their scans and photos."
                                + " Each keeps its id and what it was started from. What is there already and different is"
                                + " never written over.",
                        "0 done; 1 some plates were left as they are, since they are there already and different or drawn"
                                + " on and not saved; 2 trouble.",
                        List.of(
                                "platekeep carry \"Harbour Light\" H-12 --to ../ours",
                                "platekeep carry \"Old Snail\" --to ../archive --move --look")));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        PlateChoice choice = PlateChoice.among(library);
        List<String> ids = new ArrayList<>();
        for (String word : words.values()) {
            ids.add(choice.plate(word).id());
        }
        try (Library other = desk.library(Optional.of(to.text()))) {
            if (other.folder().equals(library.folder())) {
                throw new Trouble("The plates are in that library already: --to names the one that they lie in.");
            }
            Carrier.Way way = move.given() ? Carrier.Way.MOVE : Carrier.Way.COPY;
            return carry(desk.means().carrier().load(library, ids, other, way));
        }
    }

    private int carry(Carrier.Load load) throws LibraryException {
        boolean isDone = load.doesSomething() && !look.given();
        Optional<String> reason = isDone ? Optional.of(load.carry()) : Optional.empty();
        if (asJson()) {
            sayJson(new Value.Builder()
                    .put("done", Value.of(isDone))
                    .put("carried", Value.ofTexts(load.carried()))
                    .put("left", Value.ofTexts(load.left()))
                    .put("words", Value.ofTexts(load.words()))
                    .build());
        } else {
            load.words().forEach(this::say);
            say(reason.map(text -> "Saved: " + text).orElse("Nothing was changed."));
        }
        return load.left().isEmpty() ? Exit.FINE : Exit.FOUND;
    }
}
