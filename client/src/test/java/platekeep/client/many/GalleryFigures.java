package platekeep.client.many;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import platekeep.client.library.Library;
import platekeep.client.task.Progress;
import platekeep.model.find.Group;
import platekeep.model.find.Query;

/**
 * What the gallery costs, measured in a program of its own that has done nothing else before: prints a line for each
 * figure, its name and its value. {@code GalleryFigures FOLDER SCRATCH}.
 */
public final class GalleryFigures {
    private static final long PATIENCE_MILLIS = 120_000;
    private static final int WARM = 5;
    private static final List<String> TYPED = List.of(
            "b",
            "bo",
            "boa",
            "boat",
            "boats",
            "boats s",
            "boats su",
            "boats sum",
            "boats summer",
            "apple",
            "apple t",
            "apple tree",
            "lihgthouse",
            "brick",
            "isolde",
            "binder",
            "snail gar",
            "kite wind",
            "two",
            "harbour days");

    private final Path library;
    private final Path scratch;

    private GalleryFigures(Path library, Path scratch) {
        this.library = library;
        this.scratch = scratch;
    }

    public static void main(String[] words) throws Exception {
        new GalleryFigures(Path.of(words[0]), Path.of(words[1])).measure();
        System.exit(0);
    }

    private void measure() throws Exception {
        Gallery cold = new Gallery(scratch);
        tell("first screen of pictures, cold program, since the library was asked for", firstScreen(cold));
        tell("the same, since the program was started", sinceStart());
        all(cold);
        tell("all plates are there, cold program, since it was started", sinceStart());
        refuseFewer(cold);
        cold.rest();
        tell("all is known in the background too, cold program, since it was started", sinceStart());
        frames(cold);
        typing(cold);
        searches(cold);
        ImageIO.write(cold.paint(), "png", scratch.resolve("gallery.png").toFile());
        memory(cold);
        cold.close();
        double[] warm = new double[WARM];
        for (int i = 0; i < warm.length; i++) {
            Gallery gallery = new Gallery(scratch);
            warm[i] = firstScreen(gallery);
            all(gallery);
            refuseFewer(gallery);
            gallery.rest();
            gallery.close();
        }
        tell("first screen of pictures, warm program", Figure.median(warm));
    }

    private static double sinceStart() {
        return System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime();
    }

    private double firstScreen(Gallery gallery) throws Exception {
        long start = System.nanoTime();
        gallery.open(library);
        long end = System.currentTimeMillis() + PATIENCE_MILLIS;
        while (!gallery.stands()) {
            gallery.paintIfAsked();
            if (System.currentTimeMillis() > end) {
                throw new IllegalStateException("the first screen never came");
            }
            Thread.sleep(1);
        }
        return (System.nanoTime() - start) / 1e6;
    }

    /** Waits until the gallery says that it has read all plates. */
    private static void all(Gallery gallery) throws Exception {
        while (gallery.isReading()) {
            gallery.paintIfAsked();
            Thread.sleep(2);
        }
    }

    private void refuseFewer(Gallery gallery) throws Exception {
        try (Stream<Path> files = Files.walk(library.resolve("plates"))) {
            long plates =
                    files.filter(file -> file.toString().endsWith(".json")).count();
            if (gallery.size() != plates) {
                throw new IllegalStateException(gallery.size() + " plates were shown of " + plates);
            }
        }
    }

    private static void frames(Gallery gallery) throws Exception {
        double[] slow = new double[300];
        for (int i = 0; i < slow.length; i++) {
            slow[i] = gallery.scroll(37);
        }
        double[] fast = new double[150];
        for (int i = 0; i < fast.length; i++) {
            fast[i] = gallery.scroll(900);
        }
        gallery.top();
        tell("a frame while scrolling, processor time, median", Figure.median(slow));
        tell("a frame while scrolling, processor time, 19 of 20 under", Figure.mostOf(slow));
        tell("a frame while leafing page by page, processor time, median", Figure.median(fast));
        tell("a frame while leafing page by page, processor time, 19 of 20", Figure.mostOf(fast));
    }

    private static void typing(Gallery gallery) throws Exception {
        for (int i = 0; i < 5; i++) {
            for (String words : TYPED) {
                gallery.type(words);
                gallery.type("");
            }
        }
        double[] took = new double[TYPED.size() * 3];
        for (int i = 0; i < took.length; i++) {
            took[i] = gallery.type(TYPED.get(i % TYPED.size()));
            gallery.type("");
        }
        tell("keystroke to result list and all counts, median", Figure.median(took));
        tell("keystroke to result list and all counts, 19 of 20 under", Figure.mostOf(took));
    }

    /** Kept searches with words, an age, themes, a time or a size, asked for from the menu one after the other. */
    private static void searches(Gallery gallery) throws Exception {
        List<Query> kept = new ArrayList<>();
        for (String words : TYPED) {
            kept.add(Query.ALL.withWords(words).with(Group.AGE, Set.of("toddler", "child")));
            kept.add(Query.ALL.withWords(words + " since 2015").with(Group.PLEATS, Set.of("60-120")));
            kept.add(Query.ALL.withWords(words).with(Group.COLOUR, Set.of("#A63C2B")));
        }
        gallery.keep(kept);
        double[] took = new double[kept.size()];
        for (int round = 0; round < 3; round++) {
            for (int i = 0; i < took.length; i++) {
                took[i] = gallery.reopen(i + 1);
            }
        }
        gallery.type("");
        tell("a kept search to result list and all counts, median", Figure.median(took));
        tell("a kept search to result list and all counts, 19 of 20 under", Figure.mostOf(took));
    }

    private static void memory(Gallery gallery) throws Exception {
        Library library = gallery.room().open().get(0);
        library.history(library.list(Progress.NONE).get(0).plate().orElseThrow().id());
        for (int i = 0; i < 600; i++) {
            gallery.scroll(500);
            Thread.sleep(2);
        }
        for (int i = 0; i < 4; i++) {
            System.gc();
            Thread.sleep(50);
        }
        double bytes = ManagementFactory.getMemoryMXBean().getHeapMemoryUsage().getUsed();
        tell("memory at rest with everything open, MiB", bytes / (1 << 20));
    }

    private static void tell(String name, double value) {
        System.out.printf(Locale.ROOT, "%s\t%.3f%n", name, value);
    }
}
