package platekeep.model.join.edits.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import platekeep.model.plate.Clash;
import platekeep.model.plate.CodePoints;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Line;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;

/** The palette: keys given out, renamed and taken away, entries changed. */
public final class ColoursTogether {
    private final Together both;
    private final Map<Character, Optional<Colour>> dropped = new LinkedHashMap<>();

    ColoursTogether(Together both) {
        this.both = both;
    }

    /** A wish for a key. */
    private record Claim(char ink, char key, Colour colour) {}

    void keys() {
        Map<Character, Claim> claims = new LinkedHashMap<>();
        both.both((side, other) -> {
            side.keys.forEach((ink, key) -> claim(claims, new Claim(ink, key, entry(ink))));
            side.fresh.forEach((ink, f) -> claim(claims, new Claim(ink, f.key(), f.colour())));
            return null;
        });
        Map<Character, List<Claim>> byKey = new TreeMap<>();
        claims.values()
                .forEach(c ->
                        byKey.computeIfAbsent(c.key(), k -> new ArrayList<>()).add(c));
        List<Claim> losers = new ArrayList<>();
        Set<Character> taken = taken();
        Comparator<Claim> byText = Comparator.comparing(c -> c.colour().value().text(), CodePoints.ORDER);
        byKey.values().forEach(wishes -> {
            wishes.sort(byText);
            give(wishes.get(0), wishes.get(0).key());
            losers.addAll(wishes.subList(1, wishes.size()));
        });
        losers.sort(byText);
        for (Claim loser : losers) {
            if (losers.stream().filter(l -> byText.compare(l, loser) == 0).count() > 1) {
                throw new Undetermined("two new colours alike");
            }
            char free = (char) Palette.KEYS
                    .chars()
                    .filter(c -> !taken.contains((char) c))
                    .findFirst()
                    .orElseThrow();
            taken.add(free);
            give(loser, free);
        }
    }

    private void claim(Map<Character, Claim> claims, Claim claim) {
        Claim before = claims.put(claim.ink(), claim);
        if (before != null && !before.equals(claim)) {
            throw new Undetermined("one key renamed in two ways");
        }
        for (Claim c : claims.values()) {
            if (c.ink() != claim.ink() && c.colour().equals(claim.colour())) {
                throw new Undetermined("one new colour under two keys, or twice under one");
            }
        }
    }

    private Colour entry(char ink) {
        if (both.mine.entries.containsKey(ink) || both.theirs.entries.containsKey(ink)) {
            return both.mine
                    .entries
                    .getOrDefault(ink, both.theirs.entries.getOrDefault(ink, Optional.empty()))
                    .orElseThrow(() -> new Undetermined("renamed here, taken out there"));
        }
        return both.base.palette().get(ink).orElseThrow();
    }

    private Set<Character> taken() {
        Set<Character> taken = new HashSet<>(both.base.palette().entries().keySet());
        both.both((side, other) -> {
            taken.addAll(side.keys.values());
            side.fresh.values().forEach(f -> taken.add(f.key()));
            return null;
        });
        return taken;
    }

    private void give(Claim claim, char key) {
        if (both.base.palette().has(claim.ink())) {
            both.joined.keys.put(claim.ink(), key);
        } else {
            both.joined.fresh.put(claim.ink(), new Fresh(key, claim.colour()));
        }
    }

    void entries() {
        Together.each(both.mine.entries, both.theirs.entries, both.joined.entries, (ink, m, t) -> {
            Colour was = both.base.palette().get(ink).orElseThrow();
            both.clashes.add(f -> Together.clash(Clash.What.COLOUR, place(ink, f), was.value(), value(m), value(t)));
            return Optional.empty();
        });
        both.both((side, other) -> {
            side.entries.forEach((ink, entry) -> {
                if (entry.isEmpty() && !other.entries.containsKey(ink) && newlyUsed(other, ink)) {
                    Colour was = both.base.palette().get(ink).orElseThrow();
                    both.joined.entries.remove(ink);
                    both.clashes.add(f ->
                            Together.clash(Clash.What.COLOUR, place(ink, f), was.value(), Value.NOTHING, was.value()));
                }
            });
            return null;
        });
    }

    private static Value.Entries place(char ink, Finished f) {
        return OpenClashes.place("key", String.valueOf(f.letter(ink)));
    }

    private static Value value(Optional<Colour> colour) {
        return colour.map(c -> (Value) c.value()).orElse(Value.NOTHING);
    }

    private boolean newlyUsed(Change side, char ink) {
        boolean onTop = side.marks.values().stream().flatMap(Optional::stream).anyMatch(m -> m.colour() == ink)
                || side.lines.added().values().stream().flatMap(List::stream).anyMatch(l -> l.colour() == ink)
                || side.lines.changed().values().stream()
                        .flatMap(Optional::stream)
                        .anyMatch(l -> l.colour() == ink);
        if (onTop) {
            throw new Undetermined("a colour taken out here, used for a mark or line there");
        }
        return side.paint.values().stream().anyMatch(row -> row.containsValue(ink))
                || side.added.values().stream()
                        .flatMap(List::stream)
                        .anyMatch(r -> r.cells().containsValue(ink));
    }

    /** A colour that still stands somewhere stays in the palette, also where only a clash names it. */
    void keepWhatIsNamed(Finished finished, List<Clash> clashes) {
        Set<Character> named = new HashSet<>();
        finished.grid.order().forEach(r -> named.addAll(finished.grid.row(r).values()));
        finished.base
                .marks()
                .forEach(m -> both.joined
                        .marks
                        .getOrDefault(Identities.of(m), Optional.of(m))
                        .ifPresent(now -> named.add(now.colour())));
        for (Line l : both.joined.lines.applied(both.base.lines(), Identities::of)) {
            named.add(l.colour());
        }
        Set<Character> letters = new HashSet<>();
        List<Clash> all = new ArrayList<>(clashes);
        all.addAll(OpenClashes.carried(finished));
        all.forEach(c -> letters(c, letters));
        both.joined
                .entries
                .entrySet()
                .removeIf(e -> e.getValue().isEmpty()
                        && (named.contains(e.getKey()) || letters.contains(finished.letter(e.getKey()))));
    }

    /** The keys that the open clashes of a plate name. */
    public static Set<Character> named(Plate plate) {
        Set<Character> letters = new HashSet<>();
        plate.clashes().forEach(c -> letters(c, letters));
        return letters;
    }

    private static void letters(Clash clash, Set<Character> letters) {
        switch (clash.what()) {
            case CABLES, ROW -> {
                text(clash.base(), letters);
                clash.sides().forEach(s -> text(s.value(), letters));
            }
            case ROWS ->
                clash.sides().forEach(s -> {
                    if (s.value() instanceof Value.Items rows) {
                        rows.items()
                                .forEach(r ->
                                        text(Value.of(((Value.Text) r).string().substring(5)), letters));
                    }
                });
            case LINE, MARK -> {
                colour(clash.base(), letters);
                clash.sides().forEach(s -> colour(s.value(), letters));
            }
            default -> {}
        }
    }

    private static void colour(Value value, Set<Character> letters) {
        if (value instanceof Value.Entries object) {
            text(object.entries().get("colour"), letters);
        }
    }

    private static void text(Value value, Set<Character> letters) {
        if (value instanceof Value.Text t) {
            t.string().chars().forEach(c -> letters.add((char) c));
        }
    }
}
