package platekeep.client.many;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import platekeep.client.cache.Cache;
import platekeep.client.git.GitLibraries;
import platekeep.client.library.Change;
import platekeep.client.library.Entry;
import platekeep.client.library.Libraries;
import platekeep.client.library.Library;
import platekeep.client.library.Saving;
import platekeep.client.task.Helpers;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;

/** What reading, asking and saving cost, beside native Git on the same library. */
final class LibraryFigures {
    private static final int TURNS = 7;
    private static final int SAVES = 8;

    /** After so many turns the compiler is through with what reads plates: its own work takes until about the 25th. */
    private static final int UNTIL_WARM = 30;

    private final Path folder;
    private final Path scratch;
    private final NativeGit git;
    private final Consumer<Figure> told;

    /**
     * @param folder the library; it is not changed
     * @param scratch where copies are made
     */
    LibraryFigures(Path folder, Path scratch, Consumer<Figure> told) {
        this.folder = folder;
        this.scratch = scratch;
        this.git = new NativeGit(folder);
        this.told = told;
    }

    void measure() throws Exception {
        openAndRead();
        index();
        history();
        saving();
        tags();
    }

    /** Tagging alone. */
    void tags() throws Exception {
        Path copy = copy("copy-tags");
        try (Library library = libraries("cache-copy-tags").open(copy)) {
            new TagFigures(library, new NativeGit(copy), told).measure();
        }
    }

    private Path copy(String folderName) throws Exception {
        Path copy = scratch.resolve(folderName);
        git.says("clone", "--quiet", "--no-hardlinks", folder.toString(), copy.toString());
        NativeGit there = new NativeGit(copy);
        there.says("remote", "remove", "origin");
        there.says("config", "user.name", TwentyYears.WENNA.name());
        there.says("config", "user.email", TwentyYears.WENNA.address());
        there.says("config", "gc.auto", "0");
        return copy;
    }

    /** Saving alone. */
    void saving() throws Exception {
        save("save one plate, forced to disk", "copy", libraries -> libraries);
        save("save one plate, not forced to disk, as native Git does it", "copy-2", Libraries::syncedWhenClosed);
    }

    private Library open(Path library, String cache) throws Exception {
        return libraries(cache).open(library);
    }

    private Libraries libraries(String cache) {
        return new GitLibraries(Clock.systemDefaultZone(), new Cache(scratch.resolve(cache)), new Helpers());
    }

    private void openAndRead() throws Exception {
        Figure.Work read = () -> {
            try (Library library = open(folder, "cache-read")) {
                Figure.require(library.list(Progress.NONE).stream()
                        .allMatch(e -> e.plate().isPresent()));
            }
        };
        Figure.Work catFile = () -> {
            List<ProcessBuilder> both = List.of(
                    new ProcessBuilder("git", "ls-tree", "-r", "--object-only", "HEAD", "plates/")
                            .directory(folder.toFile()),
                    new ProcessBuilder("git", "cat-file", "--batch", "--buffer")
                            .directory(folder.toFile())
                            .redirectOutput(ProcessBuilder.Redirect.DISCARD));
            for (Process process : ProcessBuilder.startPipeline(both)) {
                Figure.require(process.waitFor() == 0);
            }
        };
        String yardstick = "git ls-tree -r | cat-file --batch --buffer";
        told.accept(Figure.beside(
                "open and parse all plates, in a cold program",
                Figure.millis(read),
                yardstick,
                Figure.millis(catFile),
                0));
        for (int i = 0; i < UNTIL_WARM; i++) {
            read.run();
        }
        double[] both = Figure.inTurn(TURNS, read, catFile);
        told.accept(Figure.beside("open and parse all plates", both[0], yardstick, both[1], 0.35));
        try (Library library = open(folder, "cache-read")) {
            library.list(Progress.NONE);
            double[] again = Figure.inTurn(TURNS, () -> library.list(Progress.NONE), () -> {});
            told.accept(Figure.beside("list all plates again", again[0], yardstick, both[1], 0));
        }
    }

    private void index() throws Exception {
        int[] run = {0};
        Figure.Work build = () -> {
            try (Library library = open(folder, "cache-index-" + run[0]++)) {
                Figure.require(library.versions(1).size() == 1);
            }
        };
        build.run();
        double[] both = Figure.inTurn(3, build, () -> git.says("log", "--raw", "--no-renames"));
        told.accept(Figure.beside("build the index of all versions", both[0], "git log --raw", both[1], 2.5));
        double[] kept = Figure.inTurn(3, () -> versions("cache-index-0"), () -> {});
        told.accept(Figure.beside("take the kept index over", kept[0], "git log --raw", both[1], 0));
    }

    private void versions(String cache) throws Exception {
        try (Library library = open(folder, cache)) {
            Figure.require(library.versions(1).size() == 1);
        }
    }

    private void history() throws Exception {
        Path graph = scratch.resolve("with-graph.git");
        git.says("clone", "--quiet", "--bare", "--shared", folder.toString(), graph.toString());
        NativeGit withGraph = new NativeGit(graph);
        withGraph.says("commit-graph", "write", "--reachable", "--changed-paths");
        try (Library library = open(folder, "cache-index-0")) {
            List<Entry> plates = library.list(Progress.NONE);
            int[] next = {0};
            Figure.Work ours = () -> {
                for (int i = 0; i < 100; i++) {
                    Plate plate =
                            plates.get(next[0]++ * 7919 % plates.size()).plate().orElseThrow();
                    Figure.require(!library.history(plate.id()).isEmpty());
                }
            };
            for (int i = 0; i < 10; i++) {
                ours.run();
            }
            double[] plain = Figure.inTurn(
                    TURNS,
                    ours,
                    () -> git.says(
                            "log",
                            "--format=%H",
                            "--",
                            plates.get(next[0] % 9000).path()));
            double[] graphed = Figure.inTurn(
                    TURNS,
                    ours,
                    () -> withGraph.says(
                            "log",
                            "--format=%H",
                            "--",
                            plates.get(next[0] % 9000).path()));
            told.accept(Figure.below("history of a plate, from the index", plain[0] / 100, 1));
            told.accept(Figure.beside("the same", plain[0] / 100, "git log -- path", plain[1], 0));
            told.accept(Figure.beside(
                    "the same", graphed[0] / 100, "git log -- path, with its commit-graph", graphed[1], 0));
        }
    }

    private void save(String name, String folderName, UnaryOperator<Libraries> how) throws Exception {
        Path copy = copy(folderName);
        NativeGit there = new NativeGit(copy);
        try (Library library = how.apply(libraries("cache-" + folderName)).open(copy)) {
            List<Entry> plates = library.list(Progress.NONE);
            library.versions(1);
            int[] next = {0};
            Figure.Work ours = () -> {
                Plate plate = plates.get(next[0]++ * 37 % 5000).plate().orElseThrow();
                Plate changed = plate.edit()
                        .notes(List.of("Changed in turn " + next[0]))
                        .build();
                library.save(new Saving(
                        List.of(new Change.PutPlate(changed)), "A note", Optional.empty(), Optional.empty()));
            };
            boolean[] forcing = {false};
            Figure.Work theirs = () -> {
                String fsync = forcing[0] ? NativeGit.FORCING : NativeGit.USUAL;
                String path = plates.get(5000 + next[0] * 37 % 4000).path();
                Files.writeString(copy.resolve(path), Files.readString(copy.resolve(path)) + "\n");
                there.says("-c", fsync, "add", path);
                there.says("-c", fsync, "commit", "--quiet", "-m", "A note");
            };
            Figure.inTurn(5, ours, theirs);
            double[] both = Figure.inRows(3, SAVES, ours, theirs);
            told.accept(Figure.beside(name, both[0], "git add + git commit", both[1], 0.5));
            forcing[0] = true;
            double[] forced = Figure.inRows(3, SAVES, ours, theirs);
            told.accept(Figure.beside("the same", forced[0], "the same, forcing too (core.fsync=all)", forced[1], 0));
        }
        Figure.require(there.says("status", "--porcelain").isEmpty());
        Figure.require(there.says("fsck", "--connectivity-only").isEmpty());
    }
}
