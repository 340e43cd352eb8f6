package platekeep.client.look;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PastPlate;
import platekeep.client.task.Progress;
import platekeep.model.find.Found;
import platekeep.model.find.Query;
import platekeep.model.find.Spot;
import platekeep.model.find.Spots;
import platekeep.model.find.Summary;
import platekeep.model.find.words.Words;
import platekeep.model.look.Mirror;

/**
 * Looks for plates that once had words in them, or were changed by somebody, for a reason or under a name with these
 * words; not for those that have them now, which the gallery finds. The best first; of each plate the newest such version.
 */
final class OnceSaidHunt implements Hunt {
    private static final int MOST_SPOTS = 2;

    private final List<Library> libraries;
    private final OldTexts texts;
    private final String asked;
    private final Set<String> slips = new LinkedHashSet<>();

    OnceSaidHunt(List<Library> libraries, OldTexts texts, String words) {
        this.libraries = libraries;
        this.texts = texts;
        this.asked = words;
    }

    /** Versions that have the words, of each plate one, with where they stand. */
    private record Newest(List<PastPlate> past, Map<PastPlate, Summary> summaries) {}

    @Override
    public Finds run(Progress progress, Consumer<Finds> found) throws LibraryException {
        if (Words.of(asked).isEmpty()) {
            return new Finds(List.of(), 0, "Type a word of a title, theme, colour, note, reason or name of a version.");
        }
        Finds all = Finds.NONE;
        for (Library library : libraries) {
            Finds before = all;
            OldTexts.Texts read = texts.of(library, progress, soFar -> tell(before, library, soFar, progress, found));
            all = with(all, library, read, progress);
        }
        return all;
    }

    private void tell(Finds before, Library library, OldTexts.Texts soFar, Progress progress, Consumer<Finds> found) {
        try {
            Finds now = with(before, library, soFar, progress);
            if (!now.hits().isEmpty()) {
                found.accept(now);
            }
        } catch (LibraryException e) {
            // said when all was read; what is told meanwhile is only a foretaste
            slips.clear();
        }
    }

    private Finds with(Finds before, Library library, OldTexts.Texts read, Progress progress) throws LibraryException {
        Newest newest = newest(read);
        List<Hit> hits = new ArrayList<>(before.hits());
        int room = Math.max(0, Finds.MOST - hits.size());
        List<PastPlate> shown = newest.past().stream().limit(room).toList();
        new Once(library)
                .hits(
                        shown,
                        progress,
                        (one, plate) -> new Once.Why(why(newest.summaries().get(one)), Mirror.NONE, hits::add));
        int all = before.all() + newest.past().size();
        return new Finds(hits, all, summary(all, hits.size()));
    }

    private String summary(int all, int shown) {
        String words = all == 0
                ? "No version that is no more has these words."
                : Counts.of(all, "plate") + " once had these words" + (all > shown ? "; " + shown + " are shown" : "");
        return slips.isEmpty() ? words : words + (words.endsWith(".") ? " " : ". ") + String.join(" ", slips);
    }

    private String why(Summary summary) {
        return Spots.of(summary, asked).stream()
                .limit(MOST_SPOTS)
                .map(OnceSaidHunt::words)
                .collect(Collectors.joining("; "));
    }

    private static String words(Spot spot) {
        String text = spot.text().lines().findFirst().orElse("");
        return spot.place() == Spot.Place.TITLE ? "in its title" : spot.place().word() + ": " + text;
    }

    private Newest newest(OldTexts.Texts read) {
        Found found = read.index().find(Query.ALL.withWords(asked));
        slips.clear();
        found.times()
                .forEach(when -> slips.add("Only versions made " + when.period().words() + "."));
        found.meant()
                .forEach((typed, meant) -> slips.add("No version says \"" + typed + "\"; shown for "
                        + meant.stream().limit(4).collect(Collectors.joining(", ")) + "."));
        Set<String> out = new HashSet<>();
        Map<String, String> newest = new LinkedHashMap<>();
        for (int i = 0; i < found.size(); i++) {
            String key = read.index().at(found.at(i)).key();
            PastPlate one = read.at(key);
            if (one.isNow()) {
                out.add(one.plateId());
            } else {
                newest.merge(one.plateId(), key, (a, b) -> a.compareTo(b) < 0 ? a : b);
            }
        }
        newest.keySet().removeAll(out);
        Map<PastPlate, Summary> summaries = new HashMap<>();
        newest.values()
                .forEach(
                        key -> summaries.put(read.at(key), read.index().get(key).orElseThrow()));
        return new Newest(newest.values().stream().map(read::at).toList(), summaries);
    }
}
