package platekeep.model.join.edits.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import platekeep.model.plate.Clash;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Remark;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Value;

/** Fields, sets, lists, marks and remarks. */
final class FactsTogether {
    private final Together both;

    FactsTogether(Together both) {
        this.both = both;
    }

    void join() {
        fields();
        sets();
        both.joined.notes = list(both.mine.notes, both.theirs.notes, both.base.notes(), n -> n, n -> n, null);
        both.joined.designers =
                list(both.mine.designers, both.theirs.designers, both.base.designers(), n -> n, n -> n, null);
        both.joined.lines = list(
                both.mine.lines,
                both.theirs.lines,
                both.base.lines(),
                Identities::of,
                l -> l.value().text(),
                (l, f) -> clash(Clash.What.LINE, Identities.place(l), x -> line(x, f)));
        both.joined.notions = list(
                both.mine.notions,
                both.theirs.notions,
                both.base.notions(),
                Identities::of,
                n -> n.value().text(),
                (n, f) -> clash(Clash.What.NOTION, Identities.place(n), Notion::value));
        marks();
        remarks();
    }

    private void fields() {
        Map<String, Value> was = Facts.of(both.base);
        Together.each(both.mine.fields, both.theirs.fields, both.joined.fields, (name, m, t) -> {
            both.clashes.add(f -> Together.clash(
                    Clash.What.FIELD,
                    OpenClashes.place("field", name),
                    was.getOrDefault(name, Value.NOTHING),
                    m.orElse(Value.NOTHING),
                    t.orElse(Value.NOTHING)));
            return Optional.empty();
        });
    }

    private void sets() {
        both.both((side, other) -> {
            side.sets.forEach((name, words) -> words.forEach((word, in) -> both.joined.set(name, word, in)));
            return null;
        });
    }

    /** How an element's clash is told: place and values, once it is known where everything ends up. */
    record Told<T>(Clash.What what, Value.Entries place, Function<T, Value> value) {}

    private static <T> Told<T> clash(Clash.What what, Value.Entries place, Function<T, Value> value) {
        return new Told<>(what, place, value);
    }

    private static Value line(Line line, Finished f) {
        return line.withColour(f.letter(line.colour())).value();
    }

    private <T> ListChange<T> list(
            ListChange<T> mine,
            ListChange<T> theirs,
            List<T> before,
            Function<T, String> identity,
            Function<T, String> text,
            BiFunction<T, Finished, Told<T>> told) {
        ListChange<T> out = new ListChange<>();
        Map<String, T> was = new LinkedHashMap<>();
        before.forEach(e -> was.put(identity.apply(e), e));
        Together.each(mine.changed(), theirs.changed(), out.changed(), (id, m, t) -> {
            T old = was.get(id);
            both.clashes.add(f -> {
                Told<T> clash = told.apply(old, f);
                return Together.clash(
                        clash.what(),
                        clash.place(),
                        clash.value().apply(old),
                        m.map(clash.value()).orElse(Value.NOTHING),
                        t.map(clash.value()).orElse(Value.NOTHING));
            });
            return Together.changedStands(m, t);
        });
        for (int gap = 0; gap <= before.size(); gap++) {
            List<T> m = mine.added().getOrDefault(gap, List.of());
            List<T> t = theirs.added().getOrDefault(gap, List.of());
            if (!m.isEmpty() || !t.isEmpty()) {
                out.added().put(gap, oneAfterTheOther(m, t, identity, text));
            }
        }
        checkGaps(mine, theirs, out, before, identity);
        return out;
    }

    private static <T> List<T> oneAfterTheOther(
            List<T> m, List<T> t, Function<T, String> identity, Function<T, String> text) {
        if (m.isEmpty() || t.isEmpty() || m.equals(t)) {
            return m.isEmpty() ? t : m;
        }
        if (m.size() > 1 || t.size() > 1 || identity.apply(m.get(0)).equals(identity.apply(t.get(0)))) {
            throw new Undetermined("the order of several things put in at one place");
        }
        List<T> out = new ArrayList<>(m);
        out.addAll(t);
        out.sort(Comparator.comparing(text, CodePoints.ORDER));
        return out;
    }

    private static <T> void checkGaps(
            ListChange<T> mine,
            ListChange<T> theirs,
            ListChange<T> joined,
            List<T> before,
            Function<T, String> identity) {
        for (int gap = 0; gap <= before.size(); gap++) {
            boolean m = mine.added().containsKey(gap);
            boolean t = theirs.added().containsKey(gap);
            boolean open = joined.openBeside(gap, before, identity);
            if ((m || t) && open && !mine.added().isEmpty() && !theirs.added().isEmpty()) {
                if (!mine.added().equals(theirs.added())) {
                    throw new Undetermined("put in on both sides beside something taken out");
                }
            }
        }
        List<String> all = new ArrayList<>();
        mine.added().values().forEach(l -> l.forEach(e -> all.add(identity.apply(e))));
        theirs.added().values().forEach(l -> l.forEach(e -> all.add(identity.apply(e))));
        boolean twice = all.stream().distinct().count() != all.size();
        if (twice && !mine.added().equals(theirs.added())) {
            throw new Undetermined("the same thing put in at two places");
        }
    }

    private void marks() {
        Map<String, Mark> was = new LinkedHashMap<>();
        both.base.marks().forEach(m -> was.put(Identities.of(m), m));
        Together.each(both.mine.marks, both.theirs.marks, both.joined.marks, (id, m, t) -> {
            Mark old = Optional.ofNullable(was.get(id)).orElseThrow(() -> new Undetermined("one new mark, two ways"));
            both.clashes.add(f -> tell(old, Optional.of(old), m, t, f));
            return Together.changedStands(m, t);
        });
        both.both((side, other) -> {
            side.marks.forEach((id, mark) -> mark.filter(m -> goneOnlyIn(other, side, m.row()))
                    .ifPresent(m -> both.clashes.add(
                            f -> tell(m, Optional.ofNullable(was.get(id)), mark, Optional.empty(), f))));
            return null;
        });
    }

    private boolean goneOnlyIn(Change other, Change side, RowId row) {
        if (other.gone.contains(row) && side.paint.containsKey(row)) {
            throw new Undetermined("a mark on a row in doubt");
        }
        return other.gone.contains(row);
    }

    private static Clash tell(Mark at, Optional<Mark> old, Optional<Mark> m, Optional<Mark> t, Finished f) {
        Function<Optional<Mark>, Value> value =
                x -> x.map(k -> (Value) f.mark(k).value()).orElse(Value.NOTHING);
        return Together.clash(
                Clash.What.MARK, Identities.place(f.mark(at)), value.apply(old), value.apply(m), value.apply(t));
    }

    private void remarks() {
        Map<String, Remark> was = new LinkedHashMap<>();
        both.base.remarks().forEach(r -> was.put(r.id().text(), r));
        Together.each(both.mine.remarks, both.theirs.remarks, both.joined.remarks, (id, m, t) -> {
            both.clashes.add(f -> tell(id, was.get(id), m, t, f));
            return Together.changedStands(m, t);
        });
        both.both((side, other) -> {
            side.remarks.forEach((id, remark) -> remark.filter(r ->
                            r.row().map(row -> goneOnlyIn(other, side, row)).orElse(false))
                    .ifPresent(r -> both.clashes.add(f -> tell(id, was.get(id), remark, Optional.empty(), f))));
            return null;
        });
    }

    private static Clash tell(String id, Remark old, Optional<Remark> m, Optional<Remark> t, Finished f) {
        Function<Optional<Remark>, Value> value =
                x -> x.map(r -> (Value) f.remark(r).value()).orElse(Value.NOTHING);
        return Together.clash(
                Clash.What.REMARK,
                OpenClashes.place("id", id),
                Objects.isNull(old) ? Value.NOTHING : f.remark(old).value(),
                value.apply(m),
                value.apply(t));
    }
}
