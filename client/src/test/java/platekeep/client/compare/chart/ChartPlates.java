package platekeep.client.compare.chart;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import platekeep.model.compare.Comparison;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** Small plates for tests of paired charts, a row a text: id, space, cells. */
public final class ChartPlates {
    private ChartPlates() {}

    /** A plate from pleat 1 on. */
    public static Plate plate(String... rows) {
        String bottom = rows[rows.length - 1];
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a14", "Tower")
                .palette(Palette.EMPTY
                        .with('b', new Colour("brick", "#A63C2B", 4))
                        .with('c', new Colour("chalk", "#F4F1E8", 4))
                        .with('n', new Colour("navy", "#1F2C58", 4)))
                .pleats(Optional.of(new Pleats(1, 1 + bottom.length() - 5)))
                .rows(Arrays.stream(rows)
                        .map(r -> Row.of(r.substring(0, 4), r.substring(5)))
                        .toList())
                .starts(List.of(new Start(new RowId(bottom.substring(0, 4)), 1, CableKind.DOWN)))
                .build();
    }

    /** Two plates, paired. */
    public static PairedPlates paired(Plate before, Plate after) {
        return PairedPlates.of(Comparison.of(before, after));
    }
}
