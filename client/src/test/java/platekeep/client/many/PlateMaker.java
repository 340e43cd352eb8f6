package platekeep.client.many;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import platekeep.model.plate.Age;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.Draft;
import platekeep.model.plate.FromPlate;
import platekeep.model.plate.Line;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;
import platekeep.model.plate.State;
import platekeep.model.plate.Unknown;
import platekeep.model.stitch.RowIds;

/** Makes plates: a picture and all that is known about it. */
final class PlateMaker {
    private final Chance chance;

    PlateMaker(Chance chance) {
        this.chance = chance;
    }

    /** A new plate. */
    Plate plate(int number) {
        Scene scene = Scene.drawn(chance.of(List.of(Motif.values())), chance);
        Pleats pleats = new Pleats(1, scene.rows().get(0).length() + 1);
        List<Row> rows = named(scene.rows());
        Draft draft = new Draft(chance.id().toString(), WordBox.title(scene, chance))
                .state(Optional.of(chance.of(Arrays.asList(State.values()))))
                .palette(scene.palette())
                .pleats(Optional.of(pleats))
                .rows(rows)
                .starts(starts(rows));
        facts(draft, scene, number);
        extras(draft, rows, pleats);
        return draft.build();
    }

    private List<Row> named(List<String> cells) {
        Set<RowId> taken = new HashSet<>();
        List<Row> rows = new ArrayList<>();
        for (String row : cells) {
            RowId id = RowIds.fresh(taken, chance.random());
            taken.add(id);
            rows.add(new Row(Optional.of(id), row));
        }
        return rows;
    }

    private static List<Start> starts(List<Row> rows) {
        for (int r = rows.size() - 1; r >= 0; r--) {
            String cells = rows.get(r).cells();
            for (int i = 0; i < cells.length(); i++) {
                if (cells.charAt(i) != Row.EMPTY) {
                    return List.of(new Start(rows.get(r).id().orElseThrow(), 1 + i, CableKind.DOWN));
                }
            }
        }
        return List.of();
    }

    private void facts(Draft draft, Scene scene, int number) {
        Set<String> themes = new TreeSet<>();
        scene.main().forEach(motif -> themes.addAll(motif.themes()));
        for (int i = chance.between(0, 2); i > 0; i--) {
            themes.add(chance.of(WordBox.MORE_THEMES));
        }
        if (chance.percent(0.4)) {
            themes.add(chance.of(List.of("boat", "sea side", "Flowers", "flower", "christmass")));
        }
        draft.themes(List.copyOf(themes)).ages(ages()).designers(designers()).origin(origin());
        if (chance.percent(70)) {
            draft.number(Optional.of(WordBox.plateNumber(scene.main().get(0), number)));
        }
        Set<String> uses = new TreeSet<>();
        for (int i = chance.between(0, 2); i > 0; i--) {
            uses.add(chance.of(WordBox.USES));
        }
        List<String> notes = new ArrayList<>();
        for (int i = chance.between(0, 2); i > 0; i--) {
            notes.add(WordBox.note(chance));
        }
        draft.uses(List.copyOf(uses)).notes(notes);
    }

    private List<Age> ages() {
        List<Age> all = List.of(Age.values());
        int first = chance.between(0, all.size() - 1);
        return all.subList(first, Math.min(all.size(), first + chance.between(1, 3)));
    }

    private List<String> designers() {
        if (chance.percent(12)) {
            return List.of("Wenna Tarrow", "Isolde Marsh");
        }
        return List.of(chance.percent(58) ? "Wenna Tarrow" : "Isolde Marsh");
    }

    private Origin origin() {
        if (chance.percent(45)) {
            return Origin.NONE;
        }
        String kind = chance.of(Origin.KINDS);
        Optional<String> by = kind.equals("own") ? Optional.empty() : Optional.of(chance.of(WordBox.GIVERS));
        Optional<String> place = chance.percent(60) ? Optional.of(chance.of(WordBox.PLACES)) : Optional.empty();
        return new Origin(Optional.of(kind), by, place, Optional.of(chance.of(Origin.USES)), Unknown.NONE);
    }

    private void extras(Draft draft, List<Row> rows, Pleats pleats) {
        if (chance.percent(70)) {
            draft.cloth(new Cloth(
                    Optional.of(chance.between(5, 21)),
                    Optional.of(new BigDecimal("9.5")),
                    Optional.of(5),
                    chance.percent(50)
                            ? Optional.of(new BigDecimal(chance.of(List.of("3", "3.5", "4"))))
                            : Optional.empty(),
                    List.of(),
                    Unknown.NONE));
        }
        if (chance.percent(8)) {
            draft.repeat(Optional.of(new Repeat(pleats.count(), chance.between(2, 4), Unknown.NONE)));
        }
        List<Character> keys = List.copyOf(draft.build().palette().entries().keySet());
        if (chance.percent(12)) {
            List<Mark> marks = new ArrayList<>();
            for (int i = chance.between(1, 6); i > 0; i--) {
                RowId row = chance.of(rows).id().orElseThrow();
                String pleat = Integer.toString(chance.between(pleats.from(), pleats.to() - 1));
                marks.add(new Mark("french knot", row, pleat, chance.of(keys), Unknown.NONE));
            }
            draft.marks(marks);
        }
        if (chance.percent(10)) {
            draft.lines(List.of(new Line(
                    "1",
                    Optional.empty(),
                    "cable",
                    Optional.empty(),
                    chance.of(keys),
                    3,
                    pleats.from(),
                    pleats.to(),
                    CableKind.DOWN,
                    Unknown.NONE)));
        }
        if (chance.percent(5)) {
            String kind = chance.of(List.of("button", "bead", "ribbon flower"));
            draft.notions(List.of(new Notion(kind, Optional.of("9 mm"), chance.between(1, 5), Unknown.NONE)));
        }
    }

    /** A plate that differs from another in a few cables: the same again, or seen in a mirror and in other colours. */
    Plate likeness(Plate plate, Optional<String> version) {
        boolean mirrored = chance.percent(50);
        Sheet sheet = Sheet.of(plate.rows().stream()
                .map(row -> mirrored ? new StringBuilder(row.cells()).reverse().toString() : row.cells())
                .toList());
        List<Row> rows =
                named(new Edits(chance).touchedUp(sheet, plate.palette()).rows());
        return plate.edit()
                .id(chance.id().toString())
                .title(plate.title() + chance.of(List.of(", Second Try", ", the Other Way", " Again", " for Isolde")))
                .number(Optional.empty())
                .fromPlate(version.map(name -> new FromPlate(plate.id(), name, Unknown.NONE)))
                .palette(mirrored ? new Edits(chance).otherColours(plate.palette()) : plate.palette())
                .rows(rows)
                .starts(starts(rows))
                .marks(List.of())
                .remarks(List.of())
                .build();
    }
}
