package platekeep.model.join.edits.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import platekeep.model.plate.Palette;

/** Draws one figure, row on row, each row resting on the one below. */
final class Shape {
    private final Random chance;
    private final List<Character> colours;

    Shape(Random chance, Palette palette) {
        this.chance = chance;
        List<Character> keys = new ArrayList<>(palette.entries().keySet());
        int used = Math.max(1, keys.size() - chance.nextInt(3));
        this.colours = keys.subList(0, used);
    }

    /** Draws between the columns left and right, both included; blank rows may stay above and below. */
    void draw(char[][] cells, int left, int right) {
        int height = cells.length;
        int below = chance.nextInt(Math.max(1, height / 5));
        int above = chance.nextInt(Math.max(1, height / 4));
        int a = left + chance.nextInt(Math.max(1, (right - left) / 3));
        int b = right - chance.nextInt(Math.max(1, (right - left) / 3));
        int style = chance.nextInt(4);
        char colour = colour();
        for (int y = height - 1 - below; y >= above; y--) {
            if (chance.nextInt(3) == 0) {
                colour = colour();
            }
            for (int x = a; x <= b; x++) {
                cells[y][x] = colour;
            }
            ornament(cells[y], a, b);
            if (style == 0 || style == 3 && chance.nextBoolean()) {
                a = Math.min(a + 1, (a + b) / 2);
                b = Math.max(b - 1, (a + b) / 2);
            } else if (style == 1 && chance.nextInt(3) == 0) {
                a = Math.max(left, Math.min(a + chance.nextInt(3) - 1, b));
                b = Math.min(right, Math.max(b + chance.nextInt(3) - 1, a));
            }
        }
    }

    private void ornament(char[] row, int a, int b) {
        if (b - a > 3 && chance.nextInt(3) == 0) {
            int x = a + 1 + chance.nextInt(b - a - 2);
            row[x] = colour();
            if (chance.nextBoolean()) {
                row[a + b - x] = row[x];
            }
        }
    }

    private char colour() {
        return Words.any(colours, chance);
    }
}
