package platekeep.client.plate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** Plates from rows of text, and random small ones. */
public final class Charted {
    private static final String INK = "....aab";

    private Charted() {}

    /** A plate of these rows, top first, from pleat 1 on, with a colour for each letter a, b and c. */
    public static Plate of(String... rows) {
        return of(List.of(), rows);
    }

    /** The same with starts. */
    public static Plate of(List<Start> starts, String... rows) {
        List<Row> chart = new ArrayList<>();
        for (String cells : rows) {
            chart.add(new Row(Optional.of(id(chart.size())), cells));
        }
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Charted")
                .palette(Palette.EMPTY
                        .with('a', new Colour("apple", "#A63C2B", 4))
                        .with('b', new Colour("buoy", "#2B6CA6", 4))
                        .with('c', new Colour("chalk", "#F4F1E8", 4)))
                .pleats(Optional.of(new Pleats(1, rows[0].length() + 1)))
                .rows(chart)
                .starts(starts)
                .build();
    }

    /** The id of the row of this number from the top. */
    public static RowId id(int number) {
        return new RowId("r" + (char) ('a' + number / 26) + (char) ('a' + number % 26) + "0");
    }

    public static List<String> cells(Plate plate) {
        return plate.rows().stream().map(Row::cells).toList();
    }

    /** Charts of one to eight rows and two to ten positions, with up to three starts. */
    public static Arbitrary<Plate> small() {
        Arbitrary<Integer> widths = Arbitraries.integers().between(2, 10);
        Arbitrary<Integer> heights = Arbitraries.integers().between(1, 8);
        return Combinators.combine(widths, heights)
                .as(Charted::charts)
                .flatMap(charts -> charts)
                .flatMap(Charted::started);
    }

    private static Arbitrary<Plate> charts(int width, int height) {
        return Arbitraries.of(INK.chars().mapToObj(c -> (char) c).toList())
                .list()
                .ofSize(width * height)
                .map(ink -> {
                    String[] rows = new String[height];
                    for (int r = 0; r < height; r++) {
                        StringBuilder row = new StringBuilder();
                        ink.subList(r * width, (r + 1) * width).forEach(row::append);
                        rows[r] = row.toString();
                    }
                    return of(rows);
                });
    }

    private static Arbitrary<Plate> started(Plate plate) {
        return Combinators.combine(
                        Arbitraries.of(plate.rows()),
                        Arbitraries.integers().between(1, plate.positions()),
                        Arbitraries.of(CableKind.values()))
                .as((row, pleat, kind) -> new Start(row.id().orElseThrow(), pleat, kind))
                .list()
                .ofMaxSize(3)
                .map(starts -> plate.edit().starts(starts).build());
    }
}
