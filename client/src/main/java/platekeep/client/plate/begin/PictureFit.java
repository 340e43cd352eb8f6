package platekeep.client.plate.begin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import platekeep.model.colour.Reduction;
import platekeep.model.draw.ChartScale;
import platekeep.model.plate.CableKind;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/**
 * A picture fitted to pleats and rows. Each cable takes the mean colour of the very place that it covers on the cloth:
 * two pleats wide, half a row high, up and down in running bond.
 *
 * @param pleats how many the chart covers, 2 to 2001
 * @param rows how many it has, 1 to 2000
 * @param colours to how many the picture's are reduced, 1 to 62; not used with a given palette
 * @param palette colours to keep to instead
 * @param least patches of fewer cables are cleaned away
 * @param ground whether what lies around the figure is worked
 */
record PictureFit(int pleats, int rows, int colours, Optional<Palette> palette, int least, Ground ground) {

    /** What lies around the figure: the colour that most of the picture's edge has. */
    enum Ground {
        WORKED,
        LEFT_OUT
    }

    /** The rows that keep a picture's proportions when it covers so many pleats. */
    static int rowsFor(Picture picture, int pleats) {
        double rows = pleats * (double) picture.height() / picture.width() / ChartScale.ROW_TO_PLEAT;
        return (int) Math.max(1, Math.min(Plate.MOST_ROWS, Math.round(rows)));
    }

    /** The plate. Linear in the picture's dots and the chart's cells, times the number of colours. */
    Plate plate(Picture picture, String id, String title, RandomGenerator random) {
        int positions = Math.min(Pleats.MOST_POSITIONS, pleats - 1);
        int[] seen = seen(picture, positions);
        int[] solid = Arrays.stream(seen).filter(c -> c != Picture.CLEAR).toArray();
        List<Character> keys = new ArrayList<>();
        int[] few = few(solid, keys);
        int[] cells = numbers(seen, few);
        if (ground == Ground.LEFT_OUT) {
            leaveGroundOut(cells, positions);
        }
        return charted(Specks.cleaned(cells, positions, least), few, keys, new Named(id, title, random));
    }

    private record Named(String id, String title, RandomGenerator random) {}

    private int[] seen(Picture picture, int positions) {
        double across = picture.width() / (double) (positions + 1);
        double down = picture.height() / (double) rows;
        int[] seen = new int[rows * positions];
        for (int r = 0; r < rows; r++) {
            for (int i = 0; i < positions; i++) {
                double top = (r + (Charts.kind(rows, r, i) == CableKind.UP ? 0 : 0.5)) * down;
                seen[r * positions + i] = picture.mean(i * across, top, (i + 2) * across, top + down / 2);
            }
        }
        return seen;
    }

    private int[] few(int[] solid, List<Character> keys) {
        if (palette.isPresent() && !palette.get().entries().isEmpty()) {
            keys.addAll(palette.get().entries().keySet());
            return palette.get().entries().values().stream()
                    .mapToInt(Colour::rgb)
                    .toArray();
        }
        int[] few = Reduction.of(solid, colours);
        for (int n = 0; n < few.length; n++) {
            keys.add(Palette.KEYS.charAt(n));
        }
        return few;
    }

    private static int[] numbers(int[] seen, int[] few) {
        int[] numbers = few.length == 0 ? seen.clone() : Reduction.nearest(seen, few);
        for (int at = 0; at < seen.length; at++) {
            numbers[at] = seen[at] == Picture.CLEAR ? Picture.CLEAR : numbers[at];
        }
        return numbers;
    }

    /** Takes away what has the commonest colour of the edge and hangs together with the edge. */
    private void leaveGroundOut(int[] cells, int width) {
        TreeMap<Integer, Integer> edge = new TreeMap<>();
        List<Integer> next = new ArrayList<>();
        for (int at = 0; at < cells.length; at++) {
            int x = at % width;
            boolean isEdge = x == 0 || x == width - 1 || at < width || at >= cells.length - width;
            if (isEdge && cells[at] != Picture.CLEAR) {
                edge.merge(cells[at], 1, Integer::sum);
                next.add(at);
            }
        }
        int most = edge.entrySet().stream()
                .max(java.util.Map.Entry.comparingByValue())
                .map(java.util.Map.Entry::getKey)
                .orElse(Picture.CLEAR);
        for (int n = 0; n < next.size(); n++) {
            int at = next.get(n);
            if (cells[at] == most && most != Picture.CLEAR) {
                cells[at] = Picture.CLEAR;
                next.addAll(Specks.around(at, width, cells.length));
            }
        }
    }

    private Plate charted(int[] cells, int[] few, List<Character> keys, Named named) {
        int width = cells.length / rows;
        boolean[] used = new boolean[few.length];
        List<String> lines = new ArrayList<>();
        for (int r = 0; r < rows; r++) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < width; i++) {
                int cell = cells[r * width + i];
                line.append(cell == Picture.CLEAR ? Row.EMPTY : keys.get(cell));
                if (cell != Picture.CLEAR) {
                    used[cell] = true;
                }
            }
            lines.add(line.toString());
        }
        return Charts.plate(named.id(), named.title(), palette(few, keys, used), lines, named.random());
    }

    private Palette palette(int[] few, List<Character> keys, boolean[] used) {
        if (palette.isPresent()) {
            return palette.get();
        }
        TreeMap<Character, Colour> entries = new TreeMap<>();
        for (int n = 0; n < few.length; n++) {
            if (used[n]) {
                String srgb = String.format(Locale.ROOT, "#%06X", few[n]);
                entries.put(keys.get(n), new Colour("colour " + (n + 1), srgb, 4));
            }
        }
        return new Palette(entries);
    }
}
