package platekeep.model.stitch;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import platekeep.model.plate.Age;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Mark;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Plate;
import platekeep.model.plate.RowId;
import platekeep.model.plate.Unknown;

/** The sources are named with each caution; which ages they hold for is typed from there. */
class CautionsTest {

    @Test
    void everySheetSaysToCountPinsAndNeedlesAndDefersToTheRulesOfThePlace() {
        List<Caution> cautions = Cautions.of(plate(Age.GROWN_UP).build());

        assertThat(cautions).hasSize(1);
        assertThat(cautions.get(0).text()).startsWith("Count pins and needles").endsWith(Caution.DEFER);
    }

    /** 16 CFR 1501.2 and 1501.4: under 36 months; a cylinder 1.25 in (31.7 mm) wide, 1 to 2.25 in (25.4 to 57.1 mm) deep. */
    @Test
    void smallPartsAreCautionedAgainstUnderThirtySixMonths() {
        List<Notion> button = List.of(notion("button"));

        assertThat(texts(plate(Age.TODDLER).notions(button)))
                .anyMatch(t -> t.contains("31.7 mm") && t.contains("57.1 mm"));
        assertThat(texts(plate(Age.CHILD).notions(button))).hasSize(1);
        assertThat(texts(plate(Age.TODDLER).notions(List.of(notion("ribbon"))))).noneMatch(t -> t.contains("31.7"));
    }

    /** American Academy of Pediatrics 2022, Pediatrics 150(1) e2022057990: infants, under 12 months. */
    @Test
    void aPillowForABabyIsForDecorationOnly() {
        assertThat(texts(plate(Age.INFANT).uses(List.of("pillow")))).anyMatch(t -> t.contains("sleep space"));
        assertThat(texts(plate(Age.TODDLER).uses(List.of("pillow")))).hasSize(1);
    }

    /** EN 14682 and 16 CFR 1120: children's clothes. */
    @Test
    void cordsOnChildrensClothesAreCautionedAgainst() {
        List<Notion> tie = List.of(notion("tie"));

        assertThat(texts(plate(Age.OLDER_CHILD).notions(tie))).anyMatch(t -> t.contains("none at the hood or neck"));
        assertThat(texts(plate(Age.GROWN_UP).notions(tie))).hasSize(1);
    }

    /** 16 CFR 1615 and 1616: children's sleepwear. */
    @Test
    void childrensNightwearIsCautionedAgainstFire() {
        assertThat(texts(plate(Age.CHILD).uses(List.of("nightwear")))).anyMatch(t -> t.contains("fire"));
        assertThat(texts(plate(Age.GROWN_UP).uses(List.of("nightwear")))).hasSize(1);
    }

    /** Good practice, no source. */
    @Test
    void loopsAndLongFloatsAreCautionedAgainstForTheYoungest() {
        Mark bullion = new Mark("bullion", new RowId("aaaa"), "2", 'a', Unknown.NONE);
        Plate floats = Drawn.plate("aaaa aabbbbbbaa");

        assertThat(texts(plate(Age.TODDLER).marks(List.of(bullion)))).anyMatch(t -> t.contains("loops"));
        assertThat(texts(plate(Age.CHILD).marks(List.of(bullion)))).hasSize(1);
        assertThat(texts(floats.edit().ages(List.of(Age.TODDLER)))).anyMatch(t -> t.contains("long floats"));
    }

    @Test
    void aPlateThatSaysNoAgesMayBeForTheYoungest() {
        Draft any = new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Kite");

        assertThat(texts(any.notions(List.of(notion("bead"))))).hasSize(2);
    }

    private static Draft plate(Age age) {
        return new Draft("0b8f5a52-7c1e-4f0e-9a53-0f6c1f1f7a10", "Harbour Light").ages(List.of(age));
    }

    private static Notion notion(String kind) {
        return new Notion(kind, Optional.of("9 mm"), 2, Unknown.NONE);
    }

    private static List<String> texts(Draft draft) {
        return Cautions.of(draft.build()).stream().map(Caution::text).toList();
    }
}
