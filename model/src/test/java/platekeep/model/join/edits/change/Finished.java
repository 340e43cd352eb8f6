package platekeep.model.join.edits.change;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import platekeep.model.plate.Age;
import platekeep.model.plate.Clash;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** A change carried out: rows first, then moves, then letters and all the rest. */
public final class Finished {
    final Plate base;
    final Change change;
    final Grid ground;
    final Carry carry;
    final Grid grid;
    final Pleats pleats;

    public Finished(Plate base, Change change) {
        this.base = base;
        this.change = change;
        this.ground = Ground.of(base, change);
        this.carry = new Carry(base, change, ground);
        this.grid = carry.grid(ground);
        Pleats was = base.pleats().orElseThrow();
        this.pleats = new Pleats(change.from.orElse(was.from()), change.to.orElse(was.to()));
        for (RowId row : grid.order()) {
            TreeMap<Integer, Character> cells = grid.row(row);
            if (!cells.isEmpty() && (cells.firstKey() < pleats.from() || cells.lastKey() >= pleats.to())) {
                throw new Undetermined("a cable lies outside the chart");
            }
        }
    }

    /** The key under which an ink stands in the finished plate. */
    char letter(char ink) {
        if (ink == Row.EMPTY) {
            return ink;
        }
        if (change.fresh.containsKey(ink)) {
            return change.fresh.get(ink).key();
        }
        return change.keys.getOrDefault(ink, ink);
    }

    String letters(String inks) {
        StringBuilder out = new StringBuilder();
        inks.chars().forEach(c -> out.append(letter((char) c)));
        return out.toString();
    }

    /** The cells of a row that is (or was) on the ground, as text of the finished plate. */
    String rowText(RowId row, TreeMap<Integer, Character> cells) {
        TreeMap<Integer, Character> moved = new TreeMap<>();
        cells.forEach((p, ink) -> {
            if (carry.moveOf(new Cell(row, p)) != null) {
                throw new Undetermined("a row in doubt and a figure that moved");
            }
            moved.put(carry.cell(new Cell(row, p)).position(), ink);
        });
        return letters(Grid.text(moved, pleats.from(), pleats.to()));
    }

    public Plate plate() {
        return plate(List.of());
    }

    /** The plate with these clashes beside those that were open before and were not settled. */
    Plate plate(List<Clash> clashes) {
        Draft draft = base.edit();
        Facts.put(base, draft, change.fields);
        draft.pleats(Optional.of(pleats));
        draft.rows(grid.order().stream()
                .map(r -> new Row(Optional.of(r), letters(Grid.text(grid.row(r), pleats.from(), pleats.to()))))
                .toList());
        draft.palette(palette());
        draft.starts(starts().stream().map(this::start).toList());
        draft.uses(set("for", base.uses()));
        draft.themes(set("themes", base.themes()));
        draft.ages(set("ages", base.ages().stream().map(Age::word).toList()).stream()
                .map(w -> Age.of(w).orElseThrow())
                .toList());
        draft.notes(change.notes.applied(base.notes(), n -> n));
        draft.designers(change.designers.applied(base.designers(), n -> n));
        draft.lines(change.lines.applied(base.lines(), Identities::of).stream()
                .map(l -> l.withColour(letter(l.colour())))
                .toList());
        draft.notions(change.notions.applied(base.notions(), Identities::of));
        draft.marks(marks());
        draft.remarks(remarks());
        List<Clash> all = new ArrayList<>(OpenClashes.carried(this));
        all.addAll(clashes);
        draft.clashes(all.stream().distinct().toList());
        return draft.build();
    }

    private Palette palette() {
        SortedMap<Character, Colour> out = new TreeMap<>();
        base.palette()
                .entries()
                .forEach((ink, colour) ->
                        change.entries.getOrDefault(ink, Optional.of(colour)).ifPresent(c -> put(out, letter(ink), c)));
        change.fresh.forEach((ink, fresh) -> put(out, fresh.key(), fresh.colour()));
        return new Palette(out);
    }

    private static void put(SortedMap<Character, Colour> out, char key, Colour colour) {
        if (out.put(key, colour) != null) {
            throw new Undetermined("two colours under one key");
        }
    }

    /** The starts in terms of the plate before. */
    List<Start> starts() {
        List<Start> out = new ArrayList<>();
        for (int i = 0; i < base.starts().size(); i++) {
            change.starts.getOrDefault(i, Optional.of(base.starts().get(i))).ifPresent(out::add);
        }
        out.addAll(change.newStarts);
        return out;
    }

    /** A start goes along with its cable; upside down, every up becomes a down. */
    Start start(Start start) {
        Cell to = carry.cell(new Cell(start.row(), start.pleat()));
        return start.at(to.row(), to.position(), start.cable().turned(change.motion.upsideDown() ? 1 : 0));
    }

    private List<String> set(String name, List<String> before) {
        Map<String, Boolean> edits = change.sets.getOrDefault(name, Map.of());
        List<String> out = new ArrayList<>(before);
        edits.forEach((word, in) -> {
            out.remove(word);
            if (in) {
                out.add(word);
            }
        });
        return out;
    }

    Mark mark(Mark mark) {
        Map.Entry<RowId, String> to = carry.mark(mark.row(), mark.pleat());
        return mark.at(to.getKey(), to.getValue()).withColour(letter(mark.colour()));
    }

    private List<Mark> marks() {
        Map<String, Mark> out = new LinkedHashMap<>();
        for (Mark m : base.marks()) {
            if (!change.gone.contains(m.row())) {
                out.put(Identities.of(m), m);
            }
        }
        change.marks.forEach((id, mark) -> {
            out.remove(id);
            mark.ifPresent(m -> out.put(id, m));
        });
        return out.values().stream().map(this::mark).toList();
    }

    Remark remark(Remark r) {
        if (r.row().isEmpty() || r.from().isEmpty() || r.to().isEmpty()) {
            return r;
        }
        Cell a = new Cell(r.row().get(), r.from().get());
        Cell b = new Cell(r.row().get(), r.to().get());
        for (int p = a.position(); p <= b.position(); p++) {
            if (carry.moveOf(new Cell(a.row(), p)) != null) {
                throw new Undetermined("whether a remark goes along with a figure");
            }
        }
        int x = carry.cell(a).position();
        int y = carry.cell(b).position();
        return r.at(a.row(), Math.min(x, y), Math.max(x, y));
    }

    private List<Remark> remarks() {
        Map<String, Remark> out = new LinkedHashMap<>();
        for (Remark r : base.remarks()) {
            if (r.row().isEmpty() || !change.gone.contains(r.row().get())) {
                out.put(r.id().text(), r);
            }
        }
        change.remarks.forEach((id, remark) -> {
            out.remove(id);
            remark.ifPresent(r -> out.put(id, r));
        });
        return out.values().stream().map(this::remark).toList();
    }
}
