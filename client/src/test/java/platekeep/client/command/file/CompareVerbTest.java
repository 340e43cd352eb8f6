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

class CompareVerbTest {
    @TempDir
    Path here;

    @BeforeEach
    void writeThePlates() throws IOException {
        PlateTexts.write(here, "old.json", PlateTexts.LAMP);
        PlateTexts.write(
                here,
                "new.json",
                PlateTexts.LAMP
                        .replace("aa02 ..ccccccc..", "aa02 ..cbbbccc..")
                        .replace("    \"aa01", "    \"zz09 .....c.....\",\n    \"aa01"));
    }

    @Test
    void aPlateIsTheSameAsItself() {
        Typed typed = Typed.in(here, "compare", "old.json", "old.json");
        assertThat(typed.exit()).isZero();
        assertThat(typed.out()).isEqualTo("The two plates are the same.\n");
    }

    @Test
    void aDifferenceIsToldInWordsAndByTheExitCode() {
        Typed typed = Typed.in(here, "compare", "old.json", "new.json");
        assertThat(typed.exit()).isEqualTo(1);
        assertThat(typed.lines()).hasSizeGreaterThanOrEqualTo(2);
        assertThat(typed.err()).isEmpty();
    }

    @Test
    void asJsonRowsArePairedAndCountedFromTheBottom() throws IOException {
        Typed typed = Typed.in(here, "compare", "--json", "old.json", "new.json");
        assertThat(typed.exit()).isEqualTo(1);
        JsonNode json = new ObjectMapper().readTree(typed.out());
        assertThat(json.get("same").booleanValue()).isFalse();
        assertThat(json.get("words")).isNotEmpty();
        assertThat(json.get("rows").toString())
                .isEqualTo("[{\"old\":null,\"new\":4,\"change\":\"added\"},"
                        + "{\"old\":3,\"new\":3,\"change\":\"same\"},"
                        + "{\"old\":2,\"new\":2,\"change\":\"edited\","
                        + "\"cables\":[{\"from\":4,\"to\":6,\"old\":\"ccc\",\"new\":\"bbb\"}]},"
                        + "{\"old\":1,\"new\":1,\"change\":\"same\"}]");
    }

    @Test
    void asJsonTheSamePlateHasOnlySameRowsAndNoWords() throws IOException {
        Typed typed = Typed.in(here, "compare", "--json", "old.json", "old.json");
        assertThat(typed.exit()).isZero();
        JsonNode json = new ObjectMapper().readTree(typed.out());
        assertThat(json.get("same").booleanValue()).isTrue();
        assertThat(json.get("words")).isEmpty();
        assertThat(json.get("rows").findValuesAsText("change")).containsExactly("same", "same", "same");
    }

    @Test
    void everyProblemOfABadFileIsOneSentence() throws IOException {
        PlateTexts.write(
                here,
                "bad.json",
                PlateTexts.LAMP.replace("aa01 ...bbbbb...", "aa01 ...bbbbb..").replace("#A63C2B", "red"));
        Typed typed = Typed.in(here, "compare", "old.json", "bad.json");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err().lines())
                .hasSize(2)
                .allSatisfy(line -> assertThat(line).startsWith("bad.json, line "));
    }

    @Test
    void aFileThatIsNotThereIsTrouble() {
        Typed typed = Typed.in(here, "compare", "old.json", "gone.json");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err()).isEqualTo("There is no file gone.json.\n");
    }

    @Test
    void aFolderIsTrouble() throws IOException {
        Files.createDirectory(here.resolve("plates"));
        Typed typed = Typed.in(here, "compare", "old.json", "plates");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err()).isEqualTo("plates is a folder; name a plate file.\n");
    }

    @Test
    void oneFileAloneIsTrouble() {
        Typed typed = Typed.in(here, "compare", "old.json");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err()).contains("two plate files");
    }

    @Test
    void forGitTheExitCodeIsAlwaysZero() {
        Typed typed = Typed.in(
                here,
                "compare",
                "--git",
                "plates/q/lamp.json",
                "old.json",
                "1111111",
                "100644",
                "new.json",
                "2222222",
                "100644");
        assertThat(typed.exit()).isZero();
        assertThat(typed.lines()).first().isEqualTo("plates/q/lamp.json");
        assertThat(typed.lines()).hasSizeGreaterThanOrEqualTo(3);
    }

    @Test
    void forGitAFileThatIsNoPlateIsToldAndTheExitCodeIsZero() throws IOException {
        PlateTexts.write(here, "bad.json", "[]");
        Typed typed = Typed.in(
                here,
                "compare",
                "--git",
                "plates/q/lamp.json",
                "old.json",
                "1111111",
                "100644",
                "bad.json",
                "2222222",
                "100644");
        assertThat(typed.exit()).isZero();
        assertThat(typed.out()).contains("bad.json, line ");
    }

    @Test
    void forGitNewAndVanishedPlatesAreTold() {
        Typed born = Typed.in(here, "compare", "--git", "l.json", "/dev/null", ".", ".", "new.json", "2", "100644");
        assertThat(born.out()).contains("A new plate: Quay Lamp.");
        Typed gone = Typed.in(here, "compare", "--git", "l.json", "old.json", "1", "100644", "/dev/null", ".", ".");
        assertThat(gone.out()).contains("put away: Quay Lamp.");
    }

    @Test
    void forGitAFileThatIsNotJoinedYetIsTold() {
        Typed typed = Typed.in(here, "compare", "--git", "plates/q/lamp.json");
        assertThat(typed.exit()).isZero();
        assertThat(typed.out()).contains("Not joined yet");
    }
}
