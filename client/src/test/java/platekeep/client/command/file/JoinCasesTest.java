package platekeep.client.command.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import platekeep.client.command.Typed;

/** The worked cases of joining, through the command: the answer is right byte for byte, and so is the exit code. */
class JoinCasesTest {
    private static final Path CASES = Path.of("..", "model", "src", "test", "resources", "cases");

    @TempDir
    Path here;

    static List<String> cases() throws IOException {
        try (Stream<Path> folders = Files.list(CASES)) {
            return folders.map(folder -> folder.getFileName().toString())
                    .filter(name -> name.startsWith("join-"))
                    .sorted()
                    .toList();
        }
    }

    @Test
    void allEightCasesAreThere() throws IOException {
        assertThat(cases()).hasSize(8);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theJoinedPlateIsRightByteForByte(String name) throws IOException {
        assertJoins(name, "mine.json", "theirs.json");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void theAnswerDoesNotDependOnWhoJoins(String name) throws IOException {
        assertJoins(name, "theirs.json", "mine.json");
    }

    private void assertJoins(String name, String mine, String theirs) throws IOException {
        Path folder = CASES.resolve(name).toAbsolutePath().normalize();
        Path result = here.resolve("joined.json");
        Typed typed = Typed.in(folder, "join", "base.json", mine, theirs, "-o", result.toString());
        String want = Files.readString(folder.resolve("want.json"));
        assertThat(Files.readString(result)).isEqualTo(want);
        assertThat(typed.exit()).isEqualTo(want.contains("\"clashes\"") ? 1 : 0);
    }
}
