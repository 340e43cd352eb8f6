package platekeep.client.command.keep;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.file.PlateFile;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Change;
import platekeep.client.library.Hand;
import platekeep.client.library.HandEdit;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.model.stitch.RowIds;

/** Saves a version: of the files changed by hand in the library's folder, or of plate files from elsewhere. */
public final class SaveVerb extends LibraryVerb {

    private final Word files = takes(Times.ANY, "FILE", "Plate files.");

    private final Word reason = option(Times.ONCE, "REASON", "Why.", "--reason");

    private final Word by =
            option(Times.AT_MOST_ONCE, "\"NAME <ADDRESS>\"", "In whose name, when it is not yours.", "--by");

    public SaveVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "save",
                        "Saves a version with a reason. Without FILE it takes in every file that was changed by hand in the library's folder. With FILE it takes in just these: changed by hand there, or plates that lie elsewhere.",
                        "platekeep save --reason \"Lamp one row higher\"",
                        "platekeep save new-kite.json --reason \"A kite for the spring class\""));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        List<HandEdit> edits = library.handEdits();
        if (files.values().isEmpty()) {
            if (edits.isEmpty()) {
                throw new Trouble("No file was changed by hand since the newest version, so there is nothing to save.");
            }
            tellSaved(takeIn(library, edits));
            return Exit.FINE;
        }
        List<HandEdit> named = new ArrayList<>();
        List<PlateFile> others = new ArrayList<>();
        for (String file : files.values()) {
            PlateFile plate = new PlateFile(file, desk.at(file));
            Optional<HandEdit> edit =
                    edits.stream().filter(e -> isAt(library, e, plate.path())).findFirst();
            edit.ifPresentOrElse(named::add, () -> others.add(plate));
        }
        if (!named.isEmpty() && !others.isEmpty()) {
            throw new Trouble("Save files of the library's folder and files from elsewhere one after the other.");
        }
        tellSaved(others.isEmpty() ? takeIn(library, named) : put(library, others));
        return Exit.FINE;
    }

    private static boolean isAt(Library library, HandEdit edit, Path file) {
        return real(library.folder()).resolve(edit.path()).equals(real(file));
    }

    /** The path without links in it, as far as it exists. */
    private static Path real(Path path) {
        try {
            return path.toRealPath();
        } catch (IOException e) {
            return path.toAbsolutePath().normalize();
        }
    }

    private Version takeIn(Library library, List<HandEdit> edits) throws Trouble, LibraryException {
        return library.takeIn(edits, reason.text(), inNameOf());
    }

    private Optional<Hand> inNameOf() throws Trouble {
        return by.value().isPresent() ? Optional.of(HandWord.of(by.value().get())) : Optional.empty();
    }

    private Version put(Library library, List<PlateFile> plates) throws Trouble, LibraryException {
        Optional<Hand> hand = inNameOf();
        Optional<String> seen = library.newest().map(Version::id);
        List<Change> changes = new ArrayList<>();
        for (PlateFile plate : plates) {
            changes.add(new Change.PutPlate(RowIds.given(plate.read())));
        }
        return library.save(new Saving(changes, reason.text(), hand, seen));
    }
}
