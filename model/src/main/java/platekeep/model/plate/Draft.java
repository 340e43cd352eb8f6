package platekeep.model.plate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * A plate being changed. Each setter replaces one thing; {@link #build()} gives the plate with its sets and lists in
 * canonical order, so callers never sort. Not for sharing.
 */
public final class Draft {
    private static final Comparator<Remark> REMARK_ORDER = Comparator.comparing(Remark::on)
            .thenComparing(Remark::id)
            .thenComparing(r -> r.value().text(), CodePoints.ORDER);

    private String id = "";
    private String title = "";
    private Optional<String> number = Optional.empty();
    private Origin origin = Origin.NONE;
    private Optional<FromPlate> fromPlate = Optional.empty();
    private Optional<State> state = Optional.empty();
    private List<String> uses = List.of();
    private List<String> themes = List.of();
    private List<Age> ages = List.of();
    private List<String> designers = List.of();
    private List<String> notes = List.of();
    private Palette palette = Palette.EMPTY;
    private Optional<Pleats> pleats = Optional.empty();
    private Cloth cloth = Cloth.NONE;
    private List<Start> starts = List.of();
    private Optional<Repeat> repeat = Optional.empty();
    private List<Row> rows = List.of();
    private List<Line> lines = List.of();
    private List<Mark> marks = List.of();
    private List<Notion> notions = List.of();
    private List<Remark> remarks = List.of();
    private List<Clash> clashes = List.of();
    private Unknown unknown = Unknown.NONE;

    /** A new plate with nothing in it but its identity and title. */
    public Draft(String id, String title) {
        this.id = id;
        this.title = title;
    }

    Draft(Plate plate) {
        this.id = plate.id();
        this.title = plate.title();
        this.number = plate.number();
        this.origin = plate.origin();
        this.fromPlate = plate.fromPlate();
        this.state = plate.state();
        this.uses = plate.uses();
        this.themes = plate.themes();
        this.ages = plate.ages();
        this.designers = plate.designers();
        this.notes = plate.notes();
        this.palette = plate.palette();
        this.pleats = plate.pleats();
        this.cloth = plate.cloth();
        this.starts = plate.starts();
        this.repeat = plate.repeat();
        this.rows = plate.rows();
        this.lines = plate.lines();
        this.marks = plate.marks();
        this.notions = plate.notions();
        this.remarks = plate.remarks();
        this.clashes = plate.clashes();
        this.unknown = plate.unknown();
    }

    public Draft id(String newId) {
        this.id = newId;
        return this;
    }

    public Draft title(String newTitle) {
        this.title = newTitle;
        return this;
    }

    public Draft number(Optional<String> newNumber) {
        this.number = newNumber;
        return this;
    }

    public Draft origin(Origin newOrigin) {
        this.origin = newOrigin;
        return this;
    }

    public Draft fromPlate(Optional<FromPlate> newFromPlate) {
        this.fromPlate = newFromPlate;
        return this;
    }

    public Draft state(Optional<State> newState) {
        this.state = newState;
        return this;
    }

    public Draft uses(List<String> newUses) {
        this.uses = newUses;
        return this;
    }

    public Draft themes(List<String> newThemes) {
        this.themes = newThemes;
        return this;
    }

    public Draft ages(List<Age> newAges) {
        this.ages = newAges;
        return this;
    }

    public Draft designers(List<String> newDesigners) {
        this.designers = newDesigners;
        return this;
    }

    public Draft notes(List<String> newNotes) {
        this.notes = newNotes;
        return this;
    }

    public Draft palette(Palette newPalette) {
        this.palette = newPalette;
        return this;
    }

    public Draft pleats(Optional<Pleats> newPleats) {
        this.pleats = newPleats;
        return this;
    }

    public Draft cloth(Cloth newCloth) {
        this.cloth = newCloth;
        return this;
    }

    public Draft starts(List<Start> newStarts) {
        this.starts = newStarts;
        return this;
    }

    public Draft repeat(Optional<Repeat> newRepeat) {
        this.repeat = newRepeat;
        return this;
    }

    public Draft rows(List<Row> newRows) {
        this.rows = newRows;
        return this;
    }

    public Draft lines(List<Line> newLines) {
        this.lines = newLines;
        return this;
    }

    public Draft marks(List<Mark> newMarks) {
        this.marks = newMarks;
        return this;
    }

    public Draft notions(List<Notion> newNotions) {
        this.notions = newNotions;
        return this;
    }

    public Draft remarks(List<Remark> newRemarks) {
        this.remarks = newRemarks;
        return this;
    }

    public Draft clashes(List<Clash> newClashes) {
        this.clashes = newClashes;
        return this;
    }

    public Draft unknown(Unknown newUnknown) {
        this.unknown = newUnknown;
        return this;
    }

    /** The plate, with sets sorted and without doubles, starts, marks, remarks and clashes in their order. */
    public Plate build() {
        return new Plate(
                id,
                title,
                number,
                origin,
                fromPlate,
                state,
                set(uses),
                set(themes),
                ages.isEmpty() ? List.of() : List.copyOf(EnumSet.copyOf(ages)),
                designers,
                notes,
                palette,
                pleats,
                cloth,
                sorted(starts, () -> startOrder(heights(starts, Start::row))),
                repeat,
                rows,
                lines,
                sorted(marks, () -> markOrder(heights(marks, Mark::row))),
                notions,
                sorted(remarks, () -> REMARK_ORDER),
                sorted(clashes, () -> new ClashOrder(rows)),
                unknown);
    }

    /** The ids of the rows on which these stand to their height above the bottom row; the first of two equal ids counts. */
    private <T> Map<RowId, Integer> heights(List<T> those, Function<T, RowId> on) {
        Set<RowId> wanted = new HashSet<>();
        those.forEach(one -> wanted.add(on.apply(one)));
        Map<RowId, Integer> height = new HashMap<>();
        for (int i = 0; i < rows.size() && !wanted.isEmpty(); i++) {
            Optional<RowId> id = rows.get(i).id();
            if (id.isPresent() && wanted.remove(id.get())) {
                height.put(id.get(), rows.size() - 1 - i);
            }
        }
        return height;
    }

    /** From the bottom, then the left; what stands on no row comes last. */
    private static Comparator<Start> startOrder(Map<RowId, Integer> height) {
        return Comparator.comparingInt((Start s) -> height.getOrDefault(s.row(), Integer.MAX_VALUE))
                .thenComparing(s -> height.containsKey(s.row()) ? "" : s.row().text())
                .thenComparingInt(Start::pleat)
                .thenComparing(s -> s.value().text(), CodePoints.ORDER);
    }

    private static Comparator<Mark> markOrder(Map<RowId, Integer> height) {
        return Comparator.comparingInt((Mark m) -> height.getOrDefault(m.row(), Integer.MAX_VALUE))
                .thenComparing(m -> height.containsKey(m.row()) ? "" : m.row().text())
                .thenComparingDouble(Mark::place)
                .thenComparing(Mark::stitch, CodePoints.ORDER)
                .thenComparing(m -> m.value().text(), CodePoints.ORDER);
    }

    private static List<String> set(List<String> texts) {
        if (CodePoints.rise(texts)) {
            return List.copyOf(texts);
        }
        TreeSet<String> sorted = new TreeSet<>(CodePoints.ORDER);
        texts.forEach(text -> sorted.add(CodePoints.nfc(text)));
        return List.copyOf(sorted);
    }

    /** The list in order; what the order is, is found out only where there is something to sort. */
    private static <T> List<T> sorted(List<T> list, Supplier<Comparator<? super T>> order) {
        if (list.size() < 2) {
            return list;
        }
        List<T> copy = new ArrayList<>(list);
        copy.sort(order.get());
        return copy;
    }
}
