package platekeep.client.command.keep;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import platekeep.client.command.Typed;

/** {@code show} on plate files, which needs no library. */
class ShowTextTest {
    private static final Path CASE = Path.of("..", "model", "src", "test", "resources", "cases", "join-clash-cells");

    @TempDir
    Path here;

    @Test
    void asTextRowsGoByTheirIdsSoThatNewRowsBelowChangeNoOtherLine() throws IOException {
        String plate = Files.readString(CASE.resolve("base.json"));
        Files.writeString(here.resolve("plate.json"), plate);
        Typed typed = Typed.in(here, "show", "--text", "plate.json");
        assertThat(typed.exit()).isZero();
        List<String> rows = plate.lines()
                .filter(line -> line.matches("    \"[0-9a-z]{4} [.0-9A-Za-z]+\",?"))
                .map(line -> "  " + line.strip().replaceAll("[\",]", "").replace(" ", "  "))
                .toList();
        assertThat(rows).isNotEmpty();
        assertThat(typed.lines()).containsSubsequence(rows);
    }

    @Test
    void openClashesAreToldInWords() {
        Typed typed = Typed.in(CASE.toAbsolutePath().normalize(), "show", "want.json");
        assertThat(typed.lines()).anySatisfy(line -> assertThat(line).startsWith("open clash: Cables in row "));
    }

    @Test
    void asTextAFileThatIsNoPlateIsShownAsItStands() throws IOException {
        Files.writeString(here.resolve("no-plate.json"), "not\nJSON\n");
        Typed typed = Typed.in(here, "show", "--text", "no-plate.json");
        assertThat(typed.exit()).isZero();
        assertThat(typed.lines()).first().asString().startsWith("This is no plate: ");
        assertThat(typed.out()).endsWith("not\nJSON\n");
    }

    @Test
    void asJsonItIsThePlatesOwnText() throws IOException {
        Typed typed = Typed.in(CASE.toAbsolutePath().normalize(), "show", "--json", "base.json");
        assertThat(typed.out()).isEqualTo(Files.readString(CASE.resolve("base.json")));
    }
}
