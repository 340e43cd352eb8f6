package platekeep.model.join.edits.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;
import platekeep.model.join.edits.change.Identities;
import platekeep.model.join.edits.change.Undetermined;
import platekeep.model.join.edits.scene.Words;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/** The palette. */
final class ColourEdits {
    private ColourEdits() {}

    private static Colour entry(Studio s, char ink) {
        return s.base.palette().get(ink).orElseThrow();
    }

    static void changeEntry(Studio s) {
        char ink = s.any(s.used(0, Long.MAX_VALUE));
        Colour c = entry(s, ink);
        Colour fresh = Words.colour(s.chance);
        s.change.entries.put(
                ink,
                Optional.of(
                        switch (s.upTo(3)) {
                            case 0 -> c.withName(fresh.name());
                            case 1 -> c.withSrgb(fresh.srgb());
                            default ->
                                new Colour(
                                        c.name(),
                                        c.srgb(),
                                        c.strands() % 6 + 1,
                                        Optional.of("F" + s.upTo(999)),
                                        c.unknown());
                        }));
    }

    static void addUnused(Studio s) {
        s.newInk();
    }

    static void addAndPaint(Studio s) {
        for (int i = 1 + s.upTo(2); i > 0; i--) {
            char ink = s.newInk();
            RowId row = s.any(s.rowsFromHere(3));
            int at = s.position + s.upTo(5) - 2;
            for (int p = at; p < at + 1 + s.upTo(5); p++) {
                s.paint(row, p, ink);
            }
        }
    }

    static void renameKey(Studio s) {
        char ink = s.any(s.used(3, Long.MAX_VALUE));
        s.change.keys.put(ink, s.freeKey());
    }

    static void swapKeys(Studio s) {
        List<Character> used = s.used(3, Long.MAX_VALUE);
        char a = s.any(used);
        char b = s.any(used);
        if (a == b) {
            throw new Undetermined("one colour only");
        }
        s.change.keys.put(a, b);
        s.change.keys.put(b, a);
    }

    /** Two colours made one: every cable and mark of the one takes the other, and its entry goes. */
    static void pour(Studio s) {
        List<Character> used = s.used(3, Long.MAX_VALUE);
        char a = s.any(used.stream()
                .filter(k -> s.base.lines().stream().noneMatch(l -> l.colour() == k))
                .toList());
        char b = s.any(used);
        if (a == b) {
            throw new Undetermined("one colour only");
        }
        if (s.base.clashes().stream().anyMatch(c -> c.value().text().indexOf(a) >= 0)) {
            throw new Undetermined("what an open clash says of a colour that goes");
        }
        replace(s, a, i -> b);
        s.base.marks().stream()
                .filter(m -> m.colour() == a)
                .forEach(m -> s.change.marks.putIfAbsent(Identities.of(m), Optional.of(m.withColour(b))));
        s.change.entries.put(a, Optional.empty());
    }

    /** Draws every cable of an ink, that she did not draw on yet, in another one. */
    private static void replace(Studio s, char ink, IntFunction<Character> by) {
        int i = 0;
        for (RowId row : s.order) {
            for (var cell : new TreeMap<>(s.grid.row(row)).entrySet()) {
                boolean drawn =
                        s.change.paint.getOrDefault(row, new TreeMap<>()).containsKey(cell.getKey());
                if (cell.getValue() == ink && !drawn) {
                    s.paint(row, cell.getKey(), by.apply(i++));
                }
            }
        }
    }

    /** The threads of two letters exchanged; the cables keep their letters. */
    static void exchangeThreads(Studio s) {
        List<Character> used = s.used(3, Long.MAX_VALUE);
        char a = s.any(used);
        char b = s.any(used);
        if (a == b) {
            throw new Undetermined("one colour only");
        }
        s.change.entries.put(a, Optional.of(entry(s, b)));
        s.change.entries.put(b, Optional.of(entry(s, a)));
    }

    static void dropUnused(Studio s) {
        s.change.entries.put(s.any(s.used(0, 0)), Optional.empty());
    }

    /** A colour taken out of the picture, cable by cable, and of the palette. */
    static void dropUsed(Studio s) {
        char ink = s.any(s.used(3, 14).stream()
                .filter(k -> s.base.marks().stream().noneMatch(m -> m.colour() == k))
                .filter(k -> s.base.lines().stream().noneMatch(l -> l.colour() == k))
                .toList());
        List<Character> others = new ArrayList<>(s.keys());
        others.remove(Character.valueOf(ink));
        others.removeIf(k -> s.change.entries.containsKey(k));
        if (others.size() < 2) {
            throw new Undetermined("too few colours");
        }
        replace(s, ink, i -> others.get(i % others.size()));
        s.change.entries.put(ink, Optional.empty());
    }

    /** Cables drawn with a colour that no cable had. */
    static void paintWithUnused(Studio s) {
        char ink = s.any(s.used(0, 0));
        for (int p = s.position; p < s.position + 1 + s.upTo(3); p++) {
            s.paint(s.rowId(), p, ink);
        }
    }

    static void eraseColourHere(Studio s) {
        char ink = s.grid.at(s.rowId(), s.position);
        if (ink == Row.EMPTY) {
            throw new Undetermined("nothing here");
        }
        for (int p : s.grid.row(s.rowId()).keySet()) {
            if (s.grid.at(s.rowId(), p) == ink) {
                s.paint(s.rowId(), p, Row.EMPTY);
            }
        }
    }
}
