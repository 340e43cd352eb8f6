package platekeep.client.plate;

import java.util.List;
import java.util.Optional;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** Small plates for tests of the screens. */
public final class TestPlates {
    private TestPlates() {}

    /** A brick block three rows high, with room around it. */
    public static Plate block(String id, String title) {
        return new Draft(id, title)
                .themes(List.of("bricks"))
                .palette(Palette.EMPTY
                        .with('b', new Colour("brick", "#A63C2B", 4))
                        .with('c', new Colour("chalk", "#F4F1E8", 4)))
                .pleats(Optional.of(new Pleats(1, 9)))
                .rows(List.of(Row.of("r3r3", "..bbbb.."), Row.of("r2r2", "..bbbb.."), Row.of("r1r1", "..bbbb..")))
                .starts(List.of(new Start(new RowId("r1r1"), 3, CableKind.DOWN)))
                .build();
    }
}
