package platekeep.model.stitch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** Random small charts: enough empty cells that figures form, part and touch; all rows have ids. */
final class Charts {

    private static final String INK = "...aab";

    private Charts() {}

    /** One to seven rows of one to nine positions, without starts. */
    static Arbitrary<Plate> small() {
        Arbitrary<Integer> widths = Arbitraries.integers().between(1, 9);
        Arbitrary<Integer> heights = Arbitraries.integers().between(1, 7);
        return Combinators.combine(widths, heights).as(Charts::cells).flatMap(cells -> cells);
    }

    /** Small charts with up to four starts anywhere in the chart, on cables or not. */
    static Arbitrary<Plate> started() {
        return small().flatMap(plate -> starts(plate)
                .list()
                .ofMaxSize(4)
                .map(starts -> plate.edit().starts(starts).build()));
    }

    private static Arbitrary<Start> starts(Plate plate) {
        return Combinators.combine(
                        Arbitraries.of(plate.rows()),
                        Arbitraries.integers().between(plate.from(), plate.from() + plate.positions() - 1),
                        Arbitraries.of(CableKind.values()))
                .as((row, pleat, kind) -> new Start(row.id().orElseThrow(), pleat, kind));
    }

    private static Arbitrary<Plate> cells(int width, int height) {
        return Arbitraries.of(INK.chars().mapToObj(c -> (char) c).toList())
                .list()
                .ofSize(width * height)
                .map(cells -> plate(width, cells));
    }

    private static Plate plate(int width, List<Character> cells) {
        List<String> rows = new ArrayList<>();
        for (int at = 0; at < cells.size(); at += width) {
            StringBuilder row = new StringBuilder();
            cells.subList(at, at + width).forEach(row::append);
            rows.add(id(rows.size()).text() + " " + row);
        }
        return Drawn.plate(rows.toArray(String[]::new));
    }

    static RowId id(int number) {
        return new RowId("r" + (char) ('a' + number / 26) + (char) ('a' + number % 26) + "0");
    }

    /** A row with a new id that no random chart has. */
    static Row fresh(int number, String cells) {
        return new Row(Optional.of(new RowId("n" + id(number).text().substring(1))), cells);
    }
}
