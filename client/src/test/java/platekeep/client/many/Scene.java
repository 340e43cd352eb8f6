package platekeep.client.many;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import platekeep.model.draw.ChartScale;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Unknown;

/**
 * A picture put together: what stands on the ground or swims, a strip below, a few things in the sky.
 *
 * @param rows the chart's cells, top row first
 * @param main what it is a picture of, the first one the largest
 */
record Scene(List<String> rows, Palette palette, List<Motif> main) {

    private static final Map<String, String> COLOURS = colours();

    private static Map<String, String> colours() {
        SortedMap<String, String> colours = new TreeMap<>();
        String all = "brick A63C2B,rust D0692F,coral E2654F,comb red E22E5A,wine 6A2B24,rose pink E88FA6,plum 6B3A66,"
                + "lavender 9C86C4,navy 1F2F57,ink blue 33508F,sea blue 2E7FA8,mist A8CFDD,mint A5D6D0,teal 3E8C94,"
                + "deep teal 173F4C,sea green 38725A,pine 2A5B49,leaf 568847,young leaf 9CBF5C,moss 808B22,"
                + "pear yellow F8DB5C,lamp yellow EBB93A,buttercup F0C84B,straw F6E3A1,apricot EE9A3A,oat F0DFB6,"
                + "biscuit EBC99C,sandstone CDAC7E,tan B98450,timber 7A4E2C,bark 5B3C29,coal 2B2426,slate 7C868F,"
                + "pewter B9C0C4,chalk F4F1E8,copper B14D04";
        for (String colour : all.split(",")) {
            int gap = colour.lastIndexOf(' ');
            colours.put(colour.substring(0, gap), "#" + colour.substring(gap + 1));
        }
        return colours;
    }

    /** The names of all threads there are. */
    static List<String> threads() {
        return List.copyOf(COLOURS.keySet());
    }

    /** A thread by its name; the shade's number follows from the name. */
    static Colour thread(String name, Chance chance) {
        int shade = threads().indexOf(name) + 1;
        Optional<String> floss = chance.percent(60) ? Optional.of("shade " + shade) : Optional.empty();
        return new Colour(name, COLOURS.get(name), chance.percent(80) ? 4 : 3, floss, Unknown.NONE);
    }

    static Scene drawn(Motif motif, Chance chance) {
        int pleats = chance.percent(65) ? chance.between(90, 102) : chance.between(40, 200);
        int rows = chance.percent(65) ? chance.between(36, 44) : chance.between(20, 100);
        return new Drawing(motif, new Sheet(rows, pleats - 1), chance).scene();
    }

    /** A scene on its way. */
    private static final class Drawing {
        private final Chance chance;
        private final Sheet sheet;
        private final List<Motif> main = new ArrayList<>();
        private Palette palette = Palette.EMPTY;

        Drawing(Motif motif, Sheet sheet, Chance chance) {
            this.chance = chance;
            this.sheet = sheet;
            main.add(motif);
        }

        Scene scene() {
            Motif motif = main.get(0);
            double strip = sheet.height() * chance.between(0.08, 0.18);
            boolean low = !motif.flies() || chance.percent(40);
            double room = sheet.height() - (low ? strip * 0.7 : 0) - ChartScale.ROW_TO_PLEAT;
            if (low) {
                ground(motif.swims(), strip);
            }
            double high = Math.min(room, (sheet.positions() - 2) / motif.shape());
            high *= chance.between(0.7, 1.0);
            double wide = high * motif.shape();
            int most = (int) Math.max(1, Math.min(4, sheet.positions() / (wide * 1.15)));
            int many = chance.between(1, most);
            place(motif, many, wide, high, room);
            sky(motif);
            return new Scene(sheet.rows(), palette, List.copyOf(main));
        }

        private void place(Motif motif, int many, double wide, double high, double room) {
            double slot = (double) sheet.positions() / many;
            boolean sameColours = chance.percent(50);
            char[] keys = keys(4);
            for (int i = 0; i < many; i++) {
                double x = slot * i + (slot - wide) / 2;
                double grow = i == 0 ? 1 : chance.between(0.75, 1.0);
                double y = motif.flies() ? (room - high) * chance.between(0.2, 0.8) : room - high * grow;
                Rectangle2D box = new Rectangle2D.Double(x + wide * (1 - grow) / 2, y, wide * grow, high * grow);
                motif.draw(sheet.brush(box, chance.percent(30)), sameColours ? keys : keys(4), chance);
            }
        }

        private void ground(boolean water, double strip) {
            double top = sheet.height() - strip;
            char[] keys = keys(2);
            Sheet.Brush brush = sheet.brush(new Rectangle2D.Double(0, top, sheet.positions(), strip), false);
            if (water) {
                brush.box(keys[0], 0, 0.35, 1, 0.65);
                double wave = 8.0 / sheet.positions();
                for (double x = 0; x < 1; x += wave) {
                    brush.outline(keys[1], x, 0.5, x + wave / 2, 0.1, x + wave, 0.5);
                }
            } else if (chance.percent(35)) {
                brush.box(keys[0], 0, 0.4, 1, 0.15).box(keys[0], 0, 0.75, 1, 0.15);
                double post = 7.0 / sheet.positions();
                for (double x = post / 3; x < 1; x += post) {
                    brush.outline(keys[1], x, 1, x, 0.15, x + post / 6, 0, x + post / 3, 0.15, x + post / 3, 1);
                }
            } else {
                brush.box(keys[0], 0, 0.4, 1, 0.6);
                double tuft = 11.0 / sheet.positions();
                for (double x = chance.between(0, tuft); x < 1; x += tuft * chance.between(0.7, 1.6)) {
                    brush.outline(keys[1], x, 0.45, x + tuft / 4, 0, x + tuft / 2, 0.45);
                }
            }
        }

        private void sky(Motif motif) {
            int things = chance.between(0, 3);
            List<Motif> small = List.of(Motif.STAR, Motif.BIRD, Motif.BALLOON, Motif.KITE, Motif.HEART, Motif.FLOWER);
            for (int i = 0; i < things; i++) {
                Motif thing = chance.of(small);
                double high = sheet.height() * chance.between(0.18, 0.32);
                Rectangle2D box = new Rectangle2D.Double(
                        chance.between(0, sheet.positions() - high * thing.shape()),
                        chance.between(1, sheet.height() * 0.4),
                        high * thing.shape(),
                        high);
                if (sheet.isFree(box) && thing != motif) {
                    thing.draw(sheet.brush(box, chance.percent(50)), keys(4), chance);
                    main.add(thing);
                }
            }
        }

        /** Keys of so many colours; new ones come into the palette while it is small. */
        private char[] keys(int count) {
            char[] keys = new char[count];
            for (int i = 0; i < count; i++) {
                keys[i] = key(i == 0 ? 30 : 60);
            }
            return keys;
        }

        private char key(int percentOld) {
            List<Character> there = List.copyOf(palette.entries().keySet());
            if (there.size() >= 9 || !there.isEmpty() && chance.percent(percentOld)) {
                return chance.of(there);
            }
            String name = chance.of(threads());
            for (Map.Entry<Character, Colour> entry : palette.entries().entrySet()) {
                if (entry.getValue().name().equals(name)) {
                    return entry.getKey();
                }
            }
            char key = palette.has(name.charAt(0)) ? palette.freeKey().orElseThrow() : name.charAt(0);
            palette = palette.with(key, thread(name, chance));
            return key;
        }
    }
}
