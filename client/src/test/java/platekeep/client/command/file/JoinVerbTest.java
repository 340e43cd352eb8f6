package platekeep.client.command.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.command.Typed;

class JoinVerbTest {
    private static final String LAMP_ROW = "aa02 ..ccccccc..";

    @TempDir
    Path here;

    @BeforeEach
    void writeThePlates() throws IOException {
        PlateTexts.write(here, "before.json", PlateTexts.LAMP);
        PlateTexts.write(here, "mine.json", PlateTexts.LAMP.replace(LAMP_ROW, "aa02 ..bbccccc.."));
        PlateTexts.write(here, "theirs.json", PlateTexts.LAMP.replace(LAMP_ROW, "aa02 ..cccccbb.."));
        PlateTexts.write(here, "other.json", PlateTexts.LAMP.replace(LAMP_ROW, "aa02 ..b.ccccc.."));
    }

    @Test
    void twoEditsOfOneRowAreJoinedCableByCable() throws IOException {
        Typed typed = Typed.in(here, "join", "before.json", "mine.json", "theirs.json", "-o", "joined.json");
        assertThat(typed.exit()).isZero();
        assertThat(result()).isEqualTo(PlateTexts.LAMP.replace(LAMP_ROW, "aa02 ..bbcccbb.."));
    }

    @Test
    void aClashIsWrittenAsDataAndToldByTheExitCode() throws IOException {
        Typed typed = Typed.in(here, "join", "before.json", "mine.json", "other.json", "-o", "joined.json");
        assertThat(typed.exit()).isEqualTo(1);
        assertThat(result())
                .contains("{\"what\": \"cables\", \"row\": \"aa02\", \"from\": 4, \"to\": 4, \"base\": \"c\","
                        + " \"sides\": [{\"value\": \".\"}, {\"value\": \"b\"}]}");
        assertThat(typed.out()).contains("row 2, pleats 4 to 5");
    }

    @Test
    void handsThatAreNamedStandInTheClash() throws IOException {
        Typed.in(
                here,
                "join",
                "before.json",
                "mine.json",
                "other.json",
                "-o",
                "joined.json",
                "--mine-by",
                "Wenna Tarrow",
                "--theirs-by",
                "Isolde Marsh");
        assertThat(result())
                .contains("{\"value\": \".\", \"by\": \"Isolde Marsh\"}, {\"value\": \"b\", \"by\": \"Wenna Tarrow\"}");
    }

    @Test
    void asJsonItTellsWhatWasSettledAndWhatIsOpen() throws IOException {
        Typed typed = Typed.in(here, "join", "before.json", "mine.json", "other.json", "-o", "joined.json", "--json");
        assertThat(typed.exit()).isEqualTo(1);
        JsonNode json = new ObjectMapper().readTree(typed.out());
        assertThat(json.get("result").textValue()).isEqualTo("joined.json");
        assertThat(json.get("clashes")).hasSize(1);
        assertThat(json.get("clashes").get(0).get("what").textValue()).isEqualTo("cables");
        assertThat(json.get("words")).hasSize(1);
        assertThat(json.get("settled").isArray()).isTrue();
    }

    @Test
    void anEmptyBaseIsAPlateThatWasNotThereBefore() throws IOException {
        PlateTexts.write(here, "empty.json", "");
        Typed typed = Typed.in(here, "join", "empty.json", "mine.json", "mine.json", "-o", "joined.json");
        assertThat(typed.exit()).isZero();
        assertThat(result()).isEqualTo(Files.readString(here.resolve("mine.json")));
    }

    @Test
    void inTroubleNothingIsWritten() throws IOException {
        PlateTexts.write(here, "bad.json", "{}");
        PlateTexts.write(here, "joined.json", "as it was");
        Typed typed = Typed.in(here, "join", "before.json", "mine.json", "bad.json", "-o", "joined.json");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err()).startsWith("bad.json, line ");
        assertThat(result()).isEqualTo("as it was");
    }

    @Test
    void aPlateOfANewerFormatIsTroubleAndNothingIsWritten() throws IOException {
        PlateTexts.write(here, "newer.json", PlateTexts.LAMP.replace("plate 1", "plate 2"));
        Typed typed = Typed.in(here, "join", "before.json", "newer.json", "theirs.json", "-o", "joined.json");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(here.resolve("joined.json")).doesNotExist();
    }

    @Test
    void aResultThatCannotBeWrittenIsTrouble() {
        Typed typed = Typed.in(here, "join", "before.json", "mine.json", "theirs.json", "-o", "no/folder/joined.json");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err()).startsWith("no/folder/joined.json cannot be written");
    }

    @Test
    void theResultMayReplaceOneOfTheSides() throws IOException {
        Typed typed = Typed.in(here, "join", "before.json", "mine.json", "theirs.json", "-o", "mine.json");
        assertThat(typed.exit()).isZero();
        assertThat(Files.readString(here.resolve("mine.json"))).contains("aa02 ..bbcccbb..");
        try (var files = Files.list(here)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("before.json", "mine.json", "theirs.json", "other.json");
        }
    }

    @Test
    void withoutAResultThePlateIsPrinted() {
        Typed typed = Typed.in(here, "join", "before.json", "mine.json", "theirs.json");
        assertThat(typed.exit()).isZero();
        assertThat(typed.out()).isEqualTo(PlateTexts.LAMP.replace(LAMP_ROW, "aa02 ..bbcccbb.."));
    }

    @Test
    void twoFilesAreTrouble() {
        Typed typed = Typed.in(here, "join", "before.json", "mine.json");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err().lines()).hasSize(1);
    }

    @Test
    void forGitTheResultTakesThePlaceOfMine() throws IOException {
        Typed typed = Typed.in(
                here, "join", "--git", "before.json", "mine.json", "theirs.json", "7", "plates/q/quay-lamp.json");
        assertThat(typed.exit()).isZero();
        assertThat(typed.out()).isEmpty();
        assertThat(Files.readString(here.resolve("mine.json"))).contains("aa02 ..bbcccbb..");
    }

    @Test
    void forGitAClashIsWrittenAndTold() throws IOException {
        Typed typed = Typed.in(
                here, "join", "--git", "before.json", "mine.json", "other.json", "7", "plates/q/quay-lamp.json");
        assertThat(typed.exit()).isEqualTo(1);
        assertThat(Files.readString(here.resolve("mine.json"))).contains("\"clashes\": [");
        assertThat(typed.err()).startsWith("plates/q/quay-lamp.json: open: ");
    }

    @Test
    void forGitTroubleLeavesATextThatNamesItAndIsNoPlate() throws IOException {
        PlateTexts.write(here, "bad.json", "<<<<<<<\n");
        Typed typed =
                Typed.in(here, "join", "--git", "before.json", "mine.json", "bad.json", "7", "plates/q/quay-lamp.json");
        assertThat(typed.exit()).isEqualTo(2);
        String left = Files.readString(here.resolve("mine.json"));
        assertThat(left).startsWith("This is no plate").contains("plates/q/quay-lamp.json (the partner's), line 1");
        assertThat(Typed.in(here, "check", "mine.json").exit()).isEqualTo(2);
    }

    private String result() throws IOException {
        return Files.readString(here.resolve("joined.json"));
    }
}
