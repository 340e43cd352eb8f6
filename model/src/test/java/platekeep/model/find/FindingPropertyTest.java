package platekeep.model.find;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import platekeep.model.colour.Ciede2000;
import platekeep.model.find.words.Slips;
import platekeep.model.find.words.Stems;
import platekeep.model.find.words.Words;
import platekeep.model.plate.Age;
import platekeep.model.plate.Origin;
import platekeep.model.plate.State;
import platekeep.model.plate.Unknown;

/**
 * Answers, their order, counts and slips against a scan that goes through every text of every plate with no dictionary,
 * no sets of bits and no index, on small libraries of words that are near each other.
 */
class FindingPropertyTest {
    private static final List<String> WORDS = List.of(
            "boat",
            "boats",
            "goat",
            "boot",
            "sea",
            "seaside",
            "gull",
            "gulls",
            "kite",
            "kites",
            "kit",
            "the",
            "with",
            "lighthouse",
            "light",
            "lights");
    private static final List<String> TYPED = List.of(
            "boat",
            "boats",
            "bo",
            "sea",
            "seasid",
            "saeside",
            "gul",
            "kyte",
            "kit",
            "the",
            "lihgt",
            "lighthuose",
            "x",
            "goats",
            "baot",
            "with",
            "lightouse");
    private static final List<LocalDate> DAYS = List.of(
            LocalDate.of(2023, 12, 31),
            LocalDate.of(2024, 1, 1),
            LocalDate.of(2024, 2, 29),
            LocalDate.of(2024, 5, 31),
            LocalDate.of(2025, 6, 1));

    /** Times as they may be typed, each with what it means. */
    private static final Map<String, Predicate<LocalDate>> TIMES = new TreeMap<>(Map.of(
            "2024", day -> day.getYear() == 2024,
            "before 2024", day -> day.getYear() < 2024,
            "since May 2024", day -> !day.isBefore(LocalDate.of(2024, 5, 1)),
            "in 2024-02", day -> day.getYear() == 2024 && day.getMonthValue() == 2,
            "2023 to 2024", day -> day.getYear() < 2025,
            "29 Feb 2024", day -> day.equals(LocalDate.of(2024, 2, 29)),
            "after 31 May 2024", day -> day.isAfter(LocalDate.of(2024, 5, 31))));

    private static final List<Integer> COLOURS =
            List.of(0xA63C2B, 0xA8402F, 0x3B4A59, 0xF4F1E8, 0x4F7A3A, 0x52803D, 0x8FA9C4);
    private static final Map<Group, List<String>> VALUES = new EnumMap<>(Map.of(
            Group.THEME, List.of("boat", "sea", "gulls", "the kite"),
            Group.AGE, List.of("infant", "toddler", "child"),
            Group.SERIES, List.of("Light", "Boats"),
            Group.COLOUR, List.of("#A63C2B", "#123456", "#4F7A3A"),
            Group.PLEATS, List.of("1-40", "41-60", "30-70", "101-140"),
            Group.MARK, List.of("draft", "not sent"),
            Group.YEAR, List.of("2024", "2025"),
            Group.ALLOWED, List.of("publish", "mine")));

    private final Stems stems = new Stems();

    @Property(seed = "20261126", tries = 300)
    void anAnswerIsThatOfAPlainScan(@ForAll @LongRange(min = 0) long seed) {
        Random random = new Random(seed);
        Map<String, Summary> plates = new LinkedHashMap<>();
        for (int i = 0; i < random.nextInt(25); i++) {
            plates.put("k" + i, plate("k" + i, random));
        }
        Index index = Index.of(plates.values());
        compare(index, plates, query(random));
        for (int step = 0; step < 3; step++) {
            index = changed(index, plates, random);
            compare(index, plates, query(random));
        }
    }

    /** Puts some plates in, changes some, takes some out, in the index and in the plain map alike. */
    private static Index changed(Index index, Map<String, Summary> plates, Random random) {
        Map<String, Summary> come = new HashMap<>();
        for (int i = 0; i < 1 + random.nextInt(3); i++) {
            String key = "k" + random.nextInt(30);
            come.put(key, plate(key, random));
        }
        List<String> gone = new ArrayList<>();
        if (random.nextBoolean()) {
            gone.add("k" + random.nextInt(30));
        }
        gone.removeAll(come.keySet());
        plates.putAll(come);
        gone.forEach(plates::remove);
        return index.with(come.values(), gone);
    }

    private static Summary plate(String key, Random random) {
        Set<Mark> marks = new HashSet<>();
        Stream.of(Mark.DRAFT, Mark.UNSENT)
                .filter(mark -> random.nextInt(4) == 0)
                .forEach(marks::add);
        return new Summary(
                key,
                "id",
                "Harbour",
                text(random, 2) + " " + (random.nextInt(4) == 0 ? 2024 : random.nextInt(3)),
                random.nextBoolean() ? Optional.of("H-" + random.nextInt(12)) : Optional.empty(),
                some(VALUES.get(Group.THEME), random),
                random.nextInt(3) == 0 ? List.of("lights") : List.of(),
                some(List.of(Age.INFANT, Age.TODDLER, Age.CHILD), random),
                List.of(),
                List.of(),
                new Origin(
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        random.nextBoolean() ? Optional.of("mine") : Optional.empty(),
                        Unknown.NONE),
                random.nextBoolean() ? Optional.of(State.IDEA) : Optional.empty(),
                some(VALUES.get(Group.SERIES), random),
                random.nextInt(4) * 35,
                0,
                some(COLOURS, random),
                marks,
                new Told(some(DAYS, random), List.of()),
                List.of(text(random, 3)));
    }

    private static String text(Random random, int words) {
        return String.join(
                " ",
                Stream.generate(() -> WORDS.get(random.nextInt(WORDS.size())))
                        .limit(1 + random.nextInt(words))
                        .toList());
    }

    private static <T> List<T> some(List<T> all, Random random) {
        return all.stream().filter(one -> random.nextInt(3) == 0).toList();
    }

    private static Query query(Random random) {
        Query query = Query.ALL.withWords(String.join(
                " ",
                Stream.generate(() -> TYPED.get(random.nextInt(TYPED.size())))
                        .limit(random.nextInt(3))
                        .toList()));
        if (random.nextInt(3) == 0 && !query.words().endsWith("the")) {
            String time = List.copyOf(TIMES.keySet()).get(random.nextInt(TIMES.size()));
            query = query.withWords(query.words() + " " + time);
        }
        for (Map.Entry<Group, List<String>> group : VALUES.entrySet()) {
            if (random.nextInt(3) == 0) {
                query = query.with(group.getKey(), new TreeSet<>(some(group.getValue(), random)));
                query = random.nextBoolean() ? query.turnMatch(group.getKey()) : query;
            }
        }
        return query;
    }

    private void compare(Index index, Map<String, Summary> plates, Query query) {
        Found found = index.find(query);
        List<String> keys = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            keys.add(index.at(found.at(i)).key());
        }
        Map<String, Integer> scores = scores(plates.values(), query.words());
        List<Summary> wanted = plates.values().stream()
                .filter(plate -> scores.containsKey(plate.key()))
                .filter(plate -> query.choices().keySet().stream().allMatch(group -> has(plate, group, query)))
                .sorted((a, b) -> scores.get(a.key()).equals(scores.get(b.key()))
                        ? Order.BEST.comparator().compare(a, b)
                        : scores.get(b.key()) - scores.get(a.key()))
                .toList();
        assertThat(keys)
                .as(query.toString())
                .isEqualTo(wanted.stream().map(Summary::key).toList());
        assertThat(index.size()).isEqualTo(plates.size());
        for (Group group : Group.values()) {
            for (Found.Count count : found.counts(group)) {
                Query asked = query.choice(group)
                                .filter(choice -> choice.match() == Choice.Match.ALL)
                                .isPresent()
                        ? query
                        : query.without(group);
                long naive = plates.values().stream()
                        .filter(plate -> scores.containsKey(plate.key()))
                        .filter(plate -> asked.choices().keySet().stream().allMatch(g -> has(plate, g, asked)))
                        .filter(plate -> has(plate, group, count.value()))
                        .count();
                assertThat(count.count()).as(group + " " + count.value()).isEqualTo((int) naive);
                assertThat(count.chosen()).isEqualTo(query.chosen(group).contains(count.value()));
            }
        }
    }

    private static boolean has(Summary plate, Group group, Query query) {
        Choice choice = query.choice(group).orElseThrow();
        return choice.match() == Choice.Match.ANY
                ? choice.values().stream().anyMatch(value -> has(plate, group, value))
                : choice.values().stream().allMatch(value -> has(plate, group, value));
    }

    private static boolean has(Summary plate, Group group, String value) {
        return switch (group) {
            case COLOUR ->
                plate.colours().stream()
                        .anyMatch(rgb -> Ciede2000.difference(rgb, Integer.parseInt(value.substring(1), 16)) <= 10);
            case PLEATS ->
                plate.pleats() > 0
                        && plate.pleats() >= Integer.parseInt(value.split("-")[0])
                        && (value.endsWith("-") || plate.pleats() <= Integer.parseInt(value.split("-")[1]));
            default -> group.values(plate).contains(value);
        };
    }

    /** How well each plate answers all words and a time at their end; those that do not are left out. */
    private Map<String, Integer> scores(Collection<Summary> plates, String typed) {
        Optional<String> time =
                TIMES.keySet().stream().filter(typed::endsWith).max(Comparator.comparing(String::length));
        Map<String, Integer> scores = wordScores(
                plates, typed.substring(0, typed.length() - time.orElse("").length()));
        time.ifPresent(words -> plates.forEach(plate -> {
            int said = said(plate, words);
            boolean fits = said > 0 || plate.told().days().stream().anyMatch(TIMES.get(words));
            scores.computeIfPresent(plate.key(), (key, sum) -> fits ? sum + said : null);
        }));
        return scores;
    }

    /** How well a plate says what was typed for a time in so many words; 0 where it does not. */
    private int said(Summary plate, String time) {
        int sum = 0;
        for (String word : Words.of(time)) {
            int best = Set.of("in", "to").contains(word) ? -1 : best(plate, word, 0);
            if (best == 0) {
                return 0;
            }
            sum += Math.max(best, 0);
        }
        return sum;
    }

    private Map<String, Integer> wordScores(Collection<Summary> plates, String typed) {
        Set<String> words = new LinkedHashSet<>(Words.of(typed));
        Set<String> telling = new LinkedHashSet<>(words);
        if (words.size() > 1) {
            telling.removeAll(Set.of("the", "with"));
        }
        Map<String, Integer> scores = new HashMap<>();
        plates.forEach(plate -> scores.put(plate.key(), 0));
        for (String word : telling.isEmpty() ? words : telling) {
            int level = level(plates, word);
            plates.forEach(plate -> {
                int best = best(plate, word, level);
                scores.computeIfPresent(plate.key(), (key, sum) -> best == 0 ? null : sum + best);
            });
        }
        return scores;
    }

    /** How far to go for a word: 0 known, 1 a slip in a word, 2 a slip in a beginning. */
    private int level(Collection<Summary> plates, String word) {
        for (int level = 0; level < 2; level++) {
            for (Summary plate : plates) {
                if (best(plate, word, level) > 0) {
                    return level;
                }
            }
        }
        return 2;
    }

    private int best(Summary plate, String word, int level) {
        int best = 0;
        best = Math.max(best, best(3, plate.title(), word, level));
        best = Math.max(best, best(3, plate.number().orElse(""), word, level));
        best = Math.max(best, best(3, plate.number().map(Words::joined).orElse(""), word, level));
        best = Math.max(best, best(2, String.join(" ", plate.themes()), word, level));
        best = Math.max(best, best(2, String.join(" ", plate.also()), word, level));
        best = Math.max(best, best(1, String.join(" ", plate.series()), word, level));
        Set<String> rest = new TreeSet<>(plate.texts());
        plate.ages().forEach(age -> rest.add(age.word()));
        plate.state().ifPresent(state -> rest.add(state.word()));
        return Math.max(best, best(0, String.join(" ", rest), word, level));
    }

    private int best(int place, String text, String typed, int level) {
        int best = 0;
        for (String word : Words.of(text)) {
            int near = 0;
            if (level == 0) {
                near = word.equals(typed)
                        ? 4
                        : stems.of(word).equals(stems.of(typed)) ? 3 : word.startsWith(typed) ? 2 : 0;
            } else if (typed.length() >= 4) {
                boolean isSlip = level == 1
                        ? Slips.atMostOne(word, typed)
                                || stems.of(typed).length() >= 4 && Slips.atMostOne(stems.of(word), stems.of(typed))
                        : Slips.atMostOneInBeginning(typed, word);
                near = isSlip ? 1 : 0;
            }
            best = near == 0 ? best : Math.max(best, place * 4 + near);
        }
        return best;
    }
}
