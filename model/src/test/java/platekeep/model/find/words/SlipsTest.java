package platekeep.model.find.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.Set;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** The four slips of Damerau, Communications of the ACM 7(3), 1964: one wrong, one missing, one too many, two exchanged. */
class SlipsTest {

    @Test
    void eachOfTheFourSlipsIsOne() {
        assertThat(Slips.atMostOne("lighthouse", "lighthouze")).isTrue();
        assertThat(Slips.atMostOne("lighthouse", "lighthuse")).isTrue();
        assertThat(Slips.atMostOne("lighthouse", "lightthouse")).isTrue();
        assertThat(Slips.atMostOne("lighthouse", "lihgthouse")).isTrue();
        assertThat(Slips.atMostOne("lighthouse", "lihgthuse")).isFalse();
        assertThat(Slips.atMostOne("abcd", "abdce")).isFalse();
    }

    @Test
    void aSlipInABeginningIsSeenBeforeTheWordIsWhole() {
        assertThat(Slips.atMostOneInBeginning("lihgth", "lighthouse")).isTrue();
        assertThat(Slips.atMostOneInBeginning("lightt", "lighthouse")).isTrue();
        assertThat(Slips.atMostOneInBeginning("lgthou", "lighthouse")).isFalse();
    }

    @Property(seed = "20261126", tries = 3000)
    void oneSlipIsWhatOneStepOfADamerauKindMakes(@ForAll("words") String a, @ForAll("words") String b) {
        assertThat(Slips.atMostOne(a, b)).isEqualTo(a.equals(b) || near(a).contains(b));
        assertThat(Slips.atMostOne(a, b)).isEqualTo(Slips.atMostOne(b, a));
    }

    @Property(seed = "20261127", tries = 3000)
    void aBeginningIsOneSlipAwayWhereOneOfItsBeginningsIs(@ForAll("words") String typed, @ForAll("words") String word) {
        boolean wanted = false;
        for (int i = 0; i <= word.length(); i++) {
            String beginning = word.substring(0, i);
            wanted |= beginning.equals(typed) || near(typed).contains(beginning);
        }
        assertThat(Slips.atMostOneInBeginning(typed, word)).isEqualTo(wanted);
    }

    @Provide
    Arbitrary<String> words() {
        return Arbitraries.strings().withChars('a', 'b', 'c').ofMinLength(1).ofMaxLength(5);
    }

    /** All words one step away, by making each step. */
    private static Set<String> near(String word) {
        Set<String> near = new HashSet<>();
        for (int i = 0; i <= word.length(); i++) {
            for (char c = 'a'; c <= 'c'; c++) {
                near.add(word.substring(0, i) + c + word.substring(i));
                if (i < word.length()) {
                    near.add(word.substring(0, i) + c + word.substring(i + 1));
                }
            }
            if (i < word.length()) {
                near.add(word.substring(0, i) + word.substring(i + 1));
            }
            if (i + 1 < word.length()) {
                near.add(word.substring(0, i) + word.charAt(i + 1) + word.charAt(i) + word.substring(i + 2));
            }
        }
        return near;
    }
}
