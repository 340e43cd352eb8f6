package platekeep.model.find;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import platekeep.model.colour.Ciede2000;
import platekeep.model.colour.Lab;

/**
 * Colours that stand for all others like them: each is one that plates use, the most used ones first, none like one
 * before it. So a library shows the colours that it has, and not a rainbow that it has not.
 */
final class ColourBins {
    /** Two colours are alike up to this CIEDE2000: clearly not the same side by side, but called by one name. */
    static final double ALIKE = 10;

    /** The most that lightness alone weighs in CIEDE2000, at either end of its scale. */
    private static final double LIGHTNESS = 1.76;

    private final List<Bin> bins;
    private final Map<Integer, List<String>> near;

    /** A colour that stands for others. */
    private record Bin(String text, Lab lab) {}

    private ColourBins(List<Bin> bins, Map<Integer, List<String>> near) {
        this.bins = bins;
        this.near = near;
    }

    /**
     * @param used how many plates use each colour
     */
    static ColourBins of(Map<Integer, Integer> used) {
        List<Integer> colours = used.keySet().stream()
                .sorted(Comparator.comparing((Integer colour) -> -used.get(colour))
                        .thenComparing(colour -> colour))
                .toList();
        return new ColourBins(List.of(), Map.of()).with(colours);
    }

    /** The same with something that stands for each of some more colours, this one itself where nothing is missing. */
    ColourBins with(Iterable<Integer> colours) {
        List<Bin> more = new ArrayList<>(bins);
        Map<Integer, Lab> fresh = new HashMap<>();
        for (int rgb : colours) {
            if (near.containsKey(rgb) || fresh.containsKey(rgb)) {
                continue;
            }
            Lab lab = Lab.of(rgb);
            fresh.put(rgb, lab);
            if (more.stream().noneMatch(bin -> alike(lab, bin.lab()))) {
                more.add(new Bin(text(rgb), lab));
            }
        }
        if (fresh.isEmpty()) {
            return this;
        }
        if (more.size() > bins.size()) {
            near.keySet().forEach(rgb -> fresh.put(rgb, Lab.of(rgb)));
        }
        Map<Integer, List<String>> newNear = new HashMap<>(near);
        fresh.forEach((rgb, lab) -> newNear.put(
                rgb,
                more.stream()
                        .filter(bin -> alike(lab, bin.lab()))
                        .map(Bin::text)
                        .toList()));
        return new ColourBins(more, newNear);
    }

    /** The colours that stand for those of a plate, all of which are known; no doubles. */
    Set<String> near(Summary summary) {
        Set<String> all = new LinkedHashSet<>();
        summary.colours().forEach(colour -> all.addAll(near.get(colour)));
        return all;
    }

    int size() {
        return bins.size();
    }

    /** Greys from dark to light, then the others around the circle of hues, a twelfth of it at a time. */
    Comparator<String> byHue() {
        Map<String, Double> places = new HashMap<>();
        bins.forEach(bin -> places.put(bin.text(), place(bin.lab())));
        return Comparator.comparing(places::get);
    }

    private static double place(Lab lab) {
        double chroma = Math.hypot(lab.a(), lab.b());
        double hue = (Math.toDegrees(Math.atan2(lab.b(), lab.a())) + 360) % 360;
        return chroma < 10 ? lab.l() - 1000 : Math.floor(hue / 30) * 200 + lab.l();
    }

    /** Whether two colours look alike. */
    static boolean alike(Lab one, Lab other) {
        return Math.abs(one.l() - other.l()) <= ALIKE * LIGHTNESS && Ciede2000.difference(one, other) <= ALIKE;
    }

    private static String text(int rgb) {
        return String.format(Locale.ROOT, "#%06X", rgb);
    }

    /** The colour that a text such as {@code #A63C2B} names. */
    static int rgb(String text) {
        return Integer.parseInt(text.substring(1), 16);
    }
}
