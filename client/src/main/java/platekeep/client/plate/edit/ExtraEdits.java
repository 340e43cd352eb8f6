package platekeep.client.plate.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.model.plate.GatheringRow;
import platekeep.model.plate.Line;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Plate;

/** Geometric lines and what is sewn on, by their place in the plate's lists. */
public final class ExtraEdits {
    /** Lines of geometric smocking that a plate knows (common practice, no source). */
    public static final List<String> LINES = List.of(
            "cable",
            "outline",
            "stem",
            "wheat",
            "baby wave",
            "wave",
            "trellis",
            "diamond",
            "honeycomb",
            "surface honeycomb",
            "feather",
            "van dyke",
            "alternating cable");

    /** What is sewn on. */
    public static final List<String> NOTIONS = List.of("button", "bead", "ribbon flower", "trinket", "ribbon", "tie");

    private ExtraEdits() {}

    /**
     * Puts a line in the place of one of the plate's.
     *
     * @param at which one; at their end it is added
     */
    public static Plate putLine(Plate plate, int at, Line line) {
        return plate.edit().lines(put(plate.lines(), at, Optional.of(line))).build();
    }

    public static Plate removeLine(Plate plate, int at) {
        return plate.edit().lines(put(plate.lines(), at, Optional.empty())).build();
    }

    /** As {@link #putLine}. */
    public static Plate putNotion(Plate plate, int at, Notion notion) {
        return plate.edit()
                .notions(put(plate.notions(), at, Optional.of(notion)))
                .build();
    }

    public static Plate removeNotion(Plate plate, int at) {
        return plate.edit().notions(put(plate.notions(), at, Optional.empty())).build();
    }

    private static <T> List<T> put(List<T> all, int at, Optional<T> one) {
        List<T> changed = new ArrayList<>(all);
        if (at < changed.size()) {
            changed.remove(at);
        }
        one.ifPresent(o -> changed.add(Math.min(at, changed.size()), o));
        return changed;
    }

    /** A line further to the right and down by half spaces; it stays on its rows where there are no such others. */
    public static Line moved(Line line, int pleats, int halfSpaces) {
        Line across = line.moved(pleats);
        Optional<String> on = GatheringRow.lower(line.on(), halfSpaces, 2);
        Optional<String> toRow = line.toRow().flatMap(row -> GatheringRow.lower(row, halfSpaces, 2));
        boolean isThere = on.isPresent() && toRow.isPresent() == line.toRow().isPresent();
        return isThere ? across.onRows(on.get(), toRow) : across;
    }

    /** A line in words. */
    public static String words(Plate plate, Line line) {
        String colour = plate.palette().get(line.colour()).map(c -> c.name()).orElse("an unknown colour");
        return line.stitch()
                + line.steps().map(n -> " of " + n + " steps").orElse("")
                + ", row " + line.on()
                + line.toRow().map(to -> " to " + to).orElse("")
                + ", pleats " + line.from() + " to " + line.to() + ", " + colour + ", " + line.strands()
                + (line.strands() == 1 ? " strand" : " strands");
    }

    /** A notion in words. */
    public static String words(Notion notion) {
        return notion.count() + " x " + notion.kind()
                + notion.size().map(size -> ", " + size).orElse("");
    }
}
