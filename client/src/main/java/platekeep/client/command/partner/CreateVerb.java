package platekeep.client.command.partner;

import java.nio.file.Path;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.keep.HandWord;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Verb;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Hand;
import platekeep.client.library.Libraries;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;

/** Makes a new library in an empty folder, or a first copy of a partner's shared copy. */
public final class CreateVerb extends Verb {

    private final Word folder = takes(Times.ONCE, "FOLDER", "The folder, empty or not there yet.");

    private final Word name =
            option(Times.AT_MOST_ONCE, "NAME", "The library's name; without it the folder's.", "--name");

    private final Word hand = option(Times.ONCE, "\"NAME <ADDRESS>\"", "Who makes versions.", "--hand");

    private final Word from =
            option(Times.AT_MOST_ONCE, "SHARED", "The folder of a shared copy to take a copy of.", "--from");

    public CreateVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "create",
                        "Makes a new library in an empty folder, or with --from a first copy of a shared copy.",
                        "platekeep create patterns --name \"Our Partnership\" --hand \"Wenna Tarrow <wenna@harbour.example>\"",
                        "platekeep create patterns --from /media/stick/shared --hand \"Isolde Marsh <isolde@orchard.example>\""));
    }

    @Override
    protected int answer() throws Trouble, LibraryException {
        Hand who = HandWord.of(hand.text());
        Path where = desk.at(folder.text());
        if (from.value().isPresent() && name.value().isPresent()) {
            throw new Trouble("A copy has the name of the library that it is a copy of; leave --name out.");
        }
        Libraries libraries = desk.means().libraries();
        try (Library library = from.value().isPresent()
                ? libraries.copyFrom(desk.at(from.value().get()), where, who)
                : libraries.create(where, name.value().orElse(String.valueOf(where.getFileName())), who)) {
            say("Made the library " + library.name() + " in " + folder.text() + ".");
        }
        return Exit.FINE;
    }
}
