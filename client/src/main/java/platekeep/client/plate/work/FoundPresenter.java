package platekeep.client.plate.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.open.OpenPlate;
import platekeep.client.plate.piece.Area;
import platekeep.client.room.Place;
import platekeep.client.room.Workroom;
import platekeep.model.draw.Spot;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;

/**
 * Leads to where a motif was found in a plate: its cables are chosen, so that they can be copied or moved at once. Of
 * several places one after the other.
 */
public final class FoundPresenter {
    private final Workroom room;
    private final PlateView view;
    private final PlatePresenter plates;
    private Optional<Place.InPlate> found = Optional.empty();
    private int at;

    FoundPresenter(Workroom room, PlateView view, PlatePresenter plates) {
        this.room = room;
        this.view = view;
        this.plates = plates;
    }

    /** Chooses the first place, or where the same was asked for just before, that of then. */
    void show(OpenPlate opened, Place.InPlate place) {
        at = found.filter(place::equals).isPresent() ? at : 0;
        found = Optional.of(place);
        choose(opened, place);
    }

    /** Chooses the next place in the plate that is open. */
    public void next() {
        Optional<OpenPlate> opened = plates.current();
        Optional<Place.InPlate> here = found.filter(
                place -> opened.filter(o -> o.library() == place.library() && o.id().equals(place.plateId()))
                        .isPresent());
        if (here.isEmpty()) {
            room.front()
                    .say("No motif was found in this plate. Choose a part of the chart and press Ctrl+Shift+F to find"
                            + " plates with it.");
            return;
        }
        at = (at + 1) % here.get().parts().size();
        choose(opened.orElseThrow(), here.get());
    }

    private void choose(OpenPlate opened, Place.InPlate place) {
        opened.lookAt(Optional.empty());
        Optional<Area> area = area(opened.now(), place.seen(), place.parts().get(at));
        if (area.isEmpty()) {
            opened.chosen(Optional.empty());
            plates.refresh();
            room.front().say("The motif no longer lies in this plate as it was found: it has been drawn on since.");
            return;
        }
        if (!plates.draw().tool().chooses()) {
            plates.draw().take(Tool.REGION);
        }
        opened.chosen(area);
        opened.cursor(new Spot(area.get().bottom(), area.get().left()));
        plates.refresh();
        view.see(area.get());
        room.front().say(words(opened.now(), area.get(), place.parts().size()));
    }

    private String words(Plate plate, Area area, int places) {
        String where = "rows " + plate.numberFromBottom(area.bottom()) + " to " + plate.numberFromBottom(area.top())
                + ", pleats " + (plate.from() + area.left()) + " to " + (plate.from() + area.right() + 1);
        String which = places == 1 ? "The motif is chosen: " : "Place " + (at + 1) + " of " + places + " is chosen: ";
        return which + where + ". Ctrl+C copies it" + (places == 1 ? "." : "; F3 goes to the next.");
    }

    /** Where some cables of a plate lie now: in the same rows, over the same pleats; empty where one is another now. */
    static Optional<Area> area(Plate now, Plate seen, List<Spot> spots) {
        Map<RowId, Integer> rows = new HashMap<>();
        for (int row = 0; row < now.rows().size(); row++) {
            int here = row;
            now.rows().get(row).id().ifPresent(id -> rows.put(id, here));
        }
        List<Spot> there = new ArrayList<>();
        for (Spot spot : spots) {
            Row row = seen.rows().get(spot.row());
            int at = row.id().map(id -> rows.getOrDefault(id, -1)).orElse(spot.row());
            int index = seen.from() + spot.index() - now.from();
            boolean isOn = at >= 0 && at < now.rows().size() && index >= 0 && index < now.positions();
            if (!isOn || now.rows().get(at).cells().charAt(index) != row.cells().charAt(spot.index())) {
                return Optional.empty();
            }
            there.add(new Spot(at, index));
        }
        return Area.of(there);
    }
}
