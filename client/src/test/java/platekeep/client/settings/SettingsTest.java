package platekeep.client.settings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SettingsTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("below").resolve("settings.properties");
    }

    @Test
    void whatIsWrittenIsThereAtTheNextStart() {
        Settings settings = Settings.in(file());
        settings.theme("dark");
        settings.libraries(List.of(folder.resolve("a b"), folder.resolve("ü")));
        settings.put("gallery.size", "240");
        settings.write();
        Settings again = Settings.in(file());
        assertThat(again.theme()).contains("dark");
        assertThat(again.libraries()).containsExactly(folder.resolve("a b"), folder.resolve("ü"));
        assertThat(again.number("gallery.size")).contains(240);
    }

    @Test
    void fewerLibrariesLeaveNoneOfTheOldOnesBehind() {
        Settings settings = Settings.in(file());
        settings.libraries(List.of(folder.resolve("a"), folder.resolve("b")));
        settings.libraries(List.of(folder.resolve("c")));
        assertThat(settings.libraries()).containsExactly(folder.resolve("c"));
    }

    @Test
    void aDamagedFileCountsAsEmpty() throws IOException {
        Files.createDirectories(file().getParent());
        Files.writeString(file(), "theme=\\uZZZZ");
        assertThat(Settings.in(file()).theme()).isEmpty();
    }

    @Test
    void aNumberThatIsNoneIsNotTaken() {
        Settings settings = Settings.in(file());
        settings.put("gallery.size", "large");
        assertThat(settings.number("gallery.size")).isEmpty();
    }
}
