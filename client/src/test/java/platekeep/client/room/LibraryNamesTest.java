package platekeep.client.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import platekeep.client.library.Library;
import platekeep.client.library.MemoryLibrary;

class LibraryNamesTest {
    private static Library library(String folder, String name) {
        return new MemoryLibrary(Path.of(folder).toAbsolutePath(), name, Optional.empty());
    }

    private static List<String> shown(Library... libraries) {
        Map<Library, String> own = new LinkedHashMap<>();
        Stream.of(libraries).forEach(library -> own.put(library, library.name()));
        LibraryNames names = LibraryNames.of(own);
        return Stream.of(libraries).map(names::of).toList();
    }

    @Test
    void aNameThatOnlyOneHasStandsAlone() {
        assertThat(shown(library("/a/home", "Archive"), library("/a/ours", "Ours")))
                .containsExactly("Archive", "Ours");
    }

    @Test
    void librariesOfOneNameAreToldApartByTheirFolders() {
        assertThat(shown(library("/a/home", "Archive"), library("/a/old", "archive "), library("/a/ours", "Ours")))
                .containsExactly("home (Archive)", "old (archive)", "Ours");
    }

    @Test
    void foldersOfOneNameAreToldApartByThoseAboveThem() {
        assertThat(shown(library("/stick/patterns", "Archive"), library("/home/patterns", "Archive")))
                .containsExactly(
                        Path.of("stick", "patterns") + " (Archive)", Path.of("home", "patterns") + " (Archive)");
    }
}
