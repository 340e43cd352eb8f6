package platekeep.client.gallery;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PastPlate;
import platekeep.client.library.Version;
import platekeep.model.find.Told;

/** What the versions of plates tell. */
final class Telling {
    private Telling() {}

    /** By plate; in the background. */
    static Map<String, Told> of(Library library) throws LibraryException {
        Map<String, Version> versions = library.versions(Integer.MAX_VALUE).stream()
                .collect(Collectors.toMap(Version::id, version -> version, (a, b) -> a));
        Map<String, List<Version>> byPlate = new HashMap<>();
        for (PastPlate past : library.past()) {
            Version version = versions.get(past.versionId());
            if (version != null) {
                byPlate.computeIfAbsent(past.plateId(), id -> new ArrayList<>(2))
                        .add(version);
            }
        }
        Map<String, Told> told = new HashMap<>();
        byPlate.forEach((id, all) -> told.put(
                id,
                new Told(
                        all.stream().map(version -> version.on().getYear()).toList(),
                        all.stream().map(Version::reason).distinct().toList())));
        return told;
    }
}
