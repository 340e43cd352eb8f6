package platekeep.client.many;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import platekeep.client.cache.Cache;
import platekeep.client.git.GitLibraries;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

/**
 * Every figure of a large library beside its yardstick in the same run: {@code Figures [FOLDER [pictures] [library]
 * [saving] [tags] [gallery]]}. Takes the library that lies in the folder, or makes the standard one there; without a folder one is made
 * and thrown away. Each figure is taken
 * through the code that the client itself runs. Asserts nothing.
 */
public final class Figures {
    /** A blink lasts 100 to 400 ms (from memory). */
    private static final double BLINK = 300;

    private static final double FRAME = 16;

    private static final List<String> ALL = List.of("pictures", "library", "gallery");

    private static final Map<String, Double> AIMS = Map.of(
            "first screen of pictures, cold program, since the library was asked for", BLINK,
            "first screen of pictures, warm program", BLINK,
            "a frame while scrolling, processor time, 19 of 20 under", FRAME,
            "a frame while leafing page by page, processor time, 19 of 20", FRAME,
            "keystroke to result list and all counts, 19 of 20 under", 5.0,
            "a kept search to result list and all counts, 19 of 20 under", 5.0,
            "memory at rest with everything open, MiB", 256.0);

    private Figures() {}

    public static void main(String[] words) throws Exception {
        Path scratch = Files.createTempDirectory("figures");
        try {
            Path folder = words.length > 0 ? Path.of(words[0]) : scratch.resolve("library");
            if (!Files.exists(folder)) {
                System.out.println("making the standard library in " + folder);
                ManyPlates.make(folder, TwentyYears.Size.STANDARD);
            }
            System.out.println(Figure.HEAD);
            List<String> asked = words.length > 1 ? List.of(words).subList(1, words.length) : ALL;
            if (asked.contains("pictures")) {
                new PictureFigures(plates(folder, scratch), Figures::tell).measure();
            }
            if (asked.contains("library")) {
                new LibraryFigures(folder, scratch, Figures::tell).measure();
            }
            if (asked.contains("saving")) {
                new LibraryFigures(folder, scratch, Figures::tell).saving();
            }
            if (asked.contains("tags")) {
                new LibraryFigures(folder, scratch, Figures::tell).tags();
            }
            if (asked.contains("gallery")) {
                gallery(folder, Files.createDirectory(scratch.resolve("gallery")));
            }
        } finally {
            remove(scratch);
        }
        System.exit(0);
    }

    private static void tell(Figure figure) {
        System.out.println(figure.line());
    }

    /** In a program of its own, without a display. */
    private static void gallery(Path folder, Path scratch) throws IOException, InterruptedException {
        Process program = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.awt.headless=true",
                        "-Dhtml.disable=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        GalleryFigures.class.getName(),
                        folder.toString(),
                        scratch.toString())
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        try (BufferedReader lines = program.inputReader()) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                String[] words = line.split("\t");
                if (words.length == 2) {
                    tell(Figure.below(words[0], Double.parseDouble(words[1]), AIMS.getOrDefault(words[0], 0.0)));
                }
            }
        }
        if (program.waitFor() != 0) {
            System.out.println("the gallery could not be measured");
        }
    }

    /** Plates of about the size of a real one. */
    private static List<Plate> plates(Path folder, Path scratch) throws Exception {
        try (Library library = new GitLibraries(
                        java.time.Clock.systemUTC(), new Cache(scratch.resolve("cache-plates")), Runnable::run)
                .open(folder)) {
            return library.list(Progress.NONE).stream()
                    .map(Entry::plate)
                    .flatMap(plate -> plate.stream())
                    .filter(p -> p.positions() >= 93 && p.positions() <= 97)
                    .filter(p -> p.rows().size() >= 39 && p.rows().size() <= 41)
                    .limit(100)
                    .toList();
        }
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
                Files.delete(file);
            }
        }
    }
}
