package platekeep.model.find;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import platekeep.model.plate.Series;
import platekeep.model.text.LibraryFacts;

/**
 * What a plate is found by beside what stands in it, the same for all plates of a library.
 *
 * @param library the library's name
 * @param series titles of the series that a plate is in, by the plate's id
 * @param also what themes are also called, by theme
 */
public record Surroundings(String library, Map<String, List<String>> series, Map<String, List<String>> also) {

    /** Of a library that says nothing. */
    public static final Surroundings NONE = new Surroundings("", Map.of(), Map.of());

    public Surroundings {
        series = Map.copyOf(series);
        also = Map.copyOf(also);
    }

    /** What some themes are also called. */
    List<String> also(List<String> themes) {
        return themes.stream()
                .flatMap(theme -> also.getOrDefault(theme, List.of()).stream())
                .toList();
    }

    /** Of the plates of one library. */
    public static Surroundings of(LibraryFacts facts, List<Series> all) {
        Map<String, List<String>> byPlate = new HashMap<>();
        for (Series series : all) {
            for (String plate : series.plates()) {
                byPlate.computeIfAbsent(plate, id -> new ArrayList<>(1)).add(series.title());
            }
        }
        byPlate.replaceAll((id, titles) -> titles.stream().distinct().toList());
        return new Surroundings(facts.name(), byPlate, facts.themes());
    }
}
