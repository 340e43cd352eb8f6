package platekeep.model.join.edits;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/**
 * Measures joining: {@code JoinScore <seed> <count> [--kind <part of a kind>] [--dump <folder>] [--lines]}. Prints a table
 * of verdicts by kind of edit, for our joining and, with {@code --lines}, for plain line merging of the same texts; the
 * first failing cases go into the folder.
 */
public final class JoinScore {
    private static final int DUMPS = 40;
    private final Map<String, Map<Verdict, Integer>> byKind = new TreeMap<>();
    private final Map<Verdict, Integer> all = new EnumMap<>(Verdict.class);
    private int dumped;

    /** Our own joining, hands unknown. */
    static Plate ours(Plate base, Plate mine, Plate theirs) {
        return Join.of(Optional.of(base), mine, theirs, Hands.UNKNOWN).plate();
    }

    public static void main(String[] args) throws IOException {
        List<String> words = List.of(args);
        long seed = words.isEmpty() ? 1 : Long.parseLong(words.get(0));
        int count = words.size() < 2 ? 2000 : Integer.parseInt(words.get(1));
        Optional<String> kind = after("--kind", words);
        Optional<Path> dump = after("--dump", words).map(Path::of);
        JoinScore score = new JoinScore();
        score.measure(seed, count, kind.orElse(""), JoinScore::ours, dump);
        score.print("join", System.out);
        if (words.contains("--lines")) {
            JoinScore lines = new JoinScore();
            lines.measure(seed, count, kind.orElse(""), new LineMerge(), Optional.empty());
            lines.print("plain line merging", System.out);
        }
    }

    private static Optional<String> after(String option, List<String> words) {
        int at = words.indexOf(option);
        return at >= 0 && at + 1 < words.size() ? Optional.of(words.get(at + 1)) : Optional.empty();
    }

    void measure(long seed, int count, String kind, Joiner joiner, Optional<Path> dump) {
        EditCases.all(seed, count).filter(c -> c.kind().contains(kind)).forEach(c -> {
            Verdict.Answer answer = Verdict.of(c, joiner);
            all.merge(answer.verdict(), 1, Integer::sum);
            for (String part : c.kind().split("[+ ]")) {
                byKind.computeIfAbsent(part, k -> new EnumMap<>(Verdict.class))
                        .merge(answer.verdict(), 1, Integer::sum);
            }
            if (answer.verdict() != Verdict.RIGHT && dump.isPresent() && dumped < DUMPS) {
                dump(dump.get(), c, answer);
            }
        });
    }

    private void dump(Path folder, Case c, Verdict.Answer answer) {
        try {
            Path to = Files.createDirectories(folder.resolve(String.format("%02d", dumped++)));
            Files.write(to.resolve("base.json"), PlateText.bytes(c.base()));
            Files.write(to.resolve("mine.json"), PlateText.bytes(c.mine()));
            Files.write(to.resolve("theirs.json"), PlateText.bytes(c.theirs()));
            Files.write(to.resolve("want.json"), PlateText.bytes(c.want()));
            Files.write(to.resolve("got.json"), PlateText.bytes(answer.got()));
            Files.writeString(
                    to.resolve("reason.txt"), c.kind() + ": " + answer.verdict().words() + ": " + answer.why() + "\n");
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    void print(String title, PrintStream out) {
        out.printf("%n%-22s", title);
        for (Verdict v : Verdict.values()) {
            out.printf("%17s", v.words());
        }
        out.println();
        byKind.forEach((kind, counts) -> line(kind, counts, out));
        line("all cases", all, out);
    }

    private static void line(String kind, Map<Verdict, Integer> counts, PrintStream out) {
        out.printf("%-22s", kind);
        for (Verdict v : Verdict.values()) {
            out.printf("%17d", counts.getOrDefault(v, 0));
        }
        out.println();
    }
}
