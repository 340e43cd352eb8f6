package platekeep.model.find.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Stems against published word lists, typed from memory: the table "consign ... knots" that introduces Snowball's English
 * stemmer (snowballstem.org, "The English (Porter2) stemming algorithm", sample vocabulary), and those examples of M. F.
 * Porter, "An algorithm for suffix stripping", Program 14(3), 1980, steps 1a to 1c, in which both algorithms agree.
 */
class StemsWorkedExampleTest {
    private final Stems stems = new Stems();

    @ParameterizedTest
    @CsvSource({
        "consign,consign",
        "consigned,consign",
        "consigning,consign",
        "consignment,consign",
        "consist,consist",
        "consisted,consist",
        "consistency,consist",
        "consistent,consist",
        "consistently,consist",
        "consisting,consist",
        "consists,consist",
        "consolation,consol",
        "consolations,consol",
        "consolatory,consolatori",
        "console,consol",
        "consoled,consol",
        "consoles,consol",
        "consolidate,consolid",
        "consolidated,consolid",
        "consolidating,consolid",
        "consoling,consol",
        "knack,knack",
        "knackeries,knackeri",
        "knacks,knack",
        "knag,knag",
        "knave,knave",
        "knaves,knave",
        "knavish,knavish",
        "kneaded,knead",
        "kneading,knead",
        "knee,knee",
        "kneel,kneel",
        "kneeled,kneel",
        "kneeling,kneel",
        "kneels,kneel",
        "knees,knee",
        "knell,knell",
        "knelt,knelt",
        "knew,knew",
        "knick,knick",
        "knif,knif",
        "knife,knife",
        "knight,knight",
        "knightly,knight",
        "knights,knight",
        "knit,knit",
        "knits,knit",
        "knitted,knit",
        "knitting,knit",
        "knives,knive",
        "knob,knob",
        "knobs,knob",
        "knock,knock",
        "knocked,knock",
        "knocker,knocker",
        "knockers,knocker",
        "knocking,knock",
        "knocks,knock",
        "knopp,knopp",
        "knot,knot",
        "knots,knot"
    })
    void snowballsPublishedSample(String word, String stem) {
        assertThat(stems.of(word)).isEqualTo(stem);
    }

    @ParameterizedTest
    @CsvSource({
        "caresses,caress",
        "ponies,poni",
        "caress,caress",
        "cats,cat",
        "feed,feed",
        "agreed,agre",
        "plastered,plaster",
        "bled,bled",
        "motoring,motor",
        "sing,sing",
        "conflated,conflat",
        "troubled,troubl",
        "sized,size",
        "hopping,hop",
        "tanned,tan",
        "falling,fall",
        "hissing,hiss",
        "fizzed,fizz",
        "failing,fail",
        "filing,file",
        "happy,happi",
        "sky,sky"
    })
    void portersExamples(String word, String stem) {
        assertThat(stems.of(word)).isEqualTo(stem);
    }

    @Test
    void lettersAreWrittenPlainly() {
        assertThat(Words.of("M\u00f6we, Sm\u00f8rg\u00e5s & Stra\u00dfe"))
                .containsExactly("mowe", "smorgas", "strasse");
        assertThat(Words.of("Fisherman's boats; the ladies\u2019 o\u2019clock"))
                .containsExactly("fisherman", "boats", "the", "ladies", "oclock");
        assertThat(Words.of("H-07 / 3")).containsExactly("h", "07", "3");
        assertThat(Words.joined("H-07")).isEqualTo("h07");
    }

    @Test
    void wordsOfEveryTextAreCommon() {
        assertThat(Stems.isCommon("the")).isTrue();
        assertThat(Stems.isCommon("boat")).isFalse();
    }
}
