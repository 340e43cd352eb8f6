package platekeep.model.find;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Age;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Series;
import platekeep.model.plate.Unknown;
import platekeep.model.text.LibraryFacts;

class IndexTest {
    private static final Plate BOATS = new Draft("a", "Two Sailing Boats")
            .number(Optional.of("H-07"))
            .themes(List.of("boats", "seaside"))
            .ages(List.of(Age.TODDLER, Age.CHILD))
            .palette(Palette.EMPTY.with('b', new Colour("brick", "#A63C2B", 4)))
            .build();
    private static final Plate GULL = new Draft("b", "M\u00f6we on a Post")
            .number(Optional.of("H-10"))
            .themes(List.of("gulls", "seaside"))
            .ages(List.of(Age.INFANT))
            .notes(List.of("Stitch the boat behind the gull last."))
            .palette(Palette.EMPTY.with('s', new Colour("slate", "#3B4A59", 4, Optional.of("4711"), Unknown.NONE)))
            .pleats(Optional.of(new Pleats(1, 50)))
            .repeat(Optional.of(new Repeat(60, 3, Unknown.NONE)))
            .build();
    private static final Plate FOX = new Draft("c", "Fox")
            .number(Optional.of("H-2"))
            .themes(List.of("foxes"))
            .ages(List.of(Age.TODDLER))
            .palette(Palette.EMPTY.with('r', new Colour("rust", "#A8402F", 4)))
            .pleats(Optional.of(new Pleats(1, 50)))
            .build();
    private static final Surroundings AROUND = Surroundings.of(
            new LibraryFacts("id", "Harbour").withThemes(Map.of("seaside", List.of("shore", "beach"))),
            List.of(new Series("s", "Harbour Days", List.of("a", "b"), Palette.EMPTY, List.of(), Unknown.NONE)));
    private static final Saying SPRING = new Saying(Saying.Kind.NAME, "Spring class", LocalDate.of(2025, 3, 9));
    private static final Saying TALLER =
            new Saying(Saying.Kind.REASON, "Mast made taller, and the boats brick", LocalDate.of(2025, 3, 2));
    private static final Index INDEX = index(BOATS, GULL, FOX);

    private static Index index(Plate... plates) {
        return Index.of(List.of(plates).stream()
                .map(plate -> Summary.of(plate.id(), plate, AROUND))
                .toList());
    }

    private static List<String> found(Query query) {
        return found(INDEX, query, Order.BEST);
    }

    private static List<String> found(Index index, Query query, Order order) {
        Found found = index.find(query, order);
        List<String> keys = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            keys.add(index.at(found.at(i)).key());
        }
        return keys;
    }

    private static List<String> words(String words) {
        return found(Query.ALL.withWords(words));
    }

    private static Map<String, Integer> counts(Query query, Group group) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        INDEX.find(query).counts(group).forEach(count -> counts.put(count.value(), count.count()));
        return counts;
    }

    @Test
    void nothingAskedFindsEverythingByTitle() {
        assertThat(found(Query.ALL)).containsExactly("c", "b", "a");
    }

    @Test
    void aWordIsFoundInAllItsFormsAndWithoutItsAccents() {
        assertThat(words("boat")).containsExactly("a", "b");
        assertThat(words("BOATS")).containsExactly("a", "b");
        assertThat(words("fox")).containsExactly("c");
        assertThat(words("sail")).containsExactly("a");
        assertThat(words("mowe")).containsExactly("b");
        assertThat(words("M\u00f6wen")).containsExactly("b");
    }

    @Test
    void whatIsTypedSoFarIsTheBeginningOfAWord() {
        assertThat(words("sea")).containsExactlyInAnyOrder("a", "b");
        assertThat(words("bo")).containsExactly("a", "b");
        assertThat(words("po")).containsExactly("b");
    }

    @Test
    void everythingThatIsKnownOfAPlateIsLookedThrough() {
        assertThat(words("h-07")).containsExactly("a");
        assertThat(words("h07")).containsExactly("a");
        assertThat(words("4711")).containsExactly("b");
        assertThat(words("slate")).containsExactly("b");
        assertThat(words("harbour days")).containsExactly("b", "a");
        assertThat(words("stitching last")).containsExactly("b");
        Told told = new Told(List.of(SPRING.on()), List.of(SPRING, TALLER));
        Index taught = INDEX.with(List.of(INDEX.get("a").orElseThrow().withTold(told)), List.of());
        assertThat(found(taught, Query.ALL.withWords("spring class"), Order.BEST))
                .containsExactly("a");
        assertThat(found(taught, Query.ALL.turn(Group.YEAR, "2025"), Order.BEST))
                .containsExactly("a");
    }

    @Test
    void whatVersionsTellIsNamedWhereThePlateItselfLacksTheWord() {
        Summary told = INDEX.get("a").orElseThrow().withTold(new Told(List.of(SPRING.on()), List.of(SPRING, TALLER)));
        assertThat(Spots.inVersions(told, "spring class")).containsExactly(SPRING);
        assertThat(Spots.inVersions(told, "boats classes")).containsExactly(SPRING);
        assertThat(Spots.inVersions(told, "msat")).containsExactly(TALLER);
        assertThat(Spots.inVersions(told, "boat brick")).isEmpty();
        assertThat(Spots.inVersions(told, "")).isEmpty();
    }

    @Test
    void eachWordIsFoundWhereItStandsBest() {
        Summary told = INDEX.get("a").orElseThrow().withTold(new Told(List.of(SPRING.on()), List.of(SPRING, TALLER)));
        assertThat(Spots.of(told, "h07 beach toddlers sail taller"))
                .extracting(spot -> spot.place().word() + ": " + spot.text())
                .containsExactly(
                        "number: H-07",
                        "themes: beach",
                        "ages: toddler",
                        "title: Two Sailing Boats",
                        "reason of a version: Mast made taller, and the boats brick");
    }

    @Test
    void anAgeTypedAmongTheWordsIsTheAgesThatItStandsFor() {
        assertThat(words("2 years")).containsExactlyInAnyOrder("a", "c");
        assertThat(words("boats for a two-year-old")).containsExactly("a");
        assertThat(words("for an age of 8 months")).containsExactly("b");
        assertThat(words("seaside 8 months")).containsExactly("b");
        assertThat(words("fox 8 months")).isEmpty();
        assertThat(INDEX.find(Query.ALL.withWords("seaside 8 months")).ages())
                .containsExactly(Map.entry("8 months", List.of("infant")));
        Plate birthday = new Draft("d", "Two Years").build();
        assertThat(found(index(BOATS, birthday), Query.ALL.withWords("two years"), Order.BEST))
                .containsExactlyInAnyOrder("a", "d");
        assertThat(words("H-10")).containsExactly("b");
    }

    @Test
    void aTimeTypedAmongTheWordsAsksForVersionsMadeThen() {
        Index dated = dated();
        assertThat(found(dated, Query.ALL.withWords("2019"), Order.BEST)).containsExactly("c", "a");
        assertThat(found(dated, Query.ALL.withWords("seaside 2019"), Order.BEST))
                .containsExactly("a");
        assertThat(found(dated, Query.ALL.withWords("boats before 2019"), Order.BEST))
                .containsExactly("b");
        assertThat(found(dated, Query.ALL.withWords("since June 2019"), Order.BEST))
                .containsExactly("b", "a");
        assertThat(found(dated, Query.ALL.withWords("2019-03"), Order.BEST)).containsExactly("c");
        assertThat(found(dated, Query.ALL.withWords("1998"), Order.BEST)).isEmpty();
        assertThat(dated.find(Query.ALL.withWords("boats before 2019")).times())
                .extracting(when -> when.typed() + ": " + when.period().words() + " " + when.said())
                .containsExactly("before 2019: before 2019 false");
    }

    @Test
    void aNumberThatIsAYearTooStillFindsWhatSaysIt() {
        Plate numbered = new Draft("d", "Anchor").number(Optional.of("2019-13")).build();
        Plate titled = new Draft("e", "Regatta 2019").build();
        Plate wide = new Draft("f", "Long Border")
                .pleats(Optional.of(new Pleats(1, 119)))
                .repeat(Optional.of(new Repeat(100, 20, Unknown.NONE)))
                .build();
        Index all = dated().with(
                        List.of(numbered, titled, wide).stream()
                                .map(plate -> Summary.of(plate.id(), plate, AROUND))
                                .toList(),
                        List.of());
        assertThat(found(all, Query.ALL.withWords("2019"), Order.BEST)).containsExactly("d", "e", "c", "f", "a");
        assertThat(found(all, Query.ALL.withWords("2019-13"), Order.BEST)).containsExactly("d");
        assertThat(found(all, Query.ALL.withWords("regatta 2019"), Order.BEST)).containsExactly("e");
        assertThat(all.find(Query.ALL.withWords("2019")).times())
                .extracting(Found.When::said)
                .containsExactly(true);
        assertThat(found(all, Query.ALL.withWords("2018"), Order.BEST)).isEmpty();
    }

    private static Index dated() {
        Map<String, List<LocalDate>> days = Map.of(
                "a", List.of(LocalDate.of(2019, 6, 1)),
                "b", List.of(LocalDate.of(2017, 1, 1), LocalDate.of(2020, 2, 2)),
                "c", List.of(LocalDate.of(2019, 3, 31)));
        return INDEX.with(
                INDEX.all().stream()
                        .map(one -> one.withTold(new Told(days.get(one.key()), List.of())))
                        .toList(),
                List.of());
    }

    @Test
    void aThemeIsFoundByWhatItIsAlsoCalled() {
        assertThat(words("beach")).containsExactlyInAnyOrder("a", "b");
        assertThat(words("shore gull")).containsExactly("b");
    }

    @Test
    void aSlipOfTypingIsForgivenWhereNothingElseIsMeant() {
        assertThat(words("saeside")).containsExactlyInAnyOrder("a", "b");
        assertThat(INDEX.find(Query.ALL.withWords("saeside gull")).meant())
                .containsExactly(Map.entry("saeside", List.of("seaside")));
        assertThat(words("fux")).isEmpty();
        assertThat(INDEX.find(Query.ALL.withWords("boat")).meant()).isEmpty();
    }

    @Test
    void allWordsMustBeThereButForTheCommonest() {
        assertThat(words("seaside gull")).containsExactly("b");
        assertThat(words("seaside fox")).isEmpty();
        assertThat(words("a boat for the toddler")).containsExactly("a");
    }

    @Test
    void theTitleCountsMoreThanANote() {
        assertThat(words("boats")).containsExactly("a", "b");
        assertThat(found(INDEX, Query.ALL.withWords("boats"), new Order(Order.By.BEST, Order.Way.DOWN)))
                .containsExactly("b", "a");
    }

    @Test
    void oneOfTheValuesOfAGroupIsEnoughUnlessAllAreAskedFor() {
        Query two = Query.ALL.turn(Group.THEME, "boats").turn(Group.THEME, "gulls");
        assertThat(found(two)).containsExactly("b", "a");
        assertThat(found(two.turnMatch(Group.THEME))).isEmpty();
        assertThat(found(two.turnMatch(Group.THEME).turn(Group.THEME, "boats").turn(Group.THEME, "seaside")))
                .containsExactly("b");
        assertThat(found(Query.ALL.turn(Group.AGE, "infant").turn(Group.AGE, "infant")))
                .hasSize(3);
    }

    @Test
    void countsIgnoreTheirOwnGroupAndFollowTheOthers() {
        Query query = Query.ALL.turn(Group.THEME, "seaside").turn(Group.AGE, "toddler");
        assertThat(found(query)).containsExactly("a");
        assertThat(counts(query, Group.AGE)).containsEntry("infant", 1).containsEntry("toddler", 1);
        assertThat(counts(query, Group.THEME))
                .containsEntry("seaside", 1)
                .containsEntry("foxes", 1)
                .containsEntry("gulls", 0);
        assertThat(counts(query.turnMatch(Group.THEME), Group.THEME)).containsEntry("foxes", 0);
        assertThat(counts(query, Group.SERIES)).containsExactly(Map.entry("Harbour Days", 1));
    }

    @Test
    void aColourIsFoundByWhatLooksLikeIt() {
        assertThat(counts(Query.ALL, Group.COLOUR)).containsValues(2, 1).hasSize(2);
        assertThat(found(Query.ALL.turn(Group.COLOUR, "#A73D2C"))).containsExactly("c", "a");
        assertThat(counts(Query.ALL.turn(Group.COLOUR, "#A73D2C"), Group.COLOUR))
                .containsEntry("#A73D2C", 2);
        assertThat(found(Query.ALL.turn(Group.COLOUR, "#00FF00"))).isEmpty();
    }

    @Test
    void sizesAreFoundByRangesAndRepeatsCount() {
        assertThat(INDEX.get("b").orElseThrow().pleats()).isEqualTo(170);
        assertThat(found(Query.ALL.turn(Group.PLEATS, "41-60"))).containsExactly("c");
        assertThat(found(Query.ALL.turn(Group.PLEATS, "100-"))).containsExactly("b");
        assertThat(found(Query.ALL.turn(Group.PLEATS, "0-1000"))).containsExactly("c", "b");
        assertThat(counts(Query.ALL, Group.PLEATS)).containsOnlyKeys("41-60", "141-200");
    }

    @Test
    void columnsPutInOrderAndNumbersByTheirWorth() {
        Order byNumber = new Order(Order.By.NUMBER, Order.Way.UP);
        assertThat(found(INDEX, Query.ALL, byNumber)).containsExactly("c", "a", "b");
        assertThat(found(INDEX, Query.ALL, new Order(Order.By.PLEATS, Order.Way.DOWN)))
                .containsExactly("b", "c", "a");
    }

    @Test
    void marksAreAGroupOfTheirOwn() {
        Summary sent = INDEX.get("a").orElseThrow().withMark(Mark.UNSENT, true);
        Index marked = INDEX.with(List.of(sent), List.of());
        assertThat(found(marked, Query.ALL.turn(Group.MARK, "not sent"), Order.BEST))
                .containsExactly("a");
        assertThat(found(marked, Query.ALL.turn(Group.MARK, "only a scan yet"), Order.BEST))
                .containsExactly("a");
        assertThat(found(INDEX, Query.ALL.turn(Group.MARK, "not sent"), Order.BEST))
                .isEmpty();
    }

    @Test
    void twoPlatesWithOneKeyAreRefused() {
        assertThatThrownBy(() -> index(FOX, FOX)).hasMessageContaining("two plates with the key c");
    }

    @Test
    void aQueryIsKeptAsTextAndReadAgain() {
        Query query = Query.ALL
                .withWords("boats & 100% =; gulls")
                .turn(Group.THEME, "a|b")
                .turn(Group.THEME, "c%")
                .turnMatch(Group.THEME)
                .turn(Group.PLEATS, "41-");
        assertThat(QueryText.read(QueryText.write(query))).contains(query);
        assertThat(QueryText.read(QueryText.write(Query.ALL))).contains(Query.ALL);
        assertThat(QueryText.read("nothing of the kind")).isEmpty();
        assertThat(QueryText.read("words=;THEME=any")).isEmpty();
        assertThat(Set.of(Group.values())).hasSize(14);
    }
}
