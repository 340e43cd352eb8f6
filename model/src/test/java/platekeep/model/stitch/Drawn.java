package platekeep.model.stitch;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Start;

/** Plates drawn in the tests as small grids, top row first: {@code "id cells"} or {@code "cells"}. */
public final class Drawn {

    private Drawn() {}

    /** A plate whose first pleat is 1 and which has no starts. */
    public static Plate plate(String... rows) {
        return plateFrom(1, rows);
    }

    public static Plate plateFrom(int pleat, String... rows) {
        List<Row> chart = Arrays.stream(rows).map(Drawn::row).toList();
        Optional<Pleats> pleats = chart.isEmpty()
                ? Optional.empty()
                : Optional.of(new Pleats(pleat, pleat + chart.get(0).cells().length()));
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Harbour Light")
                .pleats(pleats)
                .palette(palette(chart))
                .rows(chart)
                .build();
    }

    public static Row row(String text) {
        int gap = text.indexOf(' ');
        return gap < 0 ? Row.bare(text) : Row.of(text.substring(0, gap), text.substring(gap + 1));
    }

    /** The plate with other rows, the same pleats and starts. */
    public static Plate redrawn(Plate plate, String... rows) {
        return plate.edit().rows(Arrays.stream(rows).map(Drawn::row).toList()).build();
    }

    public static Plate started(Plate plate, Start... starts) {
        return plate.edit().starts(List.of(starts)).build();
    }

    public static Start start(String row, int pleat, CableKind kind) {
        return new Start(new RowId(row), pleat, kind);
    }

    /** The kinds as a picture, top row first: {@code d}, {@code u}, {@code .}. */
    public static List<String> kinds(Plate plate) {
        Kinds kinds = Kinds.of(plate);
        List<String> out = new ArrayList<>();
        for (int r = 0; r < plate.rows().size(); r++) {
            StringBuilder row = new StringBuilder();
            for (int p = plate.from(); p < plate.from() + plate.positions(); p++) {
                row.append(kinds.at(r, p).map(k -> k.word().charAt(0)).orElse('.'));
            }
            out.add(row.toString());
        }
        return out;
    }

    private static Palette palette(List<Row> rows) {
        SortedMap<Character, Colour> entries = new TreeMap<>();
        int step = 0;
        for (Row row : rows) {
            for (char c : row.cells().toCharArray()) {
                if (c != Row.EMPTY && !entries.containsKey(c)) {
                    entries.put(c, new Colour("colour " + c, COLOURS[step++ % COLOURS.length], 4));
                }
            }
        }
        return Palette.of(entries);
    }

    private static final String[] COLOURS = {"#A63C2B", "#F4F1E8", "#1F3A6E", "#E9B83C", "#2E7D4F"};
}
