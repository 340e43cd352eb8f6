package platekeep.client.series;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import platekeep.client.library.Entry;
import platekeep.client.paper.picture.PaperSource;
import platekeep.client.room.LibraryNames;
import platekeep.client.ui.PictureSource;
import platekeep.client.ui.PlateSource;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;

/**
 * Says what the Series screen shows.
 *
 * @param areSeveral whether several libraries are open
 * @param names what they are called
 */
record SeriesWords(boolean areSeveral, LibraryNames names) {

    SeriesState state(
            List<OpenSeries> all, Optional<OpenSeries> shown, List<SharedColours.Group> groups, boolean isReading) {
        List<SeriesState.Line> lines = all.stream().map(this::line).toList();
        if (shown.isEmpty()) {
            return new SeriesState(lines, -1, "", List.of(), List.of(), List.of(), false, isReading);
        }
        OpenSeries series = shown.get();
        List<SeriesState.Card> cards = new ArrayList<>();
        for (int i = 0; i < series.now().plates().size(); i++) {
            cards.add(card(series.stock(), series.now().plates().get(i), i + 1));
        }
        return new SeriesState(
                lines,
                all.indexOf(series),
                series.now().title(),
                series.now().notes(),
                cards,
                groups.stream().map(SeriesWords::shared).toList(),
                series.isChanged(),
                isReading);
    }

    private SeriesState.Line line(OpenSeries series) {
        return new SeriesState.Line(
                series.now().title(),
                count(series.now().plates().size()) + (series.isChanged() ? "  ·  not saved" : ""),
                areSeveral ? names.of(series.library()) : "");
    }

    private static String count(int plates) {
        return plates == 1 ? "1 plate" : plates + " plates";
    }

    private static SeriesState.Card card(OpenSeries.Stock stock, String id, int number) {
        Optional<Plate> plate = stock.plate(id);
        if (plate.isEmpty() && stock.isAwaited(id)) {
            return new SeriesState.Card(id, number, "…", "is being read", Optional.empty(), true);
        }
        if (plate.isEmpty()) {
            return new SeriesState.Card(
                    id, number, "Not in this library", "put away or moved; its place is kept", Optional.empty(), false);
        }
        Plate p = plate.get();
        String size = p.rows().isEmpty()
                ? "no chart yet"
                : p.pleats().map(pleats -> pleats.count() + " pleats, ").orElse("")
                        + p.rows().size() + " rows";
        return new SeriesState.Card(
                id,
                number,
                p.title(),
                p.number().map(n -> n + "  ·  ").orElse("") + size,
                picture(stock, stock.entries().get(id), p),
                true);
    }

    private static Optional<PictureSource> picture(OpenSeries.Stock stock, Entry entry, Plate plate) {
        return plate.rows().isEmpty()
                ? PaperSource.standingFor(stock.library(), stock.pictures().getOrDefault(plate.id(), List.of()))
                        .map(source -> source)
                : Optional.of(new PlateSource(entry.content(), plate));
    }

    private static SeriesState.Shared shared(SharedColours.Group group) {
        List<Colour> colours =
                group.uses().stream().map(SharedColours.Use::colour).toList();
        String names = String.join(", ", names(colours));
        String in = " in " + count(group.plates());
        String words =
                switch (group.kind()) {
                    case SAME -> names + ": the same" + in;
                    case NEAR ->
                        names + ": almost the same" + in + ", difference up to "
                                + String.format(Locale.ENGLISH, "%.1f", group.farthest());
                    case ONE_NAME ->
                        colours.get(0).name() + ": one name for " + colours.size() + " colours" + in + flosses(colours);
                };
        return new SeriesState.Shared(colours, words, colours.size() > 1);
    }

    private static String flosses(List<Colour> colours) {
        List<String> flosses = colours.stream()
                .flatMap(colour -> colour.floss().stream())
                .map(Object::toString)
                .distinct()
                .toList();
        return flosses.isEmpty() ? "" : " (" + String.join(", ", flosses) + ")";
    }

    private static List<String> names(List<Colour> colours) {
        List<String> names = new ArrayList<>();
        for (Colour colour : colours) {
            String name = colour.name()
                    + colour.floss().map(floss -> " (" + floss + ")").orElse("");
            if (!names.contains(name)) {
                names.add(name);
            }
        }
        return names;
    }

    /** The plates that change when the colours of a group become one thread. */
    static List<SeriesView.Preview> previews(OpenSeries series, SharedColours.Group group, Colour thread) {
        List<SeriesView.Preview> previews = new ArrayList<>();
        for (Plate plate : series.plates()) {
            Plate after = SharedColours.equal(plate, group, thread);
            if (!after.equals(plate)) {
                String content = series.stock().entries().get(plate.id()).content();
                previews.add(new SeriesView.Preview(
                        plate.title(),
                        new PlateSource(content, plate),
                        new PlateSource(content + thread.srgb() + group.hashCode(), after)));
            }
        }
        return previews;
    }

    /** What was changed in a series, as a reason to begin with. */
    static String changes(Series before, Series now) {
        List<String> parts = new ArrayList<>();
        if (!before.title().equals(now.title())) {
            parts.add("renamed");
        }
        List<String> added = new ArrayList<>(now.plates());
        added.removeAll(before.plates());
        List<String> gone = new ArrayList<>(before.plates());
        gone.removeAll(now.plates());
        if (!added.isEmpty()) {
            parts.add(count(added.size()) + " more");
        }
        if (!gone.isEmpty()) {
            parts.add(count(gone.size()) + " less");
        }
        List<String> stayed = new ArrayList<>(before.plates());
        stayed.removeAll(new HashSet<>(gone));
        List<String> order = new ArrayList<>(now.plates());
        order.removeAll(new HashSet<>(added));
        if (!stayed.equals(order)) {
            parts.add("another order");
        }
        if (!before.colours().equals(now.colours())) {
            parts.add("its colours");
        }
        if (!before.notes().equals(now.notes())) {
            parts.add("notes");
        }
        return "Series \"" + now.title() + "\": " + String.join(", ", parts);
    }
}
