package platekeep.client.git.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Files by path, beside the JDK's {@link TreeMap} to which the same is done. */
class PathMapPropertyTest {
    private final TreeMap<String, FileAt> plain = new TreeMap<>();

    private static FileAt file(int number) {
        return new FileAt(WorkTree.contentOf(Integer.toString(number).getBytes(StandardCharsets.UTF_8)));
    }

    private static String path(int number) {
        return (number % 3 == 0 ? "plates/" : "series/\uD83D\uDE00") + Integer.toString(number * 7919 % 100_003, 36);
    }

    private void change(Map<String, Optional<FileAt>> changes) {
        changes.forEach((path, file) -> file.ifPresentOrElse(f -> plain.put(path, f), () -> plain.remove(path)));
    }

    private Map<String, Optional<FileAt>> changes(Random random, int most) {
        Map<String, Optional<FileAt>> changes = new HashMap<>();
        List<String> there = new ArrayList<>(plain.keySet());
        for (int left = random.nextInt(most + 1); left > 0; left--) {
            boolean known = !there.isEmpty() && random.nextInt(4) > 0;
            String path = known ? there.get(random.nextInt(there.size())) : path(random.nextInt(2000));
            changes.put(path, random.nextInt(3) == 0 ? Optional.empty() : Optional.of(file(random.nextInt(50))));
        }
        return changes;
    }

    @Property(seed = "20261126", tries = 60)
    void holdsWhatTheJdksMapHoldsAndTellsHowTwoDiffer(
            @ForAll Random random, @ForAll @IntRange(max = 700) int files, @ForAll @IntRange(max = 400) int most) {
        plain.clear();
        for (int i = 0; i < files; i++) {
            plain.put(path(i), file(i));
        }
        PathMap map = PathMap.of(new HashMap<>(plain));
        for (int turn = 0; turn < 5; turn++) {
            TreeMap<String, FileAt> before = new TreeMap<>(plain);
            Map<String, Optional<FileAt>> changes = changes(random, turn == 0 ? most : 5);
            change(changes);
            PathMap after = map.with(changes);

            assertThat(List.copyOf(after.entrySet())).isEqualTo(List.copyOf(plain.entrySet()));
            assertThat(after).isEqualTo(plain).hasSameSizeAs(plain);
            changes.forEach((path, file) ->
                    assertThat(Optional.ofNullable(after.get(path))).isEqualTo(file));
            assertThat(between(map, after)).isEqualTo(plainlyBetween(before, plain));
            assertThat(between(after, map)).isEqualTo(plainlyBetween(plain, before));
            assertThat(between(PathMap.of(before), after)).isEqualTo(plainlyBetween(before, plain));
            map = after;
        }
    }

    private static List<String> between(PathMap before, PathMap after) {
        List<String> told = new ArrayList<>();
        before.compare(after, (path, was, is) -> told.add(path + " " + was + " " + is));
        return told;
    }

    private static List<String> plainlyBetween(Map<String, FileAt> before, Map<String, FileAt> after) {
        TreeMap<String, FileAt> all = new TreeMap<>(before);
        all.putAll(after);
        List<String> told = new ArrayList<>();
        for (String path : all.keySet()) {
            Optional<FileAt> was = Optional.ofNullable(before.get(path));
            Optional<FileAt> is = Optional.ofNullable(after.get(path));
            if (!was.equals(is)) {
                told.add(path + " " + was + " " + is);
            }
        }
        return told;
    }
}
