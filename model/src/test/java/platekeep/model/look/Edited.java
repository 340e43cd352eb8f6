package platekeep.model.look;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/** Plates changed in the ways that must not hide what they look like; works on cells alone, by nothing of the code under test. */
public final class Edited {
    private Edited() {}

    private static Plate with(Plate plate, List<String> cells) {
        return plate.edit()
                .rows(cells.stream().map(Row::bare).toList())
                .pleats(Optional.of(new Pleats(1, 1 + cells.get(0).length())))
                .starts(List.of())
                .marks(List.of())
                .remarks(List.of())
                .lines(List.of())
                .build();
    }

    private static List<String> cells(Plate plate) {
        return plate.rows().stream().map(Row::cells).toList();
    }

    public static Plate leftRight(Plate plate) {
        return with(
                plate,
                cells(plate).stream()
                        .map(row -> new StringBuilder(row).reverse().toString())
                        .toList());
    }

    public static Plate topBottom(Plate plate) {
        List<String> turned = new ArrayList<>(cells(plate));
        java.util.Collections.reverse(turned);
        return with(plate, turned);
    }

    /** On a larger chart, off its middle. */
    public static Plate moved(Plate plate, int left, int right, int above, int below) {
        List<String> out = new ArrayList<>();
        String blank = ".".repeat(plate.positions() + left + right);
        for (int i = 0; i < above; i++) {
            out.add(blank);
        }
        cells(plate).forEach(row -> out.add(".".repeat(left) + row + ".".repeat(right)));
        for (int i = 0; i < below; i++) {
            out.add(blank);
        }
        return with(plate, out);
    }

    /** Every colour another one under another letter. */
    public static Plate recoloured(Plate plate, Random random) {
        Map<Character, Character> letters = new HashMap<>();
        TreeMap<Character, Colour> entries = new TreeMap<>();
        String free = "QWERTZUIOPASDFGHJKLYXCVBNM0123456789qwertzuiopasdfghjklyxcvbnm";
        plate.palette().entries().forEach((key, colour) -> {
            char letter = free.charAt(letters.size());
            letters.put(key, letter);
            entries.put(letter, colour.withSrgb(String.format("#%06X", random.nextInt(1 << 24))));
        });
        List<String> out = cells(plate).stream()
                .map(row -> row.chars()
                        .collect(
                                StringBuilder::new,
                                (b, c) -> b.append(letters.getOrDefault((char) c, (char) c)),
                                StringBuilder::append)
                        .toString())
                .toList();
        return with(plate, out).edit().palette(Palette.of(entries)).build();
    }

    /** The empty cloth worked in full in a colour that the plate does not have yet. */
    public static Plate filled(Plate plate) {
        char key = plate.palette().freeKey().orElseThrow();
        List<String> out =
                cells(plate).stream().map(row -> row.replace('.', key)).toList();
        return with(plate, out)
                .edit()
                .palette(plate.palette().with(key, new Colour("ground", "#D9E4DD", 4)))
                .build();
    }

    /** So large in percent; each place shows what most of its part of the old picture shows. */
    public static Plate scaled(Plate plate, int percent) {
        List<String> rows = cells(plate);
        double step = 100.0 / percent;
        List<String> out = new ArrayList<>();
        for (int r = 0; r < Math.round(rows.size() / step); r++) {
            StringBuilder wide = new StringBuilder();
            for (int i = 0; i < Math.round(rows.get(0).length() / step); i++) {
                wide.append(most(rows, r * step, i * step, step));
            }
            out.add(wide.toString());
        }
        return with(plate, out);
    }

    private static char most(List<String> rows, double top, double left, double step) {
        TreeMap<Character, Double> met = new TreeMap<>();
        for (int r = (int) top; r < Math.min(rows.size(), Math.ceil(top + step)); r++) {
            for (int i = (int) left; i < Math.min(rows.get(0).length(), Math.ceil(left + step)); i++) {
                double high = Math.min(r + 1, top + step) - Math.max(r, top);
                double wide = Math.min(i + 1, left + step) - Math.max(i, left);
                met.merge(rows.get(r).charAt(i), high * wide, Double::sum);
            }
        }
        char most = '.';
        for (Map.Entry<Character, Double> one : met.entrySet()) {
            most = one.getValue() > met.getOrDefault(most, 0.0) ? one.getKey() : most;
        }
        return most;
    }

    /** Some cables painted, erased or recoloured near others, a share of all cables. */
    public static Plate touched(Plate plate, double share, Random random) {
        List<StringBuilder> rows =
                new ArrayList<>(cells(plate).stream().map(StringBuilder::new).toList());
        int cables = cells(plate).stream()
                .mapToInt(r -> (int) r.chars().filter(c -> c != '.').count())
                .sum();
        List<Character> keys = new ArrayList<>(plate.palette().entries().keySet());
        for (int left = Math.max(1, (int) (cables * share)); left > 0; ) {
            int r = random.nextInt(rows.size());
            int i = random.nextInt(rows.get(0).length());
            boolean isNear =
                    rows.get(r).charAt(i) != '.' || i > 0 && rows.get(r).charAt(i - 1) != '.';
            if (isNear) {
                int which = random.nextInt(keys.size() + 1);
                rows.get(r).setCharAt(i, which == keys.size() ? '.' : keys.get(which));
                left--;
            }
        }
        return with(plate, rows.stream().map(StringBuilder::toString).toList());
    }

    /** A row put in twice, another one taken out. */
    public static Plate rowsChanged(Plate plate, Random random) {
        List<String> rows = new ArrayList<>(cells(plate));
        int at = random.nextInt(rows.size());
        rows.add(at, rows.get(at));
        if (rows.size() > 6) {
            rows.remove(random.nextInt(rows.size()));
        }
        return with(plate, rows);
    }

    /** A small bird in the sky: two cables over the picture's left end, away from it. */
    public static Plate withBird(Plate plate) {
        Plate roomy = moved(plate, 4, 1, 4, 0);
        List<String> rows = new ArrayList<>(cells(roomy));
        char key = plate.palette().entries().firstKey();
        rows.set(1, "." + key + key + rows.get(1).substring(3));
        return with(roomy, rows);
    }
}
