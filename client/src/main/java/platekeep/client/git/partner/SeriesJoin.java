package platekeep.client.git.partner;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/**
 * Joins two edits of a series. A series keeps no open clashes, so each question is answered and nothing is lost: of two
 * new titles the one that sorts first stands and the other becomes a note; of two colours under one letter the one that
 * sorts first keeps the letter and the other gets a free one.
 */
final class SeriesJoin {
    private final Optional<Series> base;
    private final Series first;
    private final Series second;

    private SeriesJoin(Optional<Series> base, Series one, Series other) {
        boolean swapped = one.toString().compareTo(other.toString()) > 0;
        this.base = base;
        this.first = swapped ? other : one;
        this.second = swapped ? one : other;
    }

    static Series join(Optional<Series> base, Series one, Series other) {
        return new SeriesJoin(base, one, other).joined();
    }

    private Series joined() {
        List<String> notes = new ArrayList<>(
                ListJoin.join(base.map(Series::notes).orElse(List.of()), first.notes(), second.notes()));
        String title = Settle.one(base.map(Series::title), first.title(), second.title());
        for (String wished : List.of(first.title(), second.title())) {
            boolean lost = !wished.equals(title) && !base.map(Series::title).equals(Optional.of(wished));
            if (lost && !notes.contains(wished)) {
                notes.add(wished);
            }
        }
        return new Series(
                first.id(),
                title,
                ListJoin.join(base.map(Series::plates).orElse(List.of()), first.plates(), second.plates()),
                colours(),
                notes,
                unknown());
    }

    private Palette colours() {
        Palette before = base.map(Series::colours).orElse(Palette.EMPTY);
        Palette out = Palette.EMPTY;
        List<Colour> withoutKey = new ArrayList<>();
        for (char key : Palette.KEYS.toCharArray()) {
            Optional<Colour> a = first.colours().get(key);
            Optional<Colour> b = second.colours().get(key);
            Optional<Optional<Colour>> clear = Settle.settled(before.get(key), a, b);
            List<Colour> stand = clear.map(colour -> colour.stream().toList())
                    .orElseGet(
                            () -> Settle.sorted(a, b, colour -> colour.value().text()));
            out = stand.isEmpty() ? out : out.with(key, stand.get(0));
            withoutKey.addAll(stand.subList(Math.min(1, stand.size()), stand.size()));
        }
        for (Colour colour : withoutKey) {
            Optional<Character> free = out.freeKey();
            out = free.isEmpty() || out.entries().containsValue(colour) ? out : out.with(free.get(), colour);
        }
        return out;
    }

    private Unknown unknown() {
        Map<String, Value> before = base.map(s -> s.unknown().entries()).orElse(Map.of());
        return new Unknown(
                Settle.maps(before, first.unknown().entries(), second.unknown().entries(), Value::text));
    }
}
