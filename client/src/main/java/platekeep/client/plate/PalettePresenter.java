package platekeep.client.plate;

import platekeep.client.plate.edit.ColourEdits;
import platekeep.client.room.Workroom;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;

/** Changes the palette of the plate that is open. */
public final class PalettePresenter {
    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;

    PalettePresenter(Workroom room, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.view = view;
        this.plates = plates;
    }

    /** Adds a colour to the palette, and paints with it. */
    public void add() {
        plates.drawable()
                .ifPresent(opened -> opened.now()
                        .palette()
                        .freeKey()
                        .ifPresentOrElse(
                                key -> view.askColour("New colour", new Colour("", "#7A8B99", 4))
                                        .ifPresent(added -> {
                                            plates.draw()
                                                    .step(
                                                            "Add " + added.name(),
                                                            plate -> ColourEdits.put(plate, key, added));
                                            plates.draw().choose(key);
                                        }),
                                () -> room.front()
                                        .trouble("A palette holds 62 colours. Take one out that is not used first.")));
    }

    /** Changes the name, shade or strands of a colour. */
    public void change(char key) {
        plates.drawable()
                .ifPresent(opened -> opened.now()
                        .palette()
                        .get(key)
                        .ifPresent(before -> view.askColour("Change " + before.name(), before)
                                .ifPresent(after -> plates.draw()
                                        .step(
                                                changeName(before, after),
                                                plate -> ColourEdits.put(plate, key, after)))));
    }

    private static String changeName(Colour before, Colour after) {
        if (before.withName(after.name()).equals(after)) {
            return "Rename " + before.name() + " to " + after.name();
        }
        return before.srgb().equals(after.srgb()) ? "Change " + before.name() : "Recolour " + before.name();
    }

    /** Takes a colour out of the palette, if nothing uses it. */
    public void remove(char key) {
        plates.drawable().ifPresent(opened -> {
            Plate plate = opened.now();
            String name = DrawPresenter.name(plate, key);
            if (ColourEdits.isUsed(plate, key)) {
                room.front().trouble("\"" + name + "\" is still used. Paint its cables in another colour first.");
            } else {
                plates.draw().step("Take " + name + " out", p -> ColourEdits.remove(p, key));
            }
        });
    }
}
