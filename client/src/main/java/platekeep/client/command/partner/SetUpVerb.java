package platekeep.client.command.partner;

import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.keep.LibraryVerb;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.model.plate.Value;

/** For those who use Git itself on a library: lets it compare and join plates with this program, or takes it back. */
public final class SetUpVerb extends LibraryVerb {

    private final Word word = takes(Times.ONCE, "on|off", "on or off.");

    public SetUpVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "setup-git",
                        "For people who use Git itself on a library's folder: \"on\" lets it show changes of plates and join plates with this program, \"off\" takes that back. Only this copy of the library is set up.",
                        "platekeep setup-git on --library patterns"));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        switch (word.text()) {
            case "on" -> desk.means().setUp().on(library.folder());
            case "off" -> desk.means().setUp().off(library.folder());
            default -> throw new Trouble("Say \"platekeep setup-git on\" or \"platekeep setup-git off\".");
        }
        if (asJson()) {
            sayJson(new Value.Builder().put("git", word.text()).build());
        } else if (word.text().equals("on")) {
            say("Git now compares and joins the plates of " + library.name() + " with this program.");
        } else {
            say("Git leaves the plates of " + library.name() + " alone again.");
        }
        return Exit.FINE;
    }
}
