package platekeep.model.find.typed;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimeTypedTest {

    /** Times, how they are told, and their first and last day; a dot where there is none. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2019 | in 2019 | 2019-01-01 | 2019-12-31",
                "in 2019 | in 2019 | 2019-01-01 | 2019-12-31",
                "made in 2019 | in 2019 | 2019-01-01 | 2019-12-31",
                "from 2019 | in 2019 | 2019-01-01 | 2019-12-31",
                "2019-05 | in May 2019 | 2019-05-01 | 2019-05-31",
                "5/2019 | in May 2019 | 2019-05-01 | 2019-05-31",
                "May 2019 | in May 2019 | 2019-05-01 | 2019-05-31",
                "sept. 2019 | in September 2019 | 2019-09-01 | 2019-09-30",
                "feb of 2020 | in February 2020 | 2020-02-01 | 2020-02-29",
                "2019 May | in May 2019 | 2019-05-01 | 2019-05-31",
                "3 May 2019 | on 3 May 2019 | 2019-05-03 | 2019-05-03",
                "on the 3rd of May 2019 | on 3 May 2019 | 2019-05-03 | 2019-05-03",
                "May 3, 2019 | on 3 May 2019 | 2019-05-03 | 2019-05-03",
                "2019-05-03 | on 3 May 2019 | 2019-05-03 | 2019-05-03",
                "the 1990s | in the 1990s | 1990-01-01 | 1999-12-31",
                "before 2015 | before 2015 | . | 2014-12-31",
                "before May 2015 | before May 2015 | . | 2015-04-30",
                "until 2015 | up to 2015 | . | 2015-12-31",
                "2015 or earlier | up to 2015 | . | 2015-12-31",
                "since 2020 | since 2020 | 2020-01-01 | .",
                "from 2020 on | since 2020 | 2020-01-01 | .",
                "2020 onwards | since 2020 | 2020-01-01 | .",
                "after 2020 | after 2020 | 2021-01-01 | .",
                "2015-2017 | from 2015 to 2017 | 2015-01-01 | 2017-12-31",
                "between 2015 and May 2017 | from 2015 to May 2017 | 2015-01-01 | 2017-05-31",
                "from 2017 to 2015 | from 2015 to 2017 | 2015-01-01 | 2017-12-31",
            })
    void aTimeIsUnderstoodAmongWords(String typed, String told, String from, String to) {
        assertThat(TimeTyped.among("boats " + typed + " kites"))
                .extracting(TimeTyped.Phrase::period)
                .containsExactly(new Period(
                        from.equals(".") ? LocalDate.MIN : LocalDate.parse(from),
                        to.equals(".") ? LocalDate.MAX : LocalDate.parse(to),
                        told));
        assertThat(TimeTyped.without("boats " + typed + " kites").split("\\W+")).containsExactly("boats", "kites");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "H-2019",
                "2019-13",
                "2019-05-32",
                "20190",
                "a2019",
                "1875",
                "may",
                "5/6/2019",
                "2019b",
                "30 feb 2019-13",
                "up to 90",
                "12-05"
            })
    void whatIsNoTimeStaysAWord(String typed) {
        assertThat(TimeTyped.among(typed)).isEmpty();
        assertThat(TimeTyped.without(typed)).isEqualTo(typed.toLowerCase(Locale.ROOT));
    }

    @Test
    void aTimeThatIsNotFinishedIsNoWordToLookFor() {
        assertThat(TimeTyped.without("boats before").strip()).isEqualTo("boats");
        assertThat(TimeTyped.without("boats since 20").strip()).isEqualTo("boats");
        assertThat(TimeTyped.without("boats 2015 to 20").strip()).isEqualTo("boats");
        assertThat(TimeTyped.without("before").strip()).isEqualTo("before");
        assertThat(TimeTyped.without("before the storm").strip()).isEqualTo("before the storm");
    }

    /** The month by ISO 8601, as {@link YearMonth} writes it. */
    @Property(seed = "20261126", tries = 200)
    void everyMonthOfIsoIsThatMonth(
            @ForAll @IntRange(min = 1900, max = 2099) int year, @ForAll @IntRange(min = 1, max = 12) int month) {
        YearMonth iso = YearMonth.of(year, month);
        assertThat(TimeTyped.among(iso.toString()))
                .extracting(
                        phrase -> phrase.period().from(),
                        phrase -> phrase.period().to())
                .containsExactly(org.assertj.core.groups.Tuple.tuple(iso.atDay(1), iso.atEndOfMonth()));
    }

    @Test
    void aPeriodHoldsBothItsEnds() {
        Period period = new Period(LocalDate.of(2019, 5, 1), LocalDate.of(2019, 5, 31), "in May 2019");
        assertThat(period.holds(LocalDate.of(2019, 5, 1))).isTrue();
        assertThat(period.holds(LocalDate.of(2019, 5, 31))).isTrue();
        assertThat(period.holds(LocalDate.of(2019, 4, 30))).isFalse();
        assertThat(period.holds(LocalDate.of(2019, 6, 1))).isFalse();
    }
}
