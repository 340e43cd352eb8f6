package platekeep.client.many;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.State;
import platekeep.model.stitch.KeptKinds;
import platekeep.model.stitch.RowIds;

/** What is done to a plate from one version to the next. */
final class Edits {
    private final Chance chance;

    Edits(Chance chance) {
        this.chance = chance;
    }

    /** The plate changed in some way; never the same. */
    Plate changed(Plate plate) {
        Plate changed = plate;
        while (changed.equals(plate)) {
            changed = once(plate);
        }
        return changed;
    }

    private Plate once(Plate plate) {
        int dice = chance.between(0, 99);
        if (dice < 25) {
            return recoloured(plate);
        }
        if (dice < 60) {
            return repainted(plate);
        }
        if (dice < 72) {
            return rowsPutIn(plate);
        }
        if (dice < 82) {
            return retagged(plate, chance.of(WordBox.MORE_THEMES));
        }
        if (dice < 90) {
            return plate.edit().state(Optional.of(next(plate))).build();
        }
        if (dice < 96) {
            List<String> notes = new ArrayList<>(plate.notes());
            notes.add(WordBox.note(chance));
            return plate.edit().notes(notes).build();
        }
        return plate.edit()
                .title(plate.title() + chance.of(List.of(" II", ", New", " at Night")))
                .build();
    }

    /** With a theme more, or without it where it was there. */
    static Plate retagged(Plate plate, String theme) {
        Set<String> themes = new TreeSet<>(plate.themes());
        if (!themes.remove(theme)) {
            themes.add(theme);
        }
        return plate.edit().themes(List.copyOf(themes)).build();
    }

    private State next(Plate plate) {
        State[] states = State.values();
        int now = plate.state().map(State::ordinal).orElse(0);
        return states[now + 1 < states.length ? now + 1 : chance.between(0, states.length - 2)];
    }

    private Plate recoloured(Plate plate) {
        Map<Character, Colour> colours = new java.util.TreeMap<>(plate.palette().entries());
        char key = chance.of(List.copyOf(colours.keySet()));
        colours.put(key, Scene.thread(chance.of(Scene.threads()), chance));
        return plate.edit().palette(Palette.of(colours)).build();
    }

    /** All colours exchanged for others. */
    Palette otherColours(Palette palette) {
        Map<Character, Colour> colours = new java.util.TreeMap<>(palette.entries());
        colours.replaceAll((key, colour) -> Scene.thread(chance.of(Scene.threads()), chance));
        return Palette.of(colours);
    }

    private Plate repainted(Plate plate) {
        List<String> cells = touchedUp(
                        Sheet.of(plate.rows().stream().map(Row::cells).toList()), plate.palette())
                .rows();
        List<Row> rows = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            rows.add(plate.rows().get(i).withCells(cells.get(i)));
        }
        return KeptKinds.after(plate, plate.edit().rows(rows).build());
    }

    /** Paints a few small things over a picture. */
    Sheet touchedUp(Sheet sheet, Palette palette) {
        List<Character> keys = List.copyOf(palette.entries().keySet());
        for (int i = chance.between(1, 3); i > 0; i--) {
            double size = chance.between(3.0, 12.0);
            Rectangle2D box = new Rectangle2D.Double(
                    chance.between(0, sheet.positions() - size), chance.between(0, sheet.height() - size), size, size);
            Sheet.Brush brush = sheet.brush(box, false);
            char key = chance.percent(15) ? Row.EMPTY : chance.of(keys);
            if (chance.percent(50)) {
                brush.oval(key, 0.5, 0.5, 0.5, 0.5);
            } else {
                brush.box(key, 0, 0.2, 1, 0.4);
            }
        }
        return sheet;
    }

    private Plate rowsPutIn(Plate plate) {
        Set<RowId> taken = new HashSet<>(RowIds.standing(plate));
        List<Row> rows = new ArrayList<>(plate.rows());
        int at = chance.percent(60) ? 0 : chance.between(0, rows.size() - 1);
        for (int i = chance.between(1, 3); i > 0; i--) {
            RowId id = RowIds.fresh(taken, chance.random());
            taken.add(id);
            rows.add(at, rows.get(at).withId(id));
        }
        return KeptKinds.after(plate, plate.edit().rows(rows).build());
    }
}
