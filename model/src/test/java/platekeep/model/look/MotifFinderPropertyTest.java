package platekeep.model.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Row;
import platekeep.model.stitch.Drawn;
import platekeep.model.stitch.Kinds;

/** The finder against a search that tries every place of every chart cell by cell, as the words of {@link Wanted} say. */
class MotifFinderPropertyTest {
    private static final int MANY = 100_000;

    @Property(tries = 400, seed = "20261126")
    void findsJustWhatTryingEveryPlaceFinds(
            @ForAll @IntRange(max = 1_000_000) int seed,
            @ForAll Wanted.Colours colours,
            @ForAll Wanted.Gaps gaps,
            @ForAll Wanted.Mirrors mirrors,
            @ForAll Wanted.Kind kind) {
        Random random = new Random(seed);
        Plate plate = chart(random, 1 + random.nextInt(8), 1 + random.nextInt(random.nextInt(10) == 0 ? 150 : 20));
        Plate cutFrom = random.nextBoolean() ? plate : chart(random, 3, 5);
        Plate part = part(cutFrom, random);
        Wanted wanted = new Wanted(colours, gaps, mirrors, kind);
        Motif.of(part).ifPresent(motif -> {
            MotifFinder finder = new MotifFinder(motif, wanted);
            TreeSet<String> places = places(finder.in(plate, MANY));
            assertThat(places).isEqualTo(tried(plate, part, wanted));
            assertThat(places.isEmpty() || finder.mayBeIn(Trace.of(plate)))
                    .as("no chart that has it is denied")
                    .isTrue();
        });
    }

    /** Larger parts, of which a trace tells more. */
    @Property(tries = 100, seed = "20261127")
    void aTraceDeniesNothingThatIsThere(@ForAll @IntRange(max = 1_000_000) int seed) {
        Random random = new Random(seed);
        Plate plate = chart(random, 12, 40);
        Plate part = plate.edit()
                .rows(plate.rows().subList(3, 9).stream()
                        .map(r -> r.withCells(r.cells().substring(10, 30)))
                        .toList())
                .pleats(plate.pleats().map(p -> p.withEnds(1, 21)))
                .build();
        for (Plate turned : List.of(part, Edited.leftRight(part), Edited.topBottom(part))) {
            MotifFinder finder = new MotifFinder(Motif.of(turned).orElseThrow(), Wanted.USUAL);
            assertThat(finder.mayBeIn(Trace.of(plate))).isTrue();
        }
    }

    private static TreeSet<String> places(List<Occurrence> found) {
        TreeSet<String> places = new TreeSet<>();
        found.forEach(o -> assertThat(places.add(o.row() + ":" + o.position())).isTrue());
        return places;
    }

    /** Two or three letters, often in runs, two of them perhaps of one colour. */
    private static Plate chart(Random random, int height, int width) {
        String letters = random.nextBoolean() ? "ab.." : "abc.";
        String[] rows = new String[height];
        for (int r = 0; r < height; r++) {
            StringBuilder row = new StringBuilder();
            while (row.length() < width) {
                row.append(String.valueOf(letters.charAt(random.nextInt(4))).repeat(1 + random.nextInt(3)));
            }
            rows[r] = r > 0 && random.nextInt(4) == 0 ? rows[r - 1] : row.substring(0, width);
        }
        Palette palette = Palette.EMPTY
                .with('a', new Colour("brick", "#A63C2B", 4))
                .with('b', new Colour("chalk", random.nextBoolean() ? "#F4F1E8" : "#A63C2B", 4))
                .with('c', new Colour("leaf", random.nextBoolean() ? "#4F7A3A" : "#F4F1E8", 4));
        return Drawn.plateFrom(random.nextInt(9) - 4, rows)
                .edit()
                .palette(palette)
                .build();
    }

    /** Some rows and places of a chart, at times mirrored. */
    private static Plate part(Plate plate, Random random) {
        int top = random.nextInt(plate.rows().size());
        int height = 1 + random.nextInt(Math.min(4, plate.rows().size() - top));
        int left = random.nextInt(plate.positions());
        int width = 1 + random.nextInt(Math.min(random.nextInt(8) == 0 ? 100 : 6, plate.positions() - left));
        String[] rows = plate.rows().subList(top, top + height).stream()
                .map(r -> r.cells().substring(left, left + width))
                .toArray(String[]::new);
        Plate part = Drawn.plate(rows).edit().palette(plate.palette()).build();
        return switch (random.nextInt(3)) {
            case 0 -> Edited.leftRight(part);
            case 1 -> Edited.topBottom(part);
            default -> part;
        };
    }

    private static TreeSet<String> tried(Plate plate, Plate part, Wanted wanted) {
        TreeSet<String> places = new TreeSet<>();
        for (Mirror mirror : wanted.mirrors() == Wanted.Mirrors.ALL ? Mirror.values() : new Mirror[] {Mirror.NONE}) {
            List<char[]> motif = motif(part, mirror);
            for (int r = 0; r + motif.size() <= plate.rows().size(); r++) {
                for (int i = 0; i + motif.get(0).length <= plate.positions(); i++) {
                    if (fits(plate, part, motif, r, i, wanted) && falls(plate, part, motif, mirror, r, i, wanted)) {
                        places.add(r + ":" + (plate.from() + i));
                    }
                }
            }
        }
        return places;
    }

    /** The box around the cables, mirrored. */
    private static List<char[]> motif(Plate part, Mirror mirror) {
        List<String> rows = new ArrayList<>(part.rows().stream().map(Row::cells).toList());
        while (rows.get(0).matches("\\.*")) {
            rows.remove(0);
        }
        while (rows.get(rows.size() - 1).matches("\\.*")) {
            rows.remove(rows.size() - 1);
        }
        int left = rows.stream().mapToInt(r -> indent(r)).min().orElseThrow();
        int right = rows.stream()
                .mapToInt(r -> indent(new StringBuilder(r).reverse().toString()))
                .min()
                .orElseThrow();
        List<char[]> out = new ArrayList<>();
        for (String row : rows) {
            StringBuilder cut = new StringBuilder(row.substring(left, row.length() - right));
            out.add((mirror.turnsAcross() ? cut.reverse() : cut).toString().toCharArray());
        }
        if (mirror.turnsOver()) {
            java.util.Collections.reverse(out);
        }
        return out;
    }

    private static int indent(String row) {
        return row.length() - row.replaceFirst("^\\.*", "").length();
    }

    private static boolean fits(Plate plate, Plate part, List<char[]> motif, int row, int place, Wanted wanted) {
        Map<String, String> there = new HashMap<>();
        Map<String, String> here = new HashMap<>();
        for (int r = 0; r < motif.size(); r++) {
            for (int i = 0; i < motif.get(r).length; i++) {
                String asked = seen(part, motif.get(r)[i], wanted);
                String found = seen(plate, plate.cellAt(row + r, plate.from() + place + i), wanted);
                if (asked.equals(".")) {
                    continue;
                }
                boolean agrees = !found.equals(".")
                        && there.computeIfAbsent(asked, x -> found).equals(found)
                        && here.computeIfAbsent(found, x -> asked).equals(asked)
                        && (wanted.colours() == Wanted.Colours.ANY || asked.equals(found));
                if (!agrees) {
                    return false;
                }
            }
        }
        for (int r = 0; r < motif.size(); r++) {
            for (int i = 0; i < motif.get(r).length; i++) {
                String found = seen(plate, plate.cellAt(row + r, plate.from() + place + i), wanted);
                boolean isBad = wanted.gaps() == Wanted.Gaps.APART && here.containsKey(found)
                        || wanted.gaps() == Wanted.Gaps.OPEN && !found.equals(".");
                if (motif.get(r)[i] == '.' && isBad) {
                    return false;
                }
            }
        }
        return true;
    }

    private static String seen(Plate plate, char key, Wanted wanted) {
        return key == '.' || wanted.colours() == Wanted.Colours.ANY
                ? String.valueOf(key)
                : plate.palette().get(key).orElseThrow().srgb();
    }

    private static boolean falls(
            Plate plate, Plate part, List<char[]> motif, Mirror mirror, int row, int place, Wanted wanted) {
        if (wanted.kinds() == Wanted.Kind.ANY) {
            return true;
        }
        Kinds there = Kinds.of(plate);
        List<char[]> ups = motif(kindsAsCells(part), mirror);
        for (int r = 0; r < motif.size(); r++) {
            for (int i = 0; i < motif.get(r).length; i++) {
                if (motif.get(r)[i] != '.') {
                    CableKind kind = there.at(row + r, plate.from() + place + i).orElseThrow();
                    boolean isUp = (ups.get(r)[i] == 'u') != mirror.turnsOver();
                    if (isUp != (kind == CableKind.UP)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private static Plate kindsAsCells(Plate part) {
        return Drawn.plate(Drawn.kinds(part).toArray(String[]::new));
    }
}
