package platekeep.client.git.partner;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.text.LibraryFacts;

/** The theme list of a library joins as a set, and so do the words that each theme is also called by. */
class FactsJoinTest {
    private static final LibraryFacts BASE =
            facts(Map.of("boats", List.of("ships"), "gulls", List.of(), "kites", List.of()));

    private static LibraryFacts facts(Map<String, List<String>> themes) {
        return new LibraryFacts("5f0c2b1e-2f0a-4c59-9f6e-0a1b2c3d4e5f", "Harbour").withThemes(themes);
    }

    private static Map<String, List<String>> joined(Map<String, List<String>> mine, Map<String, List<String>> theirs) {
        Map<String, List<String>> themes =
                FactsJoin.join(Optional.of(BASE), facts(mine), facts(theirs)).themes();
        assertThat(FactsJoin.join(Optional.of(BASE), facts(theirs), facts(mine)).themes())
                .as("whoever of the two joins")
                .isEqualTo(themes);
        return themes;
    }

    @Test
    void whatOneSideAddedOrTookOutHolds() {
        assertThat(joined(
                        Map.of("boats", List.of("ships"), "gulls", List.of(), "kites", List.of(), "shells", List.of()),
                        Map.of("boats", List.of("ships"), "gulls", List.of())))
                .isEqualTo(Map.of("boats", List.of("ships"), "gulls", List.of(), "shells", List.of()));
    }

    @Test
    void wordsThatBothAddedStandTogether() {
        assertThat(joined(
                        Map.of("boats", List.of("dinghies", "ships"), "gulls", List.of(), "kites", List.of()),
                        Map.of("boats", List.of("yachts"), "gulls", List.of(), "kites", List.of())))
                .containsEntry("boats", List.of("dinghies", "yachts"));
    }

    @Test
    void aThemeTakenOutHereAndGivenWordsThereStays() {
        assertThat(joined(
                        Map.of("boats", List.of("ships"), "gulls", List.of()),
                        Map.of("boats", List.of("ships"), "gulls", List.of(), "kites", List.of("dragons"))))
                .containsEntry("kites", List.of("dragons"));
    }
}
