package platekeep.model.find.tag;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Plate;
import platekeep.model.text.LibraryFacts;

/** Taking back against what sets say: a change of tags adds some and removes some, whatever else is done to a plate. */
class TagReversalPropertyTest {
    private static final List<String> THEMES = List.of("boats", "foxes", "gulls", "kites", "seaside");

    private static Plate plate(List<String> themes) {
        return new Draft("a", "Plate").themes(themes).build();
    }

    private static List<String> some(Random random) {
        return THEMES.stream().filter(theme -> random.nextBoolean()).toList();
    }

    @Property(seed = "20261126", tries = 500)
    void whatWasLeftAsItWasComesBackAsItWas(@ForAll @LongRange(min = 0) long seed) {
        Random random = new Random(seed);
        Plate before = plate(some(random));
        Plate after = plate(some(random));
        assertThat(TagReversal.on(before, after, after)).contains(before);
        assertThat(TagReversal.on(before, after, before)).contains(before);
        Plate drawnOn = after.edit().title("Another").build();
        assertThat(TagReversal.on(before, after, drawnOn))
                .contains(before.edit().title("Another").build());
        assertThat(TagReversal.isOnlyTags(before, after)).isEqualTo(!before.equals(after));
        assertThat(TagReversal.isOnlyTags(before, drawnOn)).isFalse();
    }

    @Property(seed = "20261126", tries = 500)
    void tagsThatTheChangeDidNotTouchStayAsTheyAreNow(@ForAll @LongRange(min = 0) long seed) {
        Random random = new Random(seed);
        List<String> before = some(random);
        List<String> after = some(random);
        List<String> now = some(random);
        Optional<Plate> back = TagReversal.on(plate(before), plate(after), plate(now));
        for (String theme : THEMES) {
            boolean isTouched = before.contains(theme) != after.contains(theme);
            back.ifPresent(plate -> assertThat(plate.themes().contains(theme))
                    .isEqualTo(isTouched ? before.contains(theme) : now.contains(theme)));
        }
        List<String> touched = THEMES.stream()
                .filter(theme -> before.contains(theme) != after.contains(theme))
                .toList();
        boolean allAsLeft = touched.stream().allMatch(theme -> now.contains(theme) == after.contains(theme));
        boolean allAsBefore = touched.stream().allMatch(theme -> now.contains(theme) == before.contains(theme));
        assertThat(back.isPresent()).isEqualTo(allAsLeft || allAsBefore);
    }

    @Example
    void aRenamedThemeComesBackOnTheListAndWordsThatCameSinceStay() {
        LibraryFacts before = facts(Map.of("boats", List.of("ships"), "sea", List.of()));
        LibraryFacts after = new ThemeRename("boats", "sea").on(before);
        assertThat(TagReversal.on(before, after, after)).isEqualTo(before);
        LibraryFacts since =
                after.withThemes(Map.of("sea", List.of("boats", "shore", "ships"), "gulls", List.<String>of()));
        assertThat(TagReversal.on(before, after, since).themes())
                .isEqualTo(Map.of("boats", List.of("ships"), "sea", List.of("shore"), "gulls", List.of()));
        assertThat(Stream.of(before, since).map(now -> TagReversal.on(after, after, now)))
                .containsExactly(before, since);
    }

    private static LibraryFacts facts(Map<String, List<String>> themes) {
        return new LibraryFacts("5f0c2b1e-2f0a-4c59-9f6e-0a1b2c3d4e5f", "Harbour").withThemes(themes);
    }
}
