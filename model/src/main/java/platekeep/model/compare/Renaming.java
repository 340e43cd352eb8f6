package platekeep.model.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.function.Predicate;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;

/**
 * What became of each key of the earlier palette: it kept its letter, got another one, was made one with another colour,
 * or went.
 *
 * @param letters earlier key to later letter, for the keys that are still there as a colour of their own
 * @param merged earlier key to the earlier key that it was made one with
 * @param gone earlier keys that went without a follower
 */
public record Renaming(Map<Character, Character> letters, Map<Character, Character> merged, Set<Character> gone) {

    public Renaming {
        letters = Map.copyOf(letters);
        merged = Map.copyOf(merged);
        gone = Set.copyOf(gone);
    }

    /** The later letter of an earlier key, through being made one too; empty where it went. */
    public Optional<Character> letter(char key) {
        char kept = merged.getOrDefault(key, key);
        return Optional.ofNullable(letters.get(kept));
    }

    /** Earlier keys that have another letter now. */
    public Map<Character, Character> renamed() {
        Map<Character, Character> out = new LinkedHashMap<>();
        letters.keySet().stream()
                .sorted()
                .filter(k -> letters.get(k) != k.charValue())
                .forEach(k -> out.put(k, letters.get(k)));
        return out;
    }

    /** What can be told from the palettes alone: keys that are gone while their very entry stands under a new letter. */
    static Map<Character, Character> fromEntries(Palette before, Palette after) {
        Map<Character, Character> out = new HashMap<>();
        Set<Character> taken = new LinkedHashSet<>();
        before.entries().forEach((key, colour) -> {
            if (!after.has(key)) {
                after.entries().entrySet().stream()
                        .filter(e -> !before.has(e.getKey()) && e.getValue().equals(colour))
                        .map(Map.Entry::getKey)
                        .filter(taken::add)
                        .findFirst()
                        .ifPresent(q -> out.put(key, q));
            }
        });
        return out;
    }

    /**
     * Keys whose very entry stands under another earlier key's letter now, or one of the same name: the keys, or the
     * threads, were exchanged. One key of a round may have got another entry besides: the only one without a letter takes the only letter left.
     */
    static Map<Character, Character> exchanged(Palette before, Palette after) {
        Map<Character, Character> out = new HashMap<>();
        before.entries().forEach((key, colour) -> {
            if (!after.get(key).equals(Optional.of(colour))) {
                follow(key, before, after, colour::equals, out);
            }
        });
        before.entries().forEach((key, colour) -> {
            boolean named = after.get(key)
                    .filter(now -> now.name().equals(colour.name()))
                    .isPresent();
            if (!named && !out.containsKey(key) && isOnlyName(colour, before) && isOnlyName(colour, after)) {
                follow(key, before, after, now -> now.name().equals(colour.name()), out);
            }
        });
        for (char key : List.copyOf(out.keySet())) {
            if (!out.containsValue(key)) {
                char end = end(key, out);
                if (!before.get(end).equals(after.get(end)) && !before.get(key).equals(after.get(key))) {
                    out.put(end, key);
                }
            }
        }
        return out;
    }

    /** Finds the letter of another earlier key under which a key's entry stands now, by what tells the entry. */
    private static void follow(
            char key, Palette before, Palette after, Predicate<Colour> isIt, Map<Character, Character> out) {
        after.entries().entrySet().stream()
                .filter(e -> before.has(e.getKey()) && isIt.test(e.getValue()))
                .filter(e -> !isIt.test(before.get(e.getKey()).orElseThrow()))
                .map(Map.Entry::getKey)
                .filter(q -> !out.containsValue(q))
                .findFirst()
                .ifPresent(q -> out.put(key, q));
    }

    private static boolean isOnlyName(Colour colour, Palette palette) {
        return palette.entries().values().stream()
                        .filter(c -> c.name().equals(colour.name()))
                        .count()
                == 1;
    }

    /** Where a chain of letters ends that begins with a key. */
    private static char end(char key, Map<Character, Character> letters) {
        char end = key;
        while (letters.containsKey(end)) {
            end = letters.get(end);
        }
        return end;
    }

    /**
     * Tells what became of each key.
     *
     * @param counts how many cables of each earlier key have each later letter now, moves undone
     */
    static Renaming of(Palette before, Palette after, Counts counts) {
        return new Finder(before, after, counts).find();
    }

    /** How many cables changed from one letter to another; letters are below 128. */
    static final class Counts {
        private final int[] counts = new int[128 * 128];

        void add(char from, char to) {
            counts[from << 7 | to]++;
        }

        int get(char from, char to) {
            return counts[from << 7 | to];
        }

        /** All cables that had this key and still are cables. */
        int kept(char from, Set<Character> letters) {
            return letters.stream().mapToInt(c -> get(from, c)).sum();
        }
    }

    private static final class Finder {
        private final SortedMap<Character, Colour> before;
        private final SortedMap<Character, Colour> after;
        private final Counts counts;
        private final Map<Character, Character> letters = new HashMap<>();
        private final Map<Character, Character> merged = new HashMap<>();
        private final Set<Character> gone = new LinkedHashSet<>();

        Finder(Palette before, Palette after, Counts counts) {
            this.before = before.entries();
            this.after = after.entries();
            this.counts = counts;
        }

        Renaming find() {
            rounds();
            before.forEach((key, colour) -> {
                if (!letters.containsKey(key)
                        && !letters.containsValue(key)
                        && after.containsKey(key)
                        && (after.get(key).equals(colour) || !movedAway(key))) {
                    letters.put(key, key);
                }
            });
            for (char key : before.keySet()) {
                if (!letters.containsKey(key)) {
                    follower(key).filter(q -> !letters.containsValue(q)).ifPresent(q -> letters.put(key, q));
                }
            }
            for (char key : before.keySet()) {
                if (!letters.containsKey(key)) {
                    newLetter(key).ifPresent(q -> letters.put(key, q));
                }
            }
            before.keySet().stream().filter(k -> !letters.containsKey(k)).forEach(this::mergedOrGone);
            return new Renaming(letters, merged, gone);
        }

        /**
         * Keys that changed places among themselves, if of all their cables as many followed as stayed, and those of a key
         * whose entry changed besides; else they kept their letters, and exchanged their threads.
         */
        private void rounds() {
            Map<Character, Character> exchanged = exchanged(new Palette(before), new Palette(after));
            for (char first : exchanged.keySet()) {
                List<Character> round = new ArrayList<>(List.of(first));
                char next = exchanged.get(first);
                while (next != first && exchanged.containsKey(next) && !round.contains(next)) {
                    round.add(next);
                    next = exchanged.get(next);
                }
                int with = round.stream()
                        .mapToInt(k -> counts.get(k, exchanged.get(k)))
                        .sum();
                int stayed = round.stream().mapToInt(k -> counts.get(k, k)).sum();
                List<Character> changed = round.stream()
                        .filter(k -> !before.get(k).equals(after.get(exchanged.get(k))))
                        .toList();
                boolean changedFollowed =
                        changed.stream().allMatch(k -> counts.get(k, exchanged.get(k)) > counts.get(k, k));
                if (next == first && with > 0 && with >= stayed && changedFollowed) {
                    round.forEach(k -> letters.put(k, exchanged.get(k)));
                } else if (next == first && changed.isEmpty()) {
                    round.forEach(k -> letters.put(k, k));
                }
            }
        }

        /** The entry stands under another letter now, and the cables went there rather than stay. */
        private boolean movedAway(char key) {
            return follower(key).filter(q -> cablesFollowed(key, q)).isPresent();
        }

        private boolean cablesFollowed(char key, char q) {
            int with = counts.get(key, q);
            int stayed = counts.get(key, key);
            if (with + stayed == 0 && before.containsKey(q)) {
                with = counts.get(q, key);
                stayed = counts.get(q, q);
            }
            return with > stayed;
        }

        /** The letter under which the key's own entry stands now, if it is not its own any more. */
        private Optional<Character> follower(char key) {
            Colour colour = before.get(key);
            if (colour.equals(after.get(key))) {
                return Optional.empty();
            }
            List<Character> candidates = new ArrayList<>();
            after.forEach((q, c) -> {
                if (c.equals(colour) && q != key && !colour.equals(before.get(q))) {
                    candidates.add(q);
                }
            });
            return candidates.stream().max((x, y) -> Integer.compare(counts.get(key, x), counts.get(key, y)));
        }

        /** For a key whose letter is gone and whose entry stands nowhere: the letter that its cables have now. */
        private Optional<Character> newLetter(char key) {
            Set<Character> taken = Set.copyOf(letters.values());
            int kept = counts.kept(key, after.keySet());
            return after.keySet().stream()
                    .filter(q -> !before.containsKey(q) && !taken.contains(q))
                    .filter(q -> kept > 0 && counts.get(key, q) * 5 >= kept * 4)
                    .filter(q -> cameOnlyFrom(key, q))
                    .findFirst();
        }

        /** A renamed and recoloured key: hardly a cable of another colour took the new letter. */
        private boolean cameOnlyFrom(char key, char q) {
            int others = before.keySet().stream()
                    .filter(k -> k != key)
                    .mapToInt(k -> counts.get(k, q))
                    .sum();
            return others * 5 <= counts.get(key, q);
        }

        private void mergedOrGone(char key) {
            int kept = counts.kept(key, after.keySet());
            Optional<Character> into = before.keySet().stream()
                    .filter(letters::containsKey)
                    .filter(k -> kept > 0 && counts.get(key, letters.get(k)) * 5 >= kept * 4)
                    .findFirst();
            if (into.isPresent()) {
                merged.put(key, into.get());
            } else {
                gone.add(key);
            }
        }
    }
}
