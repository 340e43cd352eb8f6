package platekeep.model.look;

import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Kinds;

/**
 * A part of a picture that is looked for in others: the box around its cables, row by row.
 *
 * @param cells one text a row, top first, all equally long and not empty: a key or {@link Row#EMPTY} for each place
 * @param up where its up cables lie, counted row by row from the top left place
 * @param palette its colours
 */
public record Motif(List<String> cells, BitSet up, Palette palette) {

    public Motif {
        cells = List.copyOf(cells);
        up = (BitSet) up.clone();
        if (cells.isEmpty() || cells.get(0).isEmpty() || !isEven(cells)) {
            throw new IllegalArgumentException("no motif: " + cells);
        }
    }

    private static boolean isEven(List<String> cells) {
        return cells.stream().allMatch(row -> row.length() == cells.get(0).length());
    }

    @Override
    public BitSet up() {
        return (BitSet) up.clone();
    }

    /** The whole picture of a plate without the empty cloth around it; none where it has no cable. */
    public static Optional<Motif> of(Plate plate) {
        int top = -1;
        int bottom = -1;
        int left = plate.positions();
        int right = -1;
        for (int r = 0; r < plate.rows().size(); r++) {
            for (int i = 0; i < plate.positions(); i++) {
                if (plate.rows().get(r).cells().charAt(i) != Row.EMPTY) {
                    top = top < 0 ? r : top;
                    bottom = r;
                    left = Math.min(left, i);
                    right = Math.max(right, i);
                }
            }
        }
        return top < 0 ? Optional.empty() : Optional.of(cut(plate, top, bottom, left, right));
    }

    private static Motif cut(Plate plate, int top, int bottom, int left, int right) {
        Kinds kinds = Kinds.of(plate);
        BitSet up = new BitSet();
        int width = right - left + 1;
        for (int r = top; r <= bottom; r++) {
            for (int i = left; i <= right; i++) {
                boolean isCable = plate.rows().get(r).cells().charAt(i) != Row.EMPTY;
                up.set((r - top) * width + i - left, isCable && kinds.isUp(r, plate.from() + i));
            }
        }
        List<String> cells = plate.rows().subList(top, bottom + 1).stream()
                .map(row -> row.cells().substring(left, right + 1))
                .toList();
        return new Motif(cells, up, plate.palette());
    }

    public int height() {
        return cells.size();
    }

    public int width() {
        return cells.get(0).length();
    }

    /** How many cables it has. */
    public int cables() {
        return (int) cells.stream()
                .flatMapToInt(String::chars)
                .filter(c -> c != Row.EMPTY)
                .count();
    }

    /** With one letter for each colour as it is seen. */
    Motif inColours() {
        char[] letters = new char[128];
        Map<String, Character> first = new HashMap<>();
        for (char key = 0; key < letters.length; key++) {
            char here = key;
            letters[key] = palette.get(key)
                    .map(colour -> first.computeIfAbsent(colour.srgb(), srgb -> here))
                    .orElse(key);
        }
        List<String> joined = cells.stream()
                .map(row -> row.chars()
                        .collect(StringBuilder::new, (out, c) -> out.append(letters[c]), StringBuilder::append))
                .map(StringBuilder::toString)
                .toList();
        return new Motif(joined, up, palette);
    }

    boolean isUp(int row, int place) {
        return up.get(row * width() + place);
    }

    char at(int row, int place) {
        return cells.get(row).charAt(place);
    }

    /** Seen in a mirror; top to bottom every up becomes a down. */
    public Motif mirrored(Mirror mirror) {
        char[] turned = new char[width() * height()];
        BitSet newUp = new BitSet();
        for (int at = 0; at < turned.length; at++) {
            int from = mirror.from(at, width(), height());
            turned[at] = at(from / width(), from % width());
            newUp.set(at, turned[at] != Row.EMPTY && up.get(from) != mirror.turnsOver());
        }
        String all = new String(turned);
        String[] rows = new String[height()];
        Arrays.setAll(rows, r -> all.substring(r * width(), (r + 1) * width()));
        return new Motif(List.of(rows), newUp, palette);
    }
}
