package platekeep.client.command.keep;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import platekeep.client.command.desk.Trouble;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.PlateVersion;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

/**
 * Finds the plate that a word on the command line means: its id or the beginning of it, its number, its title, the path
 * of its file, or a part of its title that no other title has. The first of these that fits decides.
 */
public final class PlateChoice {
    private static final int SHORTEST_ID = 4;

    private final Library library;
    private final List<Candidate> candidates;

    /** A plate and where it lies. */
    private record Candidate(Plate plate, String path) {}

    private PlateChoice(Library library, List<Candidate> candidates) {
        this.library = library;
        this.candidates = candidates;
    }

    /** Among the plates of the newest version. */
    public static PlateChoice among(Library library) throws LibraryException {
        return new PlateChoice(library, candidates(library.list(Progress.NONE).stream()));
    }

    /** Among the plates of the newest version and those that were put away. */
    public static PlateChoice amongAll(Library library) throws LibraryException {
        List<Candidate> all = new ArrayList<>(candidates(library.list(Progress.NONE).stream()));
        all.addAll(
                candidates(library.putAway().stream().map(PlateVersion::entry).flatMap(entry -> entry.stream())));
        return new PlateChoice(library, all);
    }

    private static List<Candidate> candidates(Stream<Entry> entries) {
        return entries.flatMap(entry -> entry.plate().stream().map(plate -> new Candidate(plate, entry.path())))
                .toList();
    }

    /** The plate that the word means, or trouble that says what else it could mean. */
    public Plate plate(String word) throws Trouble {
        String wanted = word.toLowerCase(Locale.ROOT);
        List<Predicate<Candidate>> readings = List.of(
                c -> c.plate().id().equals(word),
                c -> c.path().equals(word) || library.folder().resolve(c.path()).equals(pathOf(word)),
                c -> wanted.length() >= SHORTEST_ID && c.plate().id().startsWith(wanted),
                c -> c.plate().number().filter(word::equals).isPresent(),
                c -> c.plate().title().toLowerCase(Locale.ROOT).equals(wanted),
                c -> c.plate().title().toLowerCase(Locale.ROOT).contains(wanted));
        for (Predicate<Candidate> reading : readings) {
            List<Candidate> found = candidates.stream().filter(reading).toList();
            if (found.size() == 1) {
                return found.get(0).plate();
            }
            if (found.size() > 1) {
                throw new Trouble("\"" + word + "\" can mean several plates: " + named(found)
                        + ". Say more of the title, or the id.");
            }
        }
        throw new Trouble("There is no plate \"" + word + "\" in " + library.name()
                + ". See \"platekeep list\" for what there is.");
    }

    private Path pathOf(String word) {
        try {
            return Path.of(word).toAbsolutePath().normalize();
        } catch (java.nio.file.InvalidPathException e) {
            return library.folder();
        }
    }

    private static String named(List<Candidate> found) {
        Function<Candidate, String> name = c -> c.plate().title() + " ("
                + c.plate().id().substring(0, Math.min(8, c.plate().id().length())) + ")";
        return found.stream().limit(6).map(name).collect(Collectors.joining(", ")) + (found.size() > 6 ? ", ..." : "");
    }
}
