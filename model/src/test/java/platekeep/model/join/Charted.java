package platekeep.model.join;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** Plates for the join's tests and what hands do to them; all follows from the {@link Random} that is given. */
final class Charted {
    private static final String KEYS = "abcd";
    private static final Palette PALETTE = Palette.EMPTY
            .with('a', new Colour("apple", "#A63C2B", 4))
            .with('b', new Colour("bay", "#2B5BA6", 4))
            .with('c', new Colour("chalk", "#F4F1E8", 4))
            .with('d', new Colour("dune", "#E9B83C", 4));

    /** Whether rows carry ids. */
    enum Ids {
        GIVEN,
        NONE
    }

    /** Whose edit it is; new rows get ids of their own hand's range. */
    enum Hand {
        MINE,
        THEIRS
    }

    /** How much of a new row is drawn. */
    enum Ground {
        FULL,
        LOOSE
    }

    private Charted() {}

    /** A plate of random rows; with ids it starts at the leftmost cable of the bottom row. */
    static Plate plate(Random random, int rows, int positions, Ids ids, Ground ground) {
        List<Row> drawn = new ArrayList<>();
        for (int i = 0; i < rows; i++) {
            drawn.add(named(cells(random, positions, ground), i, ids));
        }
        Plate plate = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a13", "Orchard Gate")
                .palette(PALETTE)
                .pleats(Optional.of(new Pleats(1, positions + 1)))
                .rows(drawn)
                .build();
        return ids == Ids.NONE ? plate : started(plate);
    }

    private static Plate started(Plate plate) {
        Row bottom = plate.rows().get(plate.rows().size() - 1);
        int index = 0;
        while (index < bottom.cells().length() && bottom.cells().charAt(index) == Row.EMPTY) {
            index++;
        }
        if (index == bottom.cells().length()) {
            return plate;
        }
        return plate.edit()
                .starts(List.of(new Start(bottom.id().orElseThrow(), 1 + index, CableKind.DOWN)))
                .build();
    }

    private static Row named(String cells, int number, Ids ids) {
        return ids == Ids.NONE ? Row.bare(cells) : Row.bare(cells).withId(RowId.of(36 * 36 * 36 + number));
    }

    static String cells(Random random, int positions, Ground ground) {
        StringBuilder cells = new StringBuilder();
        for (int i = 0; i < positions; i++) {
            boolean empty = ground == Ground.LOOSE && random.nextInt(3) == 0;
            cells.append(empty ? Row.EMPTY : KEYS.charAt(random.nextInt(KEYS.length())));
        }
        return cells.toString();
    }

    /** A row of the hand's own making. */
    static Row fresh(Random random, Plate plate, Hand hand, int number, Ground ground) {
        int first = (hand == Hand.MINE ? 20 : 30) * 36 * 36 * 36;
        boolean bare = plate.rows().stream().anyMatch(row -> row.id().isEmpty());
        String cells = cells(random, plate.positions(), ground);
        return bare ? Row.bare(cells) : Row.bare(cells).withId(RowId.of(first + number));
    }

    /** The row with one drawn cable in another colour of the palette; a row without cables stays. */
    static Row recoloured(Random random, Row row) {
        int[] drawn = java.util.stream.IntStream.range(0, row.cells().length())
                .filter(i -> row.cells().charAt(i) != Row.EMPTY)
                .toArray();
        if (drawn.length == 0) {
            return row;
        }
        int at = drawn[random.nextInt(drawn.length)];
        int now = KEYS.indexOf(row.cells().charAt(at));
        StringBuilder cells = new StringBuilder(row.cells());
        cells.setCharAt(at, KEYS.charAt((now + 1 + random.nextInt(KEYS.length() - 1)) % KEYS.length()));
        return row.withCells(cells.toString());
    }

    /** Some edits of any kind: cables painted and erased, rows put in, taken out and moved, title and themes. */
    static Plate edited(Random random, Plate plate, Hand hand) {
        Plate edited = plate;
        int edits = 1 + random.nextInt(4);
        for (int n = 0; n < edits; n++) {
            edited = editedOnce(random, edited, hand, n);
        }
        return edited;
    }

    private static Plate editedOnce(Random random, Plate plate, Hand hand, int number) {
        List<Row> rows = new ArrayList<>(plate.rows());
        int at = random.nextInt(rows.size());
        switch (random.nextInt(7)) {
            case 0 -> rows.set(at, recoloured(random, rows.get(at)));
            case 1 -> rows.set(at, rows.get(at).withCells(cells(random, plate.positions(), Ground.LOOSE)));
            case 2 -> rows.add(at, fresh(random, plate, hand, number, Ground.LOOSE));
            case 3 -> rows.remove(rows.size() > 2 ? at : 0);
            case 4 -> rows.add(random.nextInt(rows.size()), rows.remove(at));
            case 5 -> {
                return plate.edit().title("Title " + random.nextInt(3)).build();
            }
            default -> {
                return plate.edit()
                        .themes(List.of("theme " + random.nextInt(3)))
                        .build();
            }
        }
        return rows.isEmpty() ? plate : plate.edit().rows(rows).build();
    }

    /** Only cables in another colour, rows put in and rows taken out: nothing moved, nothing renamed. */
    static Plate inPlace(Random random, Plate plate, Hand hand) {
        List<Row> rows = new ArrayList<>(plate.rows());
        int edits = 1 + random.nextInt(4);
        for (int n = 0; n < edits; n++) {
            int at = random.nextInt(rows.size());
            switch (random.nextInt(4)) {
                case 0 -> rows.add(at, fresh(random, plate, hand, n, Ground.FULL));
                case 1 -> {
                    if (rows.size() > 3) {
                        rows.remove(at);
                    }
                }
                default -> rows.set(at, recoloured(random, rows.get(at)));
            }
        }
        return plate.edit().rows(rows).build();
    }
}
