package platekeep.model.find.tag;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import platekeep.model.find.Summary;
import platekeep.model.find.words.Stems;
import platekeep.model.find.words.Words;

/**
 * Themes that some plates may lack: those that plates have which are in the same series, share a theme, or share a
 * telling word of the title. Each such tie counts once for each plate; a theme that most plates of the library have
 * counts less. Linear in the plates.
 */
public final class Suggested {
    private static final double SERIES = 2;
    private static final double THEME = 1;
    private static final double TITLE = 3;

    private final Stems stems = new Stems();
    private final Collection<Summary> all;

    private Suggested(Collection<Summary> all) {
        this.all = all;
    }

    /**
     * The likeliest first, none that all of the plates have.
     *
     * @param plates what themes are looked for
     * @param all where to look, these plates too
     */
    public static List<String> themes(Collection<Summary> plates, Collection<Summary> all, int most) {
        return new Suggested(all).themes(plates, most);
    }

    private List<String> themes(Collection<Summary> plates, int most) {
        Set<String> keys = plates.stream().map(Summary::key).collect(Collectors.toSet());
        Set<String> series = plates.stream().flatMap(p -> p.series().stream()).collect(Collectors.toSet());
        Set<String> themes = plates.stream().flatMap(p -> p.themes().stream()).collect(Collectors.toSet());
        Set<String> titles = plates.stream().flatMap(p -> title(p).stream()).collect(Collectors.toSet());
        Map<String, Integer> counts = new HashMap<>();
        Map<String, Double> ties = new HashMap<>();
        for (Summary other : all) {
            other.themes().forEach(theme -> counts.merge(theme, 1, Integer::sum));
            if (keys.contains(other.key())) {
                continue;
            }
            double tie = (Collections.disjoint(series, other.series()) ? 0 : SERIES)
                    + (Collections.disjoint(themes, other.themes()) ? 0 : THEME)
                    + (Collections.disjoint(titles, title(other)) ? 0 : TITLE);
            if (tie > 0) {
                other.themes().forEach(theme -> ties.merge(theme, tie, Double::sum));
            }
        }
        plates.stream()
                .map(plate -> Set.copyOf(plate.themes()))
                .reduce((a, b) -> a.stream().filter(b::contains).collect(Collectors.toSet()))
                .ifPresent(common -> ties.keySet().removeAll(new HashSet<>(common)));
        return ties.keySet().stream()
                .sorted(java.util.Comparator.comparing(
                                (String theme) -> -ties.get(theme) / Math.sqrt(counts.get(theme)))
                        .thenComparing(theme -> theme))
                .limit(most)
                .toList();
    }

    private Set<String> title(Summary plate) {
        return Words.of(plate.title()).stream()
                .filter(word -> word.length() > 2 && !Stems.isCommon(word))
                .map(stems::of)
                .collect(Collectors.toSet());
    }
}
