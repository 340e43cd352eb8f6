package platekeep.client.git.partner;

import static org.assertj.core.api.Assertions.assertThat;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Size;
import net.jqwik.api.constraints.StringLength;
import net.jqwik.api.constraints.UniqueElements;

class ListJoinPropertyTest {

    @Property(seed = "20261125")
    void sidesSwappedGiveTheSameList(
            @ForAll @Letters List<@Letter String> base,
            @ForAll @Letters List<@Letter String> one,
            @ForAll @Letters List<@Letter String> other) {
        assertThat(ListJoin.join(base, one, other)).isEqualTo(ListJoin.join(base, other, one));
    }

    @Property(seed = "20261125")
    void whereOneSideDidNothingTheOtherHolds(
            @ForAll @Letters List<@Letter String> base, @ForAll @Letters List<@Letter String> one) {
        assertThat(ListJoin.join(base, one, base)).isEqualTo(one);
        assertThat(ListJoin.join(base, base, one)).isEqualTo(one);
        assertThat(ListJoin.join(base, one, one)).isEqualTo(one);
    }

    @Property(seed = "20261125")
    void whatOneSideAddedOrTookOutHoldsAndNothingStandsTwice(
            @ForAll @Letters @UniqueElements List<@Letter String> base,
            @ForAll @Letters @UniqueElements List<@Letter String> one,
            @ForAll @Letters @UniqueElements List<@Letter String> other) {
        Set<String> expected = new HashSet<>(one);
        expected.addAll(other);
        expected.removeIf(text -> base.contains(text) && !(one.contains(text) && other.contains(text)));
        assertThat(ListJoin.join(base, one, other)).containsExactlyInAnyOrderElementsOf(new ArrayList<>(expected));
    }

    @Example
    void addedInPlaceMovedAndTakenOutComeTogether() {
        assertThat(ListJoin.join(
                        List.of("a", "b", "c", "d"), List.of("a", "x", "b", "c", "d"), List.of("a", "c", "d", "b")))
                .containsExactly("a", "x", "c", "d", "b");
        assertThat(ListJoin.join(List.of("a", "b"), List.of("a", "n", "b"), List.of("a", "m", "b")))
                .containsExactly("a", "m", "n", "b");
        assertThat(ListJoin.join(List.of("a", "b", "c"), List.of("a", "c"), List.of("a", "b", "c", "e")))
                .containsExactly("a", "c", "e");
    }

    @Target({ElementType.PARAMETER, ElementType.TYPE_USE})
    @Retention(RetentionPolicy.RUNTIME)
    @Size(max = 8)
    @interface Letters {}

    @Target({ElementType.PARAMETER, ElementType.TYPE_USE})
    @Retention(RetentionPolicy.RUNTIME)
    @CharRange(from = 'a', to = 'h')
    @StringLength(1)
    @interface Letter {}
}
