package platekeep.client.command.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.command.Typed;

class CheckVerbTest {
    /** Two starts in one figure that cannot both be true: next to each other in a row, both down. */
    private static final String DISAGREEING = PlateTexts.LAMP.replace(
            "{\"row\": \"aa03\", \"pleat\": 2, \"cable\": \"down\"}",
            "{\"row\": \"aa03\", \"pleat\": 2, \"cable\": \"down\"},\n    {\"row\": \"aa03\", \"pleat\": 3, \"cable\": \"down\"}");

    @TempDir
    Path here;

    @BeforeEach
    void writeThePlates() throws IOException {
        PlateTexts.write(here, "good.json", PlateTexts.LAMP);
        PlateTexts.write(here, "starts.json", DISAGREEING);
        PlateTexts.write(here, "bad.json", "{\"format\": \"plate 1\"");
    }

    @Test
    void aPlateWithoutFaultsPasses() {
        Typed typed = Typed.in(here, "check", "good.json");
        assertThat(typed.out()).isEqualTo("Nothing to report.\n");
        assertThat(typed.exit()).isZero();
    }

    @Test
    void anErrorIsToldAndDecidesTheExitCode() {
        Typed typed = Typed.in(here, "check", "good.json", "starts.json");
        assertThat(typed.exit()).isEqualTo(1);
        assertThat(typed.lines()).anySatisfy(line -> assertThat(line).startsWith("starts.json: error, row 1"));
    }

    @Test
    void asJsonEachFindingHasItsPlace() throws IOException {
        Typed typed = Typed.in(here, "check", "--json", "starts.json");
        assertThat(typed.exit()).isEqualTo(1);
        JsonNode json = new ObjectMapper().readTree(typed.out());
        assertThat(json.isArray()).isTrue();
        JsonNode finding = json.get(0);
        assertThat(finding.get("file").textValue()).isEqualTo("starts.json");
        assertThat(finding.get("severity").textValue()).isEqualTo("error");
        assertThat(finding.get("row").intValue()).isEqualTo(1);
        assertThat(finding.get("pleat").isInt()).isTrue();
        assertThat(finding.get("rule").textValue()).isNotBlank();
        assertThat(finding.get("text").textValue()).endsWith(".");
    }

    @Test
    void asJsonNoFindingIsAnEmptyList() {
        assertThat(Typed.in(here, "check", "--json", "good.json").out()).isEqualTo("[]\n");
    }

    @Test
    void aFileThatIsNoPlateIsTroubleAndTheOthersAreCheckedAllTheSame() {
        Typed typed = Typed.in(here, "check", "bad.json", "starts.json");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err()).startsWith("bad.json, line ");
        assertThat(typed.out()).contains("starts.json: error");
    }

    @Test
    void anOpenClashIsAnError() throws IOException {
        PlateTexts.write(
                here,
                "open.json",
                PlateTexts.LAMP.replaceFirst(
                        "\n  ]\n}",
                        "\n  ],\n  \"clashes\": [\n    {\"what\": \"field\", \"field\": \"title\", \"base\": \"Quay Lamp\","
                                + " \"sides\": [{\"value\": \"Pier Lamp\"}, {\"value\": \"Quay Light\"}]}\n  ]\n}"));
        Typed typed = Typed.in(here, "check", "open.json");
        assertThat(typed.exit()).isEqualTo(1);
        assertThat(typed.out()).contains("open.json: error");
    }

    @Test
    void whatTheReaderMendsIsAWarning() throws IOException {
        PlateTexts.write(
                here,
                "order.json",
                PlateTexts.LAMP.replace("    \"lighthouses\"", "    \"sea\",\n    \"lighthouses\""));
        Typed typed = Typed.in(here, "check", "order.json");
        assertThat(typed.exit()).isZero();
        assertThat(typed.out()).contains("order.json: warning");
    }
}
