package platekeep.client.command.partner;

import java.util.Optional;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.keep.HandWord;
import platekeep.client.command.keep.LibraryVerb;
import platekeep.client.command.keep.Told;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Hand;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.model.plate.Value;

/** Says who makes versions in a library, or asks. */
public final class HandVerb extends LibraryVerb {

    private final Word word = takes(Times.AT_MOST_ONCE, "\"NAME <ADDRESS>\"", "Who makes versions from now on.");

    public HandVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "hand",
                        "Says who makes versions in this library; without a name it tells who does.",
                        "platekeep hand \"Wenna Tarrow <wenna@harbour.example>\""));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        if (word.value().isPresent()) {
            library.introduce(HandWord.of(word.value().get()));
        }
        Optional<Hand> hand = library.hand();
        if (asJson()) {
            sayJson(new Value.Builder()
                    .put("hand", hand.map(h -> (Value) Told.json(h)).orElse(Value.NOTHING))
                    .build());
        } else {
            say(hand.map(h -> h.name() + " <" + h.address() + ">").orElse("Nobody yet."));
        }
        return Exit.FINE;
    }
}
