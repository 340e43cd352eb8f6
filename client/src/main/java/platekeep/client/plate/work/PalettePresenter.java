package platekeep.client.plate.work;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.plate.edit.ColourEdits;
import platekeep.client.plate.open.OpenPlate;
import platekeep.client.room.Workroom;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;

/** Changes the palette of the plate that is open; the colours of its series are at hand to choose from. */
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
                                key -> withSeries(opened, series -> add(key, series)),
                                () -> room.front()
                                        .trouble("A palette holds 62 colours. Take one out that is not used first.")));
    }

    private void add(char key, List<Colour> series) {
        view.askColour("New colour", new Colour("", "#7A8B99", 4), series).ifPresent(added -> {
            plates.draw().step("Add " + added.name(), plate -> ColourEdits.put(plate, key, added));
            plates.draw().choose(key);
        });
    }

    /** Changes the name, shade, strands or floss of a colour. */
    public void change(char key) {
        plates.drawable()
                .ifPresent(opened -> opened.now()
                        .palette()
                        .get(key)
                        .ifPresent(before -> withSeries(opened, series -> change(key, before, series))));
    }

    private void change(char key, Colour before, List<Colour> series) {
        view.askColour("Change " + before.name(), before, series)
                .ifPresent(after ->
                        plates.draw().step(changeName(before, after), plate -> ColourEdits.put(plate, key, after)));
    }

    private static String changeName(Colour before, Colour after) {
        if (before.withName(after.name()).equals(after)) {
            return "Rename " + before.name() + " to " + after.name();
        }
        return before.srgb().equals(after.srgb()) ? "Change " + before.name() : "Recolour " + before.name();
    }

    /** Merges a colour into another one: its cables, lines and single stitches become that one's. */
    public void merge(char key) {
        plates.drawable().ifPresent(opened -> {
            Plate plate = opened.now();
            String name = DrawPresenter.name(plate, key);
            if (plate.palette().entries().size() < 2) {
                room.front().say("There is no other colour to turn \"" + name + "\" into.");
            } else if (ColourEdits.isInClash(plate, key)) {
                room.front().trouble("An open clash is about \"" + name + "\". Settle it first; nothing was changed.");
            } else {
                view.askMerge(plate.palette(), key)
                        .ifPresent(into -> plates.draw()
                                .step(
                                        "Turn " + name + " into " + DrawPresenter.name(plate, into),
                                        p -> ColourEdits.merge(p, key, into)));
            }
        });
    }

    /** Takes a colour out of the palette, if nothing uses it. */
    public void remove(char key) {
        plates.drawable().ifPresent(opened -> {
            Plate plate = opened.now();
            String name = DrawPresenter.name(plate, key);
            if (ColourEdits.isUsed(plate, key)) {
                room.front()
                        .trouble("\"" + name + "\" is still used. Turn it into another colour, or paint its cables in"
                                + " another one first.");
            } else {
                plates.draw().step("Take " + name + " out", p -> ColourEdits.remove(p, key));
            }
        });
    }

    private void withSeries(OpenPlate opened, Consumer<List<Colour>> then) {
        room.work(progress -> seriesColours(opened.library(), opened.id()), then);
    }

    /** The shared colours of the series that a plate is in, then those of the other plates in them. */
    private static List<Colour> seriesColours(Library library, String plateId) throws LibraryException {
        Set<Colour> colours = new LinkedHashSet<>();
        List<String> others = new ArrayList<>();
        for (Series series : library.series()) {
            if (series.plates().contains(plateId)) {
                colours.addAll(series.colours().entries().values());
                others.addAll(series.plates());
            }
        }
        for (String other : others) {
            Optional<Plate> plate = other.equals(plateId)
                    ? Optional.empty()
                    : library.plate(other).flatMap(Entry::plate);
            plate.ifPresent(p -> colours.addAll(p.palette().entries().values()));
        }
        return List.copyOf(colours);
    }
}
