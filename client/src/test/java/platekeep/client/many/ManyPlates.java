package platekeep.client.many;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import platekeep.client.cache.Cache;
import platekeep.client.git.GitLibraries;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.model.text.LibraryFacts;
import platekeep.model.text.Slugs;

/**
 * Makes a large library in a folder: {@code ManyPlates FOLDER [PLATES [VERSIONS [SEED]]]}, without numbers the standard
 * one of 10,000 plates with 20,000 versions. The library is made by the client itself; what follows comes through
 * {@code git fast-import}. The same numbers give the same versions, id for id.
 */
public final class ManyPlates {
    private static final String NAME = "Harbour and Orchard, All Years";

    private ManyPlates() {}

    public static void main(String[] words) throws IOException, LibraryException {
        if (words.length < 1 || words.length > 4) {
            System.err.println("ManyPlates FOLDER [PLATES [VERSIONS [SEED]]]");
            System.exit(2);
        }
        int plates = words.length > 1 ? Integer.parseInt(words[1]) : TwentyYears.Size.STANDARD.plates();
        int versions = words.length > 2 ? Integer.parseInt(words[2]) : 2 * plates;
        long seed = words.length > 3 ? Long.parseLong(words[3]) : TwentyYears.Size.STANDARD.seed();
        long start = System.nanoTime();
        String newest = make(Path.of(words[0]), new TwentyYears.Size(plates, versions, seed));
        System.out.printf(
                Locale.ROOT,
                "%d plates, %d versions, newest %s, in %.1f s%n",
                plates,
                versions,
                newest,
                (System.nanoTime() - start) / 1e9);
    }

    /** Makes a library in an empty or absent folder and gives its newest version. */
    static String make(Path folder, TwentyYears.Size size) throws IOException, LibraryException {
        Path marks = Files.createTempFile("many-plates", ".marks");
        Clock then = Clock.fixed(TwentyYears.BEGAN, ZoneOffset.ofHours(1));
        LibraryFacts facts;
        String first;
        try (Library library =
                new GitLibraries(then, Cache.ofUser(), Runnable::run).create(folder, NAME, TwentyYears.WENNA)) {
            facts = library.facts();
            first = library.newest().orElseThrow().id();
        }
        NativeGit git = new NativeGit(folder);
        List<List<TwentyYears.Named>> names = new ArrayList<>();
        git.fed(
                input -> {
                    ImportStream stream = new ImportStream(input);
                    names.add(new TwentyYears(stream, size, first, facts).tell());
                    stream.end();
                },
                "fast-import",
                "--quiet",
                "--done",
                "--export-marks=" + marks);
        Map<String, String> ids = ids(marks);
        git.fed(input -> name(new ImportStream(input), names.get(0), ids), "fast-import", "--quiet", "--done");
        git.says("pack-refs", "--all");
        git.says("reset", "--quiet", "--hard");
        Files.delete(marks);
        return git.says("rev-parse", "HEAD").strip();
    }

    private static Map<String, String> ids(Path marks) throws IOException {
        Map<String, String> ids = new HashMap<>();
        for (String line : Files.readAllLines(marks)) {
            int gap = line.indexOf(' ');
            ids.put(line.substring(0, gap), line.substring(gap + 1));
        }
        return ids;
    }

    private static void name(ImportStream stream, List<TwentyYears.Named> names, Map<String, String> ids)
            throws IOException {
        for (TwentyYears.Named name : names) {
            String version = ids.get(name.version());
            String key = name.plateId() + "/" + Slugs.of(name.text()) + "-" + version.substring(0, 8);
            stream.tag(key, version, name.hand(), name.at(), name.text());
        }
        stream.end();
    }
}
