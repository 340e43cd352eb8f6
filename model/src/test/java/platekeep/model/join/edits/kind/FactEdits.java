package platekeep.model.join.edits.kind;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import platekeep.model.join.edits.change.Facts;
import platekeep.model.join.edits.change.Identities;
import platekeep.model.join.edits.change.ListChange;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.join.edits.scene.Words;
import platekeep.model.plate.Age;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Remark;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/** Everything about a plate that is not in its rows. */
final class FactEdits {
    private FactEdits() {}

    static void retitle(Studio s) {
        s.change.fields.put("title", Optional.of(Value.of("A New Title " + s.upTo(1000))));
    }

    static void field(Studio s) {
        Map<String, Value> was = Facts.of(s.base);
        String name = s.any(List.of(
                "number",
                "state",
                "origin.use",
                "origin.place",
                "cloth.fullness",
                "cloth.holding",
                "cloth.stacked rows",
                "repeat",
                "hoop",
                "origin.drawer"));
        if (was.containsKey(name) && s.upTo(3) == 0) {
            s.change.fields.put(name, Optional.empty());
            return;
        }
        Value value =
                switch (name) {
                    case "state" -> Value.of(s.any(List.of("idea", "charted", "test-stitched", "published")));
                    case "origin.use" -> Value.of(s.any(List.of("mine", "partner", "class", "publish")));
                    case "cloth.fullness", "cloth.stacked rows" -> Value.of(3 + s.upTo(4));
                    case "cloth.holding" -> Value.ofTexts(List.of("1", String.valueOf(5 + s.upTo(4))));
                    case "repeat" ->
                        new Value.Builder()
                                .put("every", 20 + s.upTo(9))
                                .put("times", 2 + s.upTo(4))
                                .build();
                    case "hoop" ->
                        new Value.Builder().put("a", s.upTo(9)).put("b", "wood").build();
                    default -> Value.of("place " + s.upTo(100));
                };
        if (value.equals(was.get(name))) {
            throw new Undetermined("no change");
        }
        s.change.fields.put(name, Optional.of(value));
    }

    static void themes(Studio s) {
        set(s, "themes", s.base.themes(), Words.THEMES);
    }

    static void uses(Studio s) {
        set(s, "for", s.base.uses(), Words.USES);
    }

    static void ages(Studio s) {
        set(
                s,
                "ages",
                s.base.ages().stream().map(Age::word).toList(),
                List.of(Age.values()).stream().map(Age::word).toList());
    }

    private static void set(Studio s, String name, List<String> before, List<String> words) {
        for (int i = 1 + s.upTo(3); i > 0; i--) {
            String word = s.any(words);
            s.change.set(name, word, !before.contains(word));
        }
    }

    static void notes(Studio s) {
        list(s, s.change.notes, s.base.notes(), n -> n, old -> null, () -> Words.sentence(s.chance));
    }

    static void designers(Studio s) {
        list(s, s.change.designers, s.base.designers(), n -> n, old -> null, () -> "Hand " + s.upTo(100));
    }

    static void lines(Studio s) {
        list(
                s,
                s.change.lines,
                s.base.lines(),
                Identities::of,
                l -> new Line(
                        l.on(),
                        l.toRow(),
                        l.stitch(),
                        l.steps(),
                        l.colour(),
                        l.strands() % 6 + 1,
                        l.from(),
                        l.to() + 1 + s.upTo(3),
                        l.start(),
                        l.unknown()),
                () -> s.maker.line(s.base.palette(), s.base));
    }

    static void notions(Studio s) {
        list(
                s,
                s.change.notions,
                s.base.notions(),
                Identities::of,
                n -> new Notion(n.kind(), n.size(), n.count() + 1 + s.upTo(3), n.unknown()),
                s.maker::notion);
    }

    /** Adds, changes or takes out one or two elements; {@code changed} gives null where elements do not change. */
    private static <T> void list(
            Studio s,
            ListChange<T> change,
            List<T> before,
            Function<T, String> identity,
            Function<T, T> changed,
            java.util.function.Supplier<T> fresh) {
        for (int i = 1 + s.upTo(2); i > 0; i--) {
            int what = s.upTo(3);
            if (what == 0 || before.isEmpty()) {
                T element = fresh.get();
                String id = identity.apply(element);
                boolean there = before.stream().anyMatch(e -> identity.apply(e).equals(id))
                        || change.added().values().stream()
                                .flatMap(List::stream)
                                .anyMatch(e -> identity.apply(e).equals(id));
                if (there || change.added().putIfAbsent(s.upTo(before.size() + 1), List.of(element)) != null) {
                    throw new Undetermined("put in twice");
                }
            } else {
                T element = s.any(before);
                T other = what == 1 ? null : changed.apply(element);
                change.changed().put(identity.apply(element), Optional.ofNullable(other));
            }
        }
    }

    static void marks(Studio s) {
        if (s.base.marks().isEmpty() || s.chance.nextBoolean()) {
            Mark mark = s.maker.mark(s.grid, s.base.palette());
            if (s.base.marks().stream().anyMatch(m -> Identities.of(m).equals(Identities.of(mark)))
                    || s.change.gone.contains(mark.row())) {
                throw new Undetermined("no room");
            }
            s.change.marks.put(Identities.of(mark), Optional.of(mark));
            return;
        }
        Mark mark = s.any(s.base.marks());
        boolean away = s.chance.nextBoolean();
        s.change.marks.put(
                Identities.of(mark), away ? Optional.empty() : Optional.of(mark.withColour(s.inkBut(mark.colour()))));
    }

    static void remarks(Studio s) {
        if (s.base.remarks().isEmpty() || s.upTo(3) == 0) {
            Remark remark = s.maker.remark(s.grid);
            if (remark.row().isPresent() && s.change.gone.contains(remark.row().get())) {
                throw new Undetermined("no room");
            }
            s.change.remarks.put(remark.id().text(), Optional.of(remark));
            return;
        }
        Remark r = s.any(s.base.remarks());
        Optional<Remark> now =
                switch (s.upTo(3)) {
                    case 0 -> Optional.empty();
                    case 1 -> Optional.of(r.withDone(true));
                    default ->
                        Optional.of(new Remark(
                                r.id(),
                                r.row(),
                                r.from(),
                                r.to(),
                                r.by(),
                                r.on(),
                                Words.sentence(s.chance),
                                r.done(),
                                Unknown.NONE));
                };
        s.change.remarks.put(r.id().text(), now);
    }
}
