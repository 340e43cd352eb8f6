package platekeep.model.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import platekeep.model.plate.Age;
import platekeep.model.plate.Clash;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.State;

/** Reads the topmost object of a plate's text. */
final class PlateReader {
    static final List<String> KEYS = List.of(
            "format",
            "id",
            "title",
            "number",
            "origin",
            "from plate",
            "state",
            "for",
            "themes",
            "ages",
            "designers",
            "notes",
            "colours",
            "pleats",
            "cloth",
            "starts",
            "repeat",
            "rows",
            "lines",
            "marks",
            "notions",
            "remarks",
            "clashes");
    private static final List<String> PLEATS = List.of("from", "to");

    private final Fields top;
    private final Shapes shapes;
    private final Problems problems;
    private final PartReader parts;

    PlateReader(Piece.Obj top, Problems problems) {
        this.problems = problems;
        this.shapes = new Shapes(problems);
        this.top = new Fields(top, KEYS, shapes);
        this.parts = new PartReader(shapes);
    }

    /** The plate; it holds stand-ins where the text is refused, so it counts only when no problem was found. */
    Plate plate() {
        Palette palette = parts.palette(top.required("colours"));
        Optional<Pleats> pleats = pleats();
        RowsReader rowsReader = new RowsReader(shapes, palette, pleats);
        ClashReader clashReader = new ClashReader(parts, rowsReader);
        List<Start> starts = PartReader.each(top.maybeList("starts"), parts::start);
        List<Mark> marks = PartReader.each(top.maybeList("marks"), parts::mark);
        List<Remark> remarks = remarks();
        List<Clash> clashes = PartReader.each(top.maybeList("clashes"), clashReader::clash);
        Draft draft = new Draft(
                        top.fitting("id", Rule.ID_FORM, Words.UUID, Words.UUID_SAID),
                        top.fitting("title", Rule.TITLE_BLANK, Words.NOT_BLANK, "a title that is not blank"))
                .palette(palette)
                .pleats(pleats)
                .rows(rows(rowsReader))
                .starts(starts)
                .lines(PartReader.each(top.maybeList("lines"), parts::line))
                .marks(marks)
                .notions(PartReader.each(top.maybeList("notions"), parts::notion))
                .remarks(remarks)
                .clashes(clashes);
        Plate plate = sets(facts(draft)).unknown(top.unknown()).build();
        ordered("starts", starts, plate.starts());
        ordered("marks", marks, plate.marks());
        ordered("remarks", remarks, plate.remarks());
        ordered("clashes", clashes, plate.clashes());
        return plate;
    }

    private Draft facts(Draft draft) {
        return draft.number(top.maybeText("number"))
                .origin(parts.origin(top))
                .fromPlate(top.piece("from plate").flatMap(parts::fromPlate))
                .state(top.maybeFitting("state", Rule.STATE_WORD, Words.STATE, Words.STATE_SAID)
                        .flatMap(State::of))
                .designers(top.texts("designers"))
                .notes(top.texts("notes"))
                .cloth(parts.cloth(top))
                .repeat(top.piece("repeat").flatMap(parts::repeat));
    }

    private Draft sets(Draft draft) {
        List<String> uses = shapes.set(top.maybeList("for"), "for", p -> shapes.text(p, "for"));
        List<String> themes = shapes.set(top.list("themes"), "themes", p -> shapes.text(p, "themes"));
        List<Age> ages = ages();
        ordered("for", uses, uses.stream().sorted(CodePoints.ORDER).toList());
        ordered("themes", themes, themes.stream().sorted(CodePoints.ORDER).toList());
        ordered("ages", ages, ages.stream().sorted().toList());
        return draft.uses(uses).themes(themes).ages(ages);
    }

    private List<Age> ages() {
        List<String> words = shapes.set(
                top.list("ages"), "ages", p -> shapes.fitting(p, "ages", Rule.AGE_WORD, Words.AGE, Words.AGE_SAID));
        return words.stream().flatMap(word -> Age.of(word).stream()).toList();
    }

    private Optional<Pleats> pleats() {
        Optional<Fields> fields = top.piece("pleats").flatMap(p -> shapes.fields(p, "pleats", PLEATS));
        return fields.flatMap(f -> {
            int before = problems.refusedCount();
            int from = f.whole("from", Rule.PLEATS_RANGE, -Pleats.FARTHEST, Pleats.FARTHEST);
            int to = f.whole("to", Rule.PLEATS_RANGE, -Pleats.FARTHEST, Pleats.FARTHEST);
            boolean fits = to - from >= 1 && to - from <= Pleats.MOST_POSITIONS;
            if (!fits && problems.refusedCount() == before) {
                problems.found(
                        Rule.PLEATS_SPAN,
                        f.at(),
                        "the chart covers 2 to " + (Pleats.MOST_POSITIONS + 1) + " pleats, not those from " + from
                                + " to " + to + "; change an end.");
            }
            return fits ? Optional.of(new Pleats(from, to, f.unknown())) : Optional.empty();
        });
    }

    private List<Row> rows(RowsReader reader) {
        List<Piece> pieces = top.list("rows");
        if (!pieces.isEmpty() && top.piece("pleats").isEmpty()) {
            problems.found(
                    Rule.PLEATS_MISSING,
                    top.at("rows"),
                    "there are rows but no \"pleats\" that they lie on; add them.");
        }
        return reader.rows(pieces, top.at("rows"));
    }

    /** Remarks: one that stands twice is left out once; another one under the same id gets an id of its own. */
    private List<Remark> remarks() {
        List<Piece> pieces = top.maybeList("remarks");
        List<Optional<Remark>> read = pieces.stream().map(parts::remark).toList();
        Set<RowId> taken = new HashSet<>();
        read.forEach(remark -> remark.ifPresent(r -> taken.add(r.id())));
        Set<RowId> given = new HashSet<>();
        Set<Remark> seen = new HashSet<>();
        List<Remark> out = new ArrayList<>();
        for (int i = 0; i < pieces.size(); i++) {
            if (read.get(i).isEmpty()) {
                continue;
            }
            Remark remark = read.get(i).get();
            int at = pieces.get(i).at();
            if (!seen.add(remark)) {
                problems.found(Rule.DOUBLE, at, "a remark stood twice; one is left out now.");
            } else if (given.add(remark.id())) {
                out.add(remark);
            } else {
                out.add(withOwnId(remark, at, taken));
            }
        }
        return out;
    }

    private Remark withOwnId(Remark remark, int at, Set<RowId> taken) {
        RowId own = RowId.derived(remark.value().text(), taken::contains);
        taken.add(own);
        problems.found(
                Rule.DOUBLE_ID, at, "the remark's id " + remark.id() + " stands above already; now it is " + own + ".");
        return remark.withId(own);
    }

    private void ordered(String key, List<?> given, List<?> sorted) {
        shapes.inOrder(key, top.at(key), given, sorted);
    }
}
