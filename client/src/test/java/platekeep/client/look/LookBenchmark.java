package platekeep.client.look;

import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.List;
import java.util.Locale;
import platekeep.client.cache.Cache;
import platekeep.client.git.GitLibraries;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.plate.piece.Area;
import platekeep.client.plate.piece.Piece;
import platekeep.client.task.Progress;
import platekeep.model.draw.Spot;
import platekeep.model.look.Wanted;
import platekeep.model.plate.Plate;

/** The searches of the window over a library ({@code main FOLDER}), in processor time of the searching thread. */
public final class LookBenchmark {
    private final Library library;
    private final Sights sights = new Sights(Runnable::run);
    private final OldTexts texts = new OldTexts(sights);

    private LookBenchmark(Library library) {
        this.library = library;
    }

    /** Something that is timed. */
    private interface Timed {
        Finds run() throws LibraryException;
    }

    public static void main(String[] args) throws Exception {
        Cache cache = new Cache(Files.createTempDirectory("look"));
        try (Library library = new GitLibraries(Clock.systemUTC(), cache, Runnable::run).open(Path.of(args[0]))) {
            new LookBenchmark(library).run();
        }
    }

    private void run() throws LibraryException {
        time(
                "read all plates",
                () -> new Finds(List.of(), library.list(Progress.NONE).size(), "plates"));
        time("what all look like", this::look);
        time("the same again", this::look);
        List<Sight> now = sights.now(List.of(library), Progress.NONE);
        Plate asked = now.get(now.size() / 3).plate();
        for (int round = 0; round < 3; round++) {
            time("plates like one", () -> hunt(new LikeHunt(List.of(library), sights, asked, Options.Times.NOW)));
        }
        Plate motif = motif(asked);
        for (int round = 0; round < 3; round++) {
            time("plates with a motif", () -> hunt(new MotifHunt(List.of(library), sights, motif, Options.FIRST)));
        }
        Options same = Options.FIRST.with(
                new Wanted(Wanted.Colours.SAME, Wanted.Gaps.OPEN, Wanted.Mirrors.NONE, Wanted.Kind.SAME));
        time("the same, strictly", () -> hunt(new MotifHunt(List.of(library), sights, motif, same)));
        time("near doubles", () -> hunt(new DoublesHunt(List.of(library), sights)));
        time(
                "index of versions, and all texts listed",
                () -> new Finds(List.of(), library.past().size(), "texts"));
        time("all texts listed again", () -> new Finds(List.of(), library.past().size(), "texts"));
        for (int round = 0; round < 3; round++) {
            time("words in old versions", () -> hunt(new OnceSaidHunt(List.of(library), texts, "boat")));
        }
        time(
                "plates like one, once too",
                () -> hunt(new LikeHunt(List.of(library), sights, asked, Options.Times.ONCE_TOO)));
        time(
                "plates with a motif, once too",
                () -> hunt(new MotifHunt(List.of(library), sights, motif, Options.FIRST.with(Options.Times.ONCE_TOO))));
    }

    private Finds look() throws LibraryException {
        return new Finds(List.of(), sights.now(List.of(library), Progress.NONE).size(), "plates");
    }

    private static Finds hunt(Hunt hunt) throws LibraryException {
        return hunt.run(Progress.NONE, found -> {});
    }

    /** The middle of a plate. */
    private static Plate motif(Plate plate) {
        int row = plate.rows().size() / 2;
        int place = plate.positions() / 2;
        Area area = Area.between(new Spot(row - 5, place - 8), new Spot(row + 6, place + 9));
        return Piece.of(plate, area).orElseThrow().plate("m", "motif", new SecureRandom());
    }

    private static void time(String what, Timed timed) throws LibraryException {
        long cpu = cpu();
        long wall = System.nanoTime();
        Finds finds = timed.run();
        System.out.printf(
                Locale.ROOT,
                "%-42s %6d ms of a processor, %6d ms by the clock: %d, %s%n",
                what,
                (cpu() - cpu) / 1_000_000,
                (System.nanoTime() - wall) / 1_000_000,
                finds.all(),
                finds.summary());
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }
}
