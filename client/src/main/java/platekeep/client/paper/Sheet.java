package platekeep.client.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.draft.Drafts;
import platekeep.client.draft.KeptDraft;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.library.Version;
import platekeep.client.paper.picture.PaperSource;
import platekeep.client.ui.PictureSource;
import platekeep.client.ui.PlateSource;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.plate.Plate;

/**
 * A plate in the pile.
 *
 * @param saved as it is in the library
 * @param now with what was typed since
 * @param seen the newest version of the library when it was read
 * @param picture what is seen of it
 */
record Sheet(Library library, Plate saved, Plate now, Optional<String> seen, Optional<PictureSource> picture) {

    /** Reads plates; in the background. Those that are not in the library any more are left out. */
    static List<Sheet> read(Library library, List<String> ids, Drafts drafts) throws LibraryException {
        Optional<String> newest = library.newest().map(Version::id);
        List<Picture> pictures = library.pictures();
        List<Sheet> sheets = new ArrayList<>();
        for (String id : ids) {
            Optional<Entry> entry = library.plate(id);
            Optional<Plate> plate = entry.flatMap(Entry::plate);
            if (plate.isPresent()) {
                List<Picture> own =
                        pictures.stream().filter(p -> p.plateId().equals(id)).toList();
                Plate now = drafts.of(library.folder(), id)
                        .map(draft -> caughtUp(library, draft, plate.get()))
                        .orElse(plate.get());
                sheets.add(
                        new Sheet(library, plate.get(), now, newest, picture(library, own, entry.get(), plate.get())));
            }
        }
        return sheets;
    }

    /** What was typed with what the library got since, so that saving it takes nothing back. */
    private static Plate caughtUp(Library library, KeptDraft kept, Plate saved) {
        Optional<Plate> before = kept.seen().flatMap(version -> plateAt(library, saved.id(), version));
        return before.isEmpty() || before.get().equals(saved)
                ? kept.plate()
                : Join.plate(before, kept.plate(), saved, Hands.UNKNOWN);
    }

    private static Optional<Plate> plateAt(Library library, String plateId, String version) {
        try {
            return library.plateAt(plateId, version).flatMap(Entry::plate);
        } catch (LibraryException e) {
            return Optional.empty(); // another library stands in this folder now, which never had that version
        }
    }

    private static Optional<PictureSource> picture(Library library, List<Picture> own, Entry entry, Plate plate) {
        Optional<PictureSource> paper = PaperSource.standingFor(library, own).map(source -> source);
        return paper.isPresent() || plate.rows().isEmpty()
                ? paper
                : Optional.of(new PlateSource(entry.content(), plate));
    }

    Sheet with(Plate changed) {
        return new Sheet(library, saved, changed, seen, picture);
    }

    String key() {
        return library.folder() + "\n" + saved.id();
    }

    boolean isChanged() {
        return !now.equals(saved);
    }

    /** What is not said of it yet. */
    String missing() {
        List<String> missing = new ArrayList<>();
        if (now.themes().isEmpty()) {
            missing.add("themes");
        }
        if (now.ages().isEmpty()) {
            missing.add("ages");
        }
        if (now.origin().place().isEmpty() && now.rows().isEmpty()) {
            missing.add("place");
        }
        if (now.origin().use().isEmpty() && now.rows().isEmpty()) {
            missing.add("use");
        }
        return missing.isEmpty() ? "" : missing.size() == 4 ? "nothing said yet" : "no " + String.join(", ", missing);
    }
}
