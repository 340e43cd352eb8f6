package platekeep.client.command.partner;

import java.nio.file.Path;
import java.util.Optional;
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

/** Chooses the folder of the shared copy, or asks where it is. */
public final class ShareVerb extends LibraryVerb {

    private final Word folder = takes(Times.AT_MOST_ONCE, "FOLDER", "The folder; made where it is not there yet.");

    public ShareVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "share",
                        "Chooses the folder of the copy that you share with your partner; without a folder it tells it.",
                        "platekeep share /media/stick/our-patterns"));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        if (folder.value().isPresent()) {
            library.share(desk.at(folder.value().get()));
        }
        Optional<Path> shared = library.sharedCopy();
        if (asJson()) {
            sayJson(new Value.Builder()
                    .put("shared", shared.map(path -> Value.of(path.toString())).orElse(Value.NOTHING))
                    .build());
        } else {
            say(shared.map(path -> "The shared copy is in " + path + ".").orElse("No shared copy is chosen yet."));
        }
        return Exit.FINE;
    }
}
