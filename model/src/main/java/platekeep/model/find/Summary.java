package platekeep.model.find;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;

/**
 * What a plate is found by.
 *
 * @param id the plate's id
 * @param title as it is shown
 * @param number the designer's own number
 * @param themes sorted
 * @param ages youngest first
 * @param series titles of the series that it is in
 * @param pleats how many pleats the chart covers; 0 without a chart
 * @param rows how many rows it has
 * @param text everything that words are looked for in, plain: lower case, no accents, words also in the singular
 */
public record Summary(
        String id,
        String title,
        Optional<String> number,
        List<String> themes,
        List<Age> ages,
        List<String> series,
        int pleats,
        int rows,
        String text) {

    public Summary {
        themes = List.copyOf(themes);
        ages = List.copyOf(ages);
        series = List.copyOf(series);
    }

    /**
     * What a plate is found by.
     *
     * @param all all series of its library, among which those are picked that it is in
     */
    public static Summary of(Plate plate, List<Series> all) {
        List<String> series = all.stream()
                .filter(s -> s.plates().contains(plate.id()))
                .map(Series::title)
                .toList();
        return new Summary(
                plate.id(),
                plate.title(),
                plate.number(),
                plate.themes(),
                plate.ages(),
                series,
                plate.pleats().map(p -> p.count()).orElse(0),
                plate.rows().size(),
                Words.indexed(texts(plate, series)));
    }

    private static List<String> texts(Plate plate, List<String> series) {
        List<String> texts = new ArrayList<>();
        texts.add(plate.title());
        plate.number().ifPresent(texts::add);
        texts.addAll(plate.themes());
        plate.ages().forEach(age -> texts.add(age.word()));
        texts.addAll(plate.uses());
        texts.addAll(plate.designers());
        texts.addAll(plate.notes());
        texts.addAll(series);
        plate.state().ifPresent(state -> texts.add(state.word()));
        plate.origin().by().ifPresent(texts::add);
        plate.origin().place().ifPresent(texts::add);
        plate.palette().entries().values().forEach(colour -> {
            texts.add(colour.name());
            colour.floss().ifPresent(texts::add);
        });
        return texts;
    }
}
