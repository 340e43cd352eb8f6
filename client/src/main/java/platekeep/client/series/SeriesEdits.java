package platekeep.client.series;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Series;

/** Plain functions from a series to a changed one. */
final class SeriesEdits {

    private SeriesEdits() {}

    static Series with(Series series, List<String> plates) {
        return new Series(series.id(), series.title(), plates, series.colours(), series.notes(), series.unknown());
    }

    static Series titled(Series series, String title) {
        return new Series(series.id(), title, series.plates(), series.colours(), series.notes(), series.unknown());
    }

    static Series noted(Series series, List<String> notes) {
        return new Series(series.id(), series.title(), series.plates(), series.colours(), notes, series.unknown());
    }

    static Series coloured(Series series, Palette colours) {
        return new Series(series.id(), series.title(), series.plates(), colours, series.notes(), series.unknown());
    }

    /** Puts plates at the end; one that is in the series already stays where it is. */
    static Series added(Series series, List<String> ids) {
        Set<String> plates = new LinkedHashSet<>(series.plates());
        plates.addAll(ids);
        return with(series, List.copyOf(plates));
    }

    /** Takes the plates at these places out. */
    static Series without(Series series, Set<Integer> places) {
        List<String> plates = new ArrayList<>();
        for (int i = 0; i < series.plates().size(); i++) {
            if (!places.contains(i)) {
                plates.add(series.plates().get(i));
            }
        }
        return with(series, plates);
    }

    /**
     * Moves the plates at these places, kept in their order, to before a place.
     *
     * @param before a place of the order as it was, or the number of plates for the end
     */
    static Series moved(Series series, Set<Integer> places, int before) {
        List<String> moved = new ArrayList<>();
        List<String> rest = new ArrayList<>();
        int at = 0;
        for (int i = 0; i < series.plates().size(); i++) {
            boolean goes = places.contains(i);
            (goes ? moved : rest).add(series.plates().get(i));
            at += !goes && i < before ? 1 : 0;
        }
        rest.addAll(at, moved);
        return with(series, rest);
    }

    /** Moves the plates at these places one place on, or back with a number below 0; at an end they stay. */
    static Series shifted(Series series, Set<Integer> places, int by) {
        TreeSet<Integer> sorted = new TreeSet<>(places);
        int end = by < 0 ? sorted.first() : sorted.last();
        if (end + by < 0 || end + by >= series.plates().size()) {
            return series;
        }
        return moved(series, places, by < 0 ? sorted.first() - 1 : sorted.last() + 2);
    }

    /**
     * What she made of a series, made of what it is now in the library: each change holds, hers where both changed the
     * same.
     *
     * @param base as it was when she began
     * @param hers as she has it
     * @param saved as the library has it now
     */
    static Series caughtUp(Series base, Series hers, Series saved) {
        if (hers.plates().equals(base.plates())) {
            return caughtUp(base, hers, saved, saved.plates());
        }
        List<String> plates = new ArrayList<>();
        for (String id : hers.plates()) {
            if (saved.plates().contains(id) || !base.plates().contains(id)) {
                plates.add(id);
            }
        }
        for (String id : saved.plates()) {
            if (!base.plates().contains(id) && !plates.contains(id)) {
                plates.add(id);
            }
        }
        return caughtUp(base, hers, saved, plates);
    }

    private static Series caughtUp(Series base, Series hers, Series saved, List<String> plates) {
        return new Series(
                saved.id(),
                hers.title().equals(base.title()) ? saved.title() : hers.title(),
                plates,
                hers.colours().equals(base.colours()) ? saved.colours() : hers.colours(),
                hers.notes().equals(base.notes()) ? saved.notes() : hers.notes(),
                saved.unknown());
    }
}
