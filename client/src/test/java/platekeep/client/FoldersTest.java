package platekeep.client;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * Source of the places on Linux: XDG Base Directory Specification 0.8, "Environment variables": defaults
 * {@code $HOME/.local/share} and {@code $HOME/.local/state}; "all paths set in these environment variables must be
 * absolute. If an implementation encounters a relative path ... it should consider the path invalid and ignore it".
 */
class FoldersTest {
    private static final Path HOME = Path.of("/home/wenna");

    @Test
    void withoutVariablesTheDefaultsOfTheSpecificationHold() {
        Folders folders = folders(Map.of(), "Linux");
        assertThat(folders.data()).isEqualTo(Path.of("/home/wenna/.local/share/platekeep"));
        assertThat(folders.state()).isEqualTo(Path.of("/home/wenna/.local/state/platekeep"));
    }

    @Test
    void variablesMoveThem() {
        Folders folders = folders(Map.of("XDG_DATA_HOME", "/d", "XDG_STATE_HOME", "/s"), "Linux");
        assertThat(folders.data()).isEqualTo(Path.of("/d/platekeep"));
        assertThat(folders.state()).isEqualTo(Path.of("/s/platekeep"));
    }

    @Test
    void emptyAndRelativeVariablesAreIgnored() {
        Folders folders = folders(Map.of("XDG_DATA_HOME", "", "XDG_STATE_HOME", "some/where"), "Linux");
        assertThat(folders.data()).isEqualTo(Path.of("/home/wenna/.local/share/platekeep"));
        assertThat(folders.state()).isEqualTo(Path.of("/home/wenna/.local/state/platekeep"));
    }

    @Test
    void otherSystemsKeepThemWhereTheyKeepSuchThings() {
        assertThat(folders(Map.of(), "Mac OS X").data())
                .isEqualTo(Path.of("/home/wenna/Library/Application Support/platekeep"));
        assertThat(folders(Map.of("LOCALAPPDATA", "/local"), "Windows 11").state())
                .isEqualTo(Path.of("/local/platekeep"));
    }

    private static Folders folders(Map<String, String> environment, String system) {
        return new Folders(name -> Optional.ofNullable(environment.get(name)), HOME, system);
    }
}
