package platekeep.model.find;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import platekeep.model.plate.Age;
import platekeep.model.plate.Origin;
import platekeep.model.plate.State;

/**
 * What a keystroke costs on made-up plates: typing word by word, narrowing down, and a change of one plate; beside them
 * a plain scan of the same texts. Prints milliseconds of processor time; run by the command that DEVELOPERS.md gives.
 */
public final class FindBenchmark {
    private static final int TRIES = 15;
    private static final ThreadMXBean THREAD = ManagementFactory.getThreadMXBean();

    private final Random random = new Random(20261126);
    private final List<String> vocabulary = vocabulary();

    private FindBenchmark() {}

    /** How many plates, as the only word; ten thousand without one. */
    public static void main(String... words) {
        new FindBenchmark().run(words.length == 0 ? 10_000 : Integer.parseInt(words[0]));
    }

    private void run(int count) {
        List<Summary> plates = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            plates.add(plate(i));
        }
        report("build of the index", () -> Index.of(plates).ready());
        Index index = Index.of(plates).ready();
        System.out.printf("%d plates, %d words%n", index.size(), index.terms().size());
        String typed = vocabulary.get(17) + " " + vocabulary.get(230);
        for (int end = 1; end <= typed.length(); end++) {
            Query query = Query.ALL.withWords(typed.substring(0, end));
            report("\"" + query.words() + "\": " + index.find(query).size(), () -> index.find(query));
        }
        String slip = vocabulary.get(17).charAt(1)
                + vocabulary.get(17).substring(0, 1)
                + vocabulary.get(17).substring(2);
        report("slip \"" + slip + "\"", () -> index.find(Query.ALL.withWords(slip)));
        Query all = Query.ALL
                .turn(Group.THEME, "theme 3")
                .turn(Group.AGE, "toddler")
                .turn(Group.COLOUR, "#4F7A3A");
        report("theme, age, any colour: " + index.find(all).size(), () -> index.find(all));
        report("one plate changed", () -> index.with(List.of(plate(7)), List.of()));
        Index changed = index.with(List.of(plate(7)), List.of());
        report("after that", () -> changed.find(Query.ALL.withWords(typed)));
        List<String> texts = plates.stream().map(FindBenchmark::plain).toList();
        report("plain scan for \"" + typed + "\"", () -> scan(texts, typed.split(" ")));
    }

    private static <T> void report(String what, Supplier<T> work) {
        double[] times = new double[TRIES];
        for (int i = 0; i < TRIES; i++) {
            long start = THREAD.getCurrentThreadCpuTime();
            work.get();
            times[i] = (THREAD.getCurrentThreadCpuTime() - start) / 1e6;
        }
        double first = times[0];
        Arrays.sort(times);
        System.out.printf(
                "%-48s median %8.3f ms, slowest %8.3f, first %8.3f%n", what, times[TRIES / 2], times[TRIES - 1], first);
    }

    private static int scan(List<String> texts, String... words) {
        int found = 0;
        for (String text : texts) {
            found += Stream.of(words).allMatch(text::contains) ? 1 : 0;
        }
        return found;
    }

    private static String plain(Summary summary) {
        return String.join(" ", SummaryWords.of(summary).keySet());
    }

    private Summary plate(int i) {
        return new Summary(
                "k" + i,
                "id" + i,
                "Harbour",
                text(3),
                Optional.of("H-" + i),
                some("theme ", 60, 3),
                List.of(),
                List.of(Age.values()[random.nextInt(5)], Age.values()[random.nextInt(5)]).stream()
                        .distinct()
                        .toList(),
                some("use ", 8, 2),
                List.of(random.nextBoolean() ? "Wenna Tarrow" : "Isolde Marsh"),
                Origin.NONE,
                Optional.of(State.values()[random.nextInt(4)]),
                some("series ", 400, 1),
                20 + random.nextInt(200),
                5 + random.nextInt(80),
                Stream.generate(() -> random.nextInt(0x1000000) & 0xE0E0E0)
                        .limit(6)
                        .toList(),
                random.nextInt(5) == 0 ? Set.of(Mark.UNSENT) : Set.of(),
                new Told(List.of(LocalDate.of(2015 + random.nextInt(10), 5, 1)), List.of(said(), said())),
                List.of(text(12), text(12), text(2), text(2), text(2)));
    }

    private List<String> some(String name, int of, int most) {
        return Stream.generate(() -> name + random.nextInt(of))
                .limit(1 + random.nextInt(most))
                .distinct()
                .toList();
    }

    private Saying said() {
        return new Saying(Saying.Kind.REASON, text(8), LocalDate.of(2024, 5, 4));
    }

    private String text(int words) {
        return String.join(" ", Stream.generate(this::word).limit(words).toList());
    }

    /** Some words are much more common than others, as in any language. */
    private String word() {
        double r = random.nextDouble();
        return vocabulary.get((int) (r * r * r * vocabulary.size()));
    }

    private List<String> vocabulary() {
        String[] parts = {"bo", "ka", "li", "mo", "ter", "sa", "ing", "ho", "ru", "ble", "fen", "wi", "ga", "per"};
        return Stream.generate(() -> parts[random.nextInt(parts.length)]
                        + parts[random.nextInt(parts.length)]
                        + (random.nextBoolean() ? parts[random.nextInt(parts.length)] : "")
                        + (random.nextInt(3) == 0 ? parts[random.nextInt(parts.length)] : ""))
                .distinct()
                .limit(8000)
                .toList();
    }
}
