package platekeep.client.look;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PastPlate;
import platekeep.client.task.Progress;
import platekeep.model.look.Mirror;

/**
 * Looks for plates that once had words in them, or were changed by somebody or for a reason with these words; not for
 * those that have them now, which the gallery finds. Of each plate the newest such version.
 */
final class OnceSaidHunt implements Hunt {
    private final List<Library> libraries;
    private final Sights sights;
    private final List<String> asked;

    OnceSaidHunt(List<Library> libraries, Sights sights, String words) {
        this.libraries = libraries;
        this.sights = sights;
        this.asked = PlateWords.asked(words);
    }

    @Override
    public Finds run(Progress progress, Consumer<Finds> found) throws LibraryException {
        if (asked.isEmpty()) {
            return new Finds(List.of(), 0, "Type a word of a title, theme, colour, note or reason.");
        }
        List<Hit> hits = new ArrayList<>();
        int all = 0;
        for (Library library : libraries) {
            List<PastPlate> newest = newest(library, progress);
            all += newest.size();
            List<PastPlate> shown = newest.subList(0, Math.min(newest.size(), Finds.MOST - hits.size()));
            new Once(library).hits(shown, progress, (one, plate) -> new Once.Why(why(one), Mirror.NONE, hits::add));
        }
        String summary = all == 0
                ? "No version that is no more has these words."
                : Counts.of(all, "plate") + " once had these words"
                        + (all > hits.size() ? "; " + hits.size() + " are shown" : "");
        return new Finds(hits, all, summary);
    }

    private String why(PastPlate one) {
        return PlateWords.hasAll(sights.words(one), asked) ? "had these words" : "these words are in the reason";
    }

    private List<PastPlate> newest(Library library, Progress progress) throws LibraryException {
        List<PastPlate> past = sights.past(library, progress);
        Set<String> out = new HashSet<>();
        for (Sight sight : sights.now(List.of(library), progress)) {
            if (PlateWords.hasAll(sights.words(sight.content(), sight.plate()), asked)) {
                out.add(sight.plate().id());
            }
        }
        Map<String, String> reasons = sights.reasons(library);
        List<PastPlate> newest = new ArrayList<>();
        for (PastPlate one : past) {
            String words = sights.words(one) + reasons.getOrDefault(one.versionId(), "");
            if (PlateWords.hasAll(words, asked) && out.add(one.plateId())) {
                newest.add(one);
            }
        }
        return newest;
    }
}
