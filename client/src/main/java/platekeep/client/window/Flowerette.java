package platekeep.client.window;

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

/** The smallest picture of the craft, as the window's sign: up-down-up below, down-up-down above. */
final class Flowerette {
    static final Plate PLATE = new Draft("6f6a0d0e-5a53-4c36-9d6d-2f0f6a1f9b01", "Flowerette")
            .palette(Palette.EMPTY
                    .with('b', new Colour("brick", "#A63C2B", 4))
                    .with('y', new Colour("lamp yellow", "#E9B83C", 4)))
            .pleats(Optional.of(new Pleats(1, 4)))
            .rows(List.of(Row.of("f2c1", "byb"), Row.of("f2c0", "byb")))
            .starts(List.of(new Start(new RowId("f2c0"), 1, CableKind.UP)))
            .build();

    private Flowerette() {}
}
