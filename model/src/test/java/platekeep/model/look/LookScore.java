package platekeep.model.look;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import platekeep.model.look.Looks.Near;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/**
 * How well plates are found by look in a folder of plates, and how fast: each plate is mirrored, moved, recoloured, edited, and
 * must then come back first among all of the library ({@code main FOLDER [HOW MANY PLATES TO TRY]}).
 */
public final class LookScore {
    private static final int SEED = 7;

    private final List<Plate> plates;
    private final Looks looks;
    private final List<Optional<Signature>> signatures;

    private LookScore(List<Plate> plates) {
        this.plates = plates;
        this.signatures = plates.stream().map(Signature::of).toList();
        this.looks = new Looks(signatures);
    }

    /** The ways in which a plate is changed, each with how it is told. */
    public static Map<String, BiFunction<Plate, Random, Plate>> edits() {
        Map<String, BiFunction<Plate, Random, Plate>> edits = new LinkedHashMap<>();
        edits.put("as it is", (plate, random) -> plate);
        edits.put("mirrored left to right", (plate, random) -> Edited.leftRight(plate));
        edits.put("mirrored top to bottom", (plate, random) -> Edited.topBottom(plate));
        edits.put("moved on a larger chart", (plate, random) -> Edited.moved(plate, 9, 2, 5, 1));
        edits.put("recoloured", Edited::recoloured);
        edits.put("ground worked in full", (plate, random) -> Edited.filled(plate));
        edits.put("2 % of cables changed", (plate, random) -> Edited.touched(plate, 0.02, random));
        edits.put("8 % of cables changed", (plate, random) -> Edited.touched(plate, 0.08, random));
        edits.put("a row in, a row out", Edited::rowsChanged);
        edits.put("a bird in the sky", (plate, random) -> Edited.withBird(plate));
        edits.put("worked half as large again", (plate, random) -> Edited.scaled(plate, 150));
        edits.put("worked four fifths as large", (plate, random) -> Edited.scaled(plate, 80));
        edits.put(
                "mirrored, moved, recoloured, 4 % changed",
                (plate, random) -> Edited.touched(
                        Edited.recoloured(Edited.moved(Edited.leftRight(plate), 3, 8, 0, 4), random), 0.04, random));
        return edits;
    }

    public static void main(String[] args) throws IOException {
        long start = cpu();
        List<Plate> plates = read(Path.of(args[0]));
        print("%d plates read in %d ms%n", plates.size(), millis(start));
        LookScore score = new LookScore(plates);
        int tried = args.length > 1 ? Integer.parseInt(args[1]) : Math.min(500, plates.size());
        score.recall(tried);
        score.apart(tried);
        score.thresholds(tried);
        score.speed();
        score.doubles();
        score.motifs();
    }

    /** All plates in the files below a folder, in order of path. */
    static List<Plate> read(Path folder) throws IOException {
        List<Plate> plates = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file :
                    files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                PlateText.read(file.toString(), Files.readAllBytes(file))
                        .value()
                        .ifPresent(plates::add);
            }
        }
        return plates;
    }

    private void recall(int tried) {
        for (Map.Entry<String, BiFunction<Plate, Random, Plate>> edit : edits().entrySet()) {
            Random random = new Random(SEED);
            int first = 0;
            int five = 0;
            int laidFirst = 0;
            int asked = 0;
            double like = 0;
            for (int i = 0; i < tried; i++) {
                int at = (int) ((long) i * plates.size() / tried);
                if (signatures.get(at).isEmpty()) {
                    continue;
                }
                Plate changed = edit.getValue().apply(plates.get(at), random);
                Signature signature = Signature.of(changed).orElseThrow();
                List<Near> near = looks.nearest(signature, 30);
                double own = likeness(near, at);
                like += own;
                asked++;
                first += near.stream().filter(n -> n.likeness() > own).count() < 1 ? 1 : 0;
                five += near.stream().filter(n -> n.likeness() > own).count() < 5 ? 1 : 0;
                laidFirst += laidFirst(changed, near, at) ? 1 : 0;
            }
            print(
                    "%-42s first %6.2f %%   among five %6.2f %%   first when laid over %6.2f %%   likeness %.3f%n",
                    edit.getKey(),
                    100.0 * first / asked,
                    100.0 * five / asked,
                    100.0 * laidFirst / asked,
                    like / asked);
        }
    }

    private static double likeness(List<Near> near, int at) {
        return near.stream()
                .filter(n -> n.at() == at)
                .mapToDouble(Near::likeness)
                .findFirst()
                .orElse(0);
    }

    private boolean laidFirst(Plate changed, List<Near> near, int at) {
        double own = -1;
        double best = -1;
        for (Near n : near) {
            double value = Overlay.of(changed, plates.get(n.at()), n.mirror())
                    .map(laid -> Math.max(laid.agreement(), n.likeness()))
                    .orElse(n.likeness());
            own = n.at() == at ? value : own;
            best = Math.max(best, value);
        }
        return own >= best && own >= 0;
    }

    /** How like the second likest is, which is another plate or a double. */
    private void apart(int tried) {
        int[] share = new int[11];
        for (int i = 0; i < tried; i++) {
            int at = (int) ((long) i * plates.size() / tried);
            signatures
                    .get(at)
                    .ifPresent(s -> looks.nearest(s, 2).stream()
                            .filter(n -> n.at() != at)
                            .findFirst()
                            .ifPresent(n -> share[(int) (n.likeness() * 10)]++));
        }
        print("likeness of the nearest other plate, by tenths from 0: %s%n", java.util.Arrays.toString(share));
        double sum = 0;
        int pairs = 0;
        Random random = new Random(SEED);
        for (int i = 0; i < 20_000; i++) {
            Optional<Signature> one = signatures.get(random.nextInt(plates.size()));
            Optional<Signature> other = signatures.get(random.nextInt(plates.size()));
            if (one.isPresent() && other.isPresent() && one != other) {
                sum += one.get().likeness(other.get());
                pairs++;
            }
        }
        print("likeness of two plates by chance: %.3f%n", sum / pairs);
    }

    /**
     * From which likeness on a plate is worth showing: how many of all plates are so like one by chance, and how many of its changed selves are.
     */
    private void thresholds(int tried) {
        double[] least = {0.5, 0.55, 0.6, 0.65, 0.7, 0.75, 0.8};
        int[] chance = new int[least.length];
        int asked = 0;
        for (int i = 0; i < Math.min(tried, 60); i++) {
            int at = (int) ((long) i * plates.size() / Math.min(tried, 60));
            if (signatures.get(at).isPresent()) {
                asked++;
                count(looks.nearest(signatures.get(at).get(), plates.size()), at, least, chance);
            }
        }
        for (int t = 0; t < least.length; t++) {
            print(
                    "likeness of %.2f and more: %8.2f other plates for each;  of its changed selves",
                    least[t], chance[t] / (double) asked);
            for (BiFunction<Plate, Random, Plate> edit : edits().values()) {
                print(" %3.0f %%", 100 * selves(edit, Math.min(tried, 60), least[t]));
            }
            print("%n");
        }
    }

    private void count(List<Near> near, int at, double[] least, int[] into) {
        for (Near n : near) {
            for (int t = 0; t < least.length && n.at() != at; t++) {
                into[t] += n.likeness() >= least[t] ? 1 : 0;
            }
        }
    }

    private double selves(BiFunction<Plate, Random, Plate> edit, int tried, double least) {
        Random random = new Random(SEED);
        int all = 0;
        int like = 0;
        for (int i = 0; i < tried; i++) {
            int at = (int) ((long) i * plates.size() / tried);
            if (signatures.get(at).isPresent()) {
                Plate changed = edit.apply(plates.get(at), random);
                all++;
                double own = likeness(
                        new Looks(List.of(signatures.get(at)))
                                .nearest(Signature.of(changed).orElseThrow(), 1),
                        0);
                like += own >= least ? 1 : 0;
            }
        }
        return like / (double) all;
    }

    private void speed() {
        for (int round = 0; round < 3; round++) {
            long start = cpu();
            plates.forEach(Signature::of);
            long made = cpu() - start;
            start = cpu();
            int asked = 0;
            for (int i = 0; i < Math.min(50, plates.size()); i++) {
                asked += signatures
                        .get(i)
                        .map(s -> looks.nearest(s, 60).size() > 0 ? 1 : 0)
                        .orElse(0);
            }
            print(
                    "signatures of all: %d ms (%d us each); a question to all: %.2f ms%n",
                    made / 1_000_000, made / 1000 / plates.size(), (cpu() - start) / 1e6 / asked);
        }
    }

    private void doubles() {
        for (double least : new double[] {0.8, 0.85, 0.9}) {
            long start = cpu();
            List<int[]> pairs = new ArrayList<>();
            for (int r = 0; r < looks.readings(); r++) {
                for (Near near : looks.after(r, least)) {
                    pairs.add(
                            new int[] {looks.owner(r), near.at(), near.mirror().ordinal()});
                }
            }
            long found = millis(start);
            Map<Integer, Overlay.Laid> laid = new LinkedHashMap<>();
            int close = 0;
            for (int[] pair : pairs) {
                Overlay.Laid one = laid.computeIfAbsent(pair[0], i -> Overlay.Laid.of(plates.get(i)));
                Overlay.Laid other = laid.computeIfAbsent(pair[1], i -> Overlay.Laid.of(plates.get(i)));
                close += one.over(other, Mirror.values()[pair[2]], 0.92).isPresent() ? 1 : 0;
            }
            print(
                    "near doubles from a likeness of %.2f on: %d pairs in %d ms, %d of them agree in 92 %% of their places, in %d ms%n",
                    least, pairs.size(), found, close, millis(start));
        }
    }

    private void motifs() {
        Random random = new Random(SEED);
        for (int round = 0; round < 6; round++) {
            Plate from = plates.get(random.nextInt(plates.size()));
            Optional<Motif> motif = part(from, random).flatMap(Motif::of);
            if (motif.isEmpty()) {
                continue;
            }
            MotifFinder finder = new MotifFinder(motif.get(), Wanted.USUAL);
            long start = cpu();
            int found = 0;
            for (Plate plate : plates) {
                List<Occurrence> in = finder.in(plate, 1);
                found += in.isEmpty() ? 0 : 1;
            }
            print(
                    "a motif of %d x %d in all: %d plates in %d ms%n",
                    motif.get().width(), motif.get().height(), found, millis(start));
        }
    }

    private static Optional<Plate> part(Plate plate, Random random) {
        int size = Math.min(plate.rows().size(), 6 + random.nextInt(10));
        int wide = Math.min(plate.positions(), 8 + random.nextInt(16));
        if (size == 0) {
            return Optional.empty();
        }
        int top = (plate.rows().size() - size) / 2;
        int left = (plate.positions() - wide) / 2;
        return Optional.of(plate.edit()
                .rows(plate.rows().subList(top, top + size).stream()
                        .map(r -> r.withCells(r.cells().substring(left, left + wide)))
                        .toList())
                .pleats(plate.pleats().map(p -> p.withEnds(p.from() + left, p.from() + left + wide)))
                .build());
    }

    /** Processor time, since others may use the machine meanwhile. */
    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static long millis(long start) {
        return (cpu() - start) / 1_000_000;
    }

    private static void print(String format, Object... values) {
        System.out.printf(java.util.Locale.ROOT, format, values);
    }
}
