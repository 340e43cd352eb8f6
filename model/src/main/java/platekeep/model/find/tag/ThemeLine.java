package platekeep.model.find.tag;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import platekeep.model.find.Summary;
import platekeep.model.find.words.Slips;
import platekeep.model.find.words.Stems;
import platekeep.model.find.words.Words;
import platekeep.model.plate.CodePoints;

/**
 * A theme of a library as it stands.
 *
 * @param theme its word
 * @param plates how many plates have it
 * @param also what it is also called
 * @param near other themes that are nearly the same, of most plates first: another form, other capitals, or one slip of
 *     typing away
 */
public record ThemeLine(String theme, int plates, List<String> also, List<String> near) {
    /** In shorter words one letter often makes another word. */
    private static final int SHORTEST_SLIP = 6;

    public ThemeLine {
        also = List.copyOf(also);
        near = List.copyOf(near);
    }

    public boolean isUnused() {
        return plates == 0;
    }

    /**
     * All themes of a library, those of its list and those of its plates, sorted. Compares each with each.
     *
     * @param list the library's list with what they are also called
     */
    public static List<ThemeLine> of(Collection<Summary> plates, Map<String, List<String>> list) {
        Map<String, Integer> counts = new TreeMap<>(CodePoints.ORDER);
        list.keySet().forEach(theme -> counts.put(theme, 0));
        plates.forEach(plate -> plate.themes().forEach(theme -> counts.merge(theme, 1, Integer::sum)));
        Stems stems = new Stems();
        List<ThemeLine> lines = new ArrayList<>();
        counts.forEach((theme, count) -> {
            List<String> near = counts.keySet().stream()
                    .filter(other -> !other.equals(theme) && isNear(theme, other, stems))
                    .sorted(Comparator.comparing((String other) -> -counts.get(other)))
                    .toList();
            lines.add(new ThemeLine(theme, count, list.getOrDefault(theme, List.of()), near));
        });
        lines.sort(Comparator.comparing(line -> line.theme().toLowerCase(Locale.ROOT)));
        return lines;
    }

    private static boolean isNear(String one, String other, Stems stems) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        return stem(one, stems).equals(stem(other, stems))
                || Math.min(a.length(), b.length()) >= SHORTEST_SLIP && Slips.atMostOne(a, b);
    }

    private static String stem(String theme, Stems stems) {
        return String.join(" ", Words.of(theme).stream().map(stems::of).toList());
    }
}
