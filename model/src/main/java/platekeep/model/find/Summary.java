package platekeep.model.find;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.Age;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;
import platekeep.model.plate.State;

/**
 * What a plate is found by.
 *
 * @param key tells it from all other summaries of an index; whoever makes summaries chooses what it is
 * @param id the plate's id, which two libraries may share
 * @param library the name of its library
 * @param title as it is shown
 * @param number the designer's own number
 * @param themes sorted
 * @param also what its themes are also called
 * @param ages youngest first
 * @param uses what it is for, sorted
 * @param designers as given
 * @param origin where it comes from and what may be done with it
 * @param state how far it has come
 * @param series titles of the series that it is in
 * @param pleats how many pleats it needs, all repeats together; 0 without a chart
 * @param rows how many rows it has
 * @param colours its palette, each as {@code 0xRRGGBB}
 * @param marks what needs to be known at a glance
 * @param told what its versions tell
 * @param texts notes, names of colours and floss numbers
 */
public record Summary(
        String key,
        String id,
        String library,
        String title,
        Optional<String> number,
        List<String> themes,
        List<String> also,
        List<Age> ages,
        List<String> uses,
        List<String> designers,
        Origin origin,
        Optional<State> state,
        List<String> series,
        int pleats,
        int rows,
        List<Integer> colours,
        Set<Mark> marks,
        Told told,
        List<String> texts) {

    public Summary {
        themes = List.copyOf(themes);
        also = List.copyOf(also);
        ages = List.copyOf(ages);
        uses = List.copyOf(uses);
        designers = List.copyOf(designers);
        series = List.copyOf(series);
        colours = List.copyOf(colours);
        marks = marks.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(marks));
        texts = List.copyOf(texts);
    }

    /** The same under another key. */
    public Summary as(String newKey) {
        return new Summary(
                newKey, id, library, title, number, themes, also, ages, uses, designers, origin, state, series, pleats,
                rows, colours, marks, told, texts);
    }

    /** The same in a library that is called so. */
    public Summary inLibrary(String name) {
        return name.equals(library)
                ? this
                : new Summary(
                        key, id, name, title, number, themes, also, ages, uses, designers, origin, state, series,
                        pleats, rows, colours, marks, told, texts);
    }

    /** The same in other surroundings. */
    public Summary in(Surroundings around) {
        return new Summary(
                key,
                id,
                around.library(),
                title,
                number,
                themes,
                around.also(themes),
                ages,
                uses,
                designers,
                origin,
                state,
                around.series().getOrDefault(id, List.of()),
                pleats,
                rows,
                colours,
                marks,
                told,
                texts);
    }

    /** What a plate is found by, with the marks that show in the plate itself. */
    public static Summary of(String key, Plate plate, Surroundings around) {
        return new Summary(
                key,
                plate.id(),
                around.library(),
                plate.title(),
                plate.number(),
                plate.themes(),
                around.also(plate.themes()),
                plate.ages(),
                plate.uses(),
                plate.designers(),
                plate.origin(),
                plate.state(),
                around.series().getOrDefault(plate.id(), List.of()),
                pleats(plate),
                plate.rows().size(),
                plate.palette().entries().values().stream()
                        .map(colour -> colour.rgb())
                        .toList(),
                marks(plate),
                Told.NOTHING,
                texts(plate));
    }

    private static int pleats(Plate plate) {
        int chart = plate.pleats().map(pleats -> pleats.count()).orElse(0);
        return chart == 0
                ? 0
                : plate.repeat()
                        .map(repeat ->
                                (int) Math.min(Integer.MAX_VALUE, chart + (long) repeat.every() * (repeat.times() - 1)))
                        .orElse(chart);
    }

    private static Set<Mark> marks(Plate plate) {
        Set<Mark> marks = EnumSet.noneOf(Mark.class);
        if (plate.hasClashes()) {
            marks.add(Mark.CLASH);
        }
        if (plate.remarks().stream().anyMatch(remark -> !remark.done())) {
            marks.add(Mark.REMARKS);
        }
        if (plate.pleats().isEmpty()) {
            marks.add(Mark.SCAN);
        }
        return marks;
    }

    private static List<String> texts(Plate plate) {
        List<String> texts = new ArrayList<>(plate.notes());
        plate.palette().entries().values().forEach(colour -> {
            texts.add(colour.name());
            colour.floss().ifPresent(texts::add);
        });
        return texts;
    }

    /** The same with what its versions tell. */
    public Summary withTold(Told newTold) {
        return new Summary(
                key, id, library, title, number, themes, also, ages, uses, designers, origin, state, series, pleats,
                rows, colours, marks, newTold, texts);
    }

    /** The same with a mark, or without it. */
    public Summary withMark(Mark mark, boolean isThere) {
        if (marks.contains(mark) == isThere) {
            return this;
        }
        Set<Mark> newMarks = EnumSet.noneOf(Mark.class);
        newMarks.addAll(marks);
        if (isThere) {
            newMarks.add(mark);
        } else {
            newMarks.remove(mark);
        }
        return new Summary(
                key, id, library, title, number, themes, also, ages, uses, designers, origin, state, series, pleats,
                rows, colours, newMarks, told, texts);
    }

    /** The last year in which a version was made; 0 where that is not known. */
    public int lastYear() {
        return told.days().isEmpty()
                ? 0
                : told.days().get(told.days().size() - 1).getYear();
    }
}
