package platekeep.client.command.keep;

import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Verb;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Version;

/** A verb that works on one library: the one in the folder named, else the one around the current folder. */
public abstract class LibraryVerb extends Verb {

    private final Word folder = option(
            Times.AT_MOST_ONCE, "FOLDER", "The library; without it the one around the current folder.", "--library");

    private final Word json = flag("Answer as JSON.", "--json");

    protected LibraryVerb(Desk desk, About about) {
        super(desk, about);
    }

    @Override
    protected final int answer() throws Trouble, LibraryException {
        try (Library library = desk.library(folder.value())) {
            return answer(library);
        }
    }

    /** Carries the verb out in an open library and returns its exit code. */
    protected abstract int answer(Library library) throws Trouble, LibraryException;

    /** Whether another program wants to read the answer. */
    protected final boolean asJson() {
        return json.given();
    }

    /** Tells of the version that was saved. */
    protected final void tellSaved(Version version) {
        if (json.given()) {
            sayJson(Told.json(version));
        } else {
            say("Saved: " + Told.line(version));
        }
    }
}
