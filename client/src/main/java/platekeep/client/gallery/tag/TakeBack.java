package platekeep.client.gallery.tag;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.library.Change;
import platekeep.client.library.Changed;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.model.find.tag.TagReversal;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

/**
 * What taking a change of tags back comes to, worked out before it is done.
 *
 * @param version that changed the tags
 * @param seen the library's newest version when this was worked out
 * @param back plates as they would be
 * @param already how many plates have their tags as before already
 * @param left plates whose tags were changed once more since, by title
 * @param gone plates that were put away since, or whose file is damaged now, by title
 * @param facts what the library would say about itself; empty where that stays
 */
record TakeBack(
        Version version,
        Optional<String> seen,
        List<Plate> back,
        int already,
        List<String> left,
        List<String> gone,
        Optional<LibraryFacts> facts) {

    /** In the background. */
    static TakeBack of(Library library, String versionId) throws LibraryException {
        Optional<String> seen = library.newest().map(Version::id);
        Changed changed = library.changed(versionId, Integer.MAX_VALUE);
        List<Plate> back = new ArrayList<>();
        List<String> left = new ArrayList<>();
        List<String> gone = new ArrayList<>();
        int already = 0;
        for (Changed.Pair pair : changed.plates()) {
            Optional<Plate> now = library.plate(pair.after().id()).flatMap(Entry::plate);
            Optional<Plate> then = now.flatMap(plate -> TagReversal.on(pair.before(), pair.after(), plate));
            if (now.isEmpty()) {
                gone.add(pair.after().title());
            } else if (then.isEmpty()) {
                left.add(now.get().title());
            } else if (then.get().equals(now.get())) {
                already++;
            } else {
                back.add(then.get());
            }
        }
        return new TakeBack(changed.version(), seen, back, already, left, gone, facts(changed, library.facts()));
    }

    private static Optional<LibraryFacts> facts(Changed changed, LibraryFacts now) {
        return changed.before()
                .flatMap(before -> changed.after().map(after -> TagReversal.on(before, after, now)))
                .filter(back -> !back.equals(now));
    }

    boolean isEmpty() {
        return back.isEmpty() && facts.isEmpty();
    }

    Saving saving() {
        List<Change> changes = new ArrayList<>();
        back.forEach(plate -> changes.add(new Change.PutPlate(plate)));
        facts.ifPresent(said -> changes.add(new Change.PutFacts(said)));
        return new Saving(changes, reason(), Optional.empty(), seen);
    }

    String reason() {
        return "Taken back: " + version.reason().lines().findFirst().orElse("");
    }

    /** How many cannot be taken back, and why; empty where all can. */
    String kept() {
        List<String> words = new ArrayList<>();
        if (!left.isEmpty()) {
            words.add(Counted.of(left.size(), "plate") + " had those tags changed again since (" + some(left) + ")");
        }
        if (!gone.isEmpty()) {
            words.add(Counted.of(gone.size(), "plate") + (gone.size() == 1 ? " is" : " are")
                    + " no longer there to be changed (" + some(gone) + ")");
        }
        if (already > 0) {
            words.add(Counted.of(already, "plate") + (already == 1 ? " has" : " have") + " the tags of before already");
        }
        return words.isEmpty() ? "" : String.join("; ", words) + ".";
    }

    private static String some(List<String> titles) {
        int shown = 3;
        return String.join(", ", titles.subList(0, Math.min(shown, titles.size())))
                + (titles.size() > shown ? " …" : "");
    }
}
