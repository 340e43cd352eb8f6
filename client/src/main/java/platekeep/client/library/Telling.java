package platekeep.client.library;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import platekeep.model.find.Saying;
import platekeep.model.find.Told;

/** What the versions of plates tell. */
public final class Telling {
    private Telling() {}

    /** By plate; in the background. */
    public static Map<String, Told> of(Library library) throws LibraryException {
        Map<String, Version> versions = versions(library);
        Map<String, List<Version>> byPlate = new HashMap<>();
        for (PastPlate past : library.past()) {
            Version version = versions.get(past.versionId());
            if (version != null) {
                byPlate.computeIfAbsent(past.plateId(), id -> new ArrayList<>(2))
                        .add(version);
            }
        }
        Map<String, List<Saying>> names = names(library, versions);
        Map<String, Told> told = new HashMap<>();
        byPlate.forEach((id, all) -> told.put(id, told(all, names.getOrDefault(id, List.of()))));
        return told;
    }

    /** All versions by their ids; in the background. */
    public static Map<String, Version> versions(Library library) throws LibraryException {
        return library.versions(Integer.MAX_VALUE).stream()
                .collect(Collectors.toMap(Version::id, version -> version, (a, b) -> a));
    }

    private static Map<String, List<Saying>> names(Library library, Map<String, Version> versions)
            throws LibraryException {
        Map<String, List<Saying>> names = new HashMap<>();
        for (NamedVersion named : library.names()) {
            Version version = versions.get(named.versionId());
            if (version != null) {
                names.computeIfAbsent(named.plateId(), id -> new ArrayList<>(1))
                        .add(saying(Saying.Kind.NAME, named.name(), version));
            }
        }
        return names;
    }

    private static Told told(List<Version> versions, List<Saying> names) {
        List<Saying> sayings = new ArrayList<>(names);
        Set<String> reasons = new HashSet<>();
        for (Version version : versions) {
            if (reasons.add(version.reason())) {
                sayings.add(saying(Saying.Kind.REASON, version.reason(), version));
            }
        }
        return new Told(
                versions.stream().map(version -> version.on().toLocalDate()).toList(), sayings);
    }

    /** Something that was said of a version, on its day. */
    public static Saying saying(Saying.Kind kind, String text, Version version) {
        return new Saying(kind, text, version.on().toLocalDate());
    }
}
