package platekeep.client.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import platekeep.client.cache.Cache;
import platekeep.client.library.Change;
import platekeep.client.library.Hand;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.client.task.Progress;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;

/** What library tests have in common: two hands, plates, a clock that goes on a minute a version, native Git. */
final class Workshop {
    static final Hand WENNA = new Hand("Wenna Tarrow", "wenna@workshop.example");
    static final Hand ISOLDE = new Hand("Isolde Marsh", "isolde@workshop.example");

    final Path root;
    final Ticking clock = new Ticking();
    final GitLibraries libraries;

    Workshop(Path root) {
        this(root, Runnable::run);
    }

    Workshop(Path root, Executor helpers) {
        this.root = root;
        this.libraries = new GitLibraries(clock, new Cache(root.resolve("cache")), helpers);
    }

    Library create(String folder) throws LibraryException {
        return libraries.create(root.resolve(folder), "Harbour and Orchard", WENNA);
    }

    /** An id whose first digits are the number. */
    static String id(int number) {
        return String.format("%08x-7c1e-4f0e-9a53-0f6c1f1f7a10", number);
    }

    static Plate plate(int number, String title, String... themes) {
        return new Draft(id(number), title)
                .themes(List.of(themes))
                .palette(Palette.of(Map.of('b', new Colour("brick", "#A63C2B", 4))))
                .pleats(Optional.of(new Pleats(1, 5)))
                .rows(List.of(Row.of("m4k1", ".bb."), Row.of("0pz8", "bbbb")))
                .build();
    }

    static Version save(Library library, String reason, Plate... plates) throws LibraryException {
        List<Change> changes = new ArrayList<>();
        for (Plate plate : plates) {
            changes.add(new Change.PutPlate(plate));
        }
        return library.save(new Saving(changes, reason, Optional.empty(), Optional.empty()));
    }

    static void putAway(Library library, Plate plate) throws LibraryException {
        library.save(
                new Saving(List.of(new Change.PutAway(plate.id())), "Not needed", Optional.empty(), Optional.empty()));
    }

    static Plate now(Library library, Plate plate) throws LibraryException {
        return library.plate(plate.id()).orElseThrow().plate().orElseThrow();
    }

    static List<String> titles(Library library) throws LibraryException {
        return library.list(Progress.NONE).stream()
                .map(entry -> entry.fold(good -> good.read().title(), damaged -> "damaged " + damaged.path()))
                .toList();
    }

    static List<String> reasons(Library library, Plate plate) throws LibraryException {
        return library.history(plate.id()).stream()
                .map(step -> step.version().reason())
                .toList();
    }

    static boolean hasNativeGit() {
        try {
            return new ProcessBuilder("git", "--version").start().waitFor() == 0;
        } catch (IOException | InterruptedException e) {
            return false;
        }
    }

    /** Runs native Git in a folder, blind to the user's and the system's settings, and gives what it prints. */
    String git(Path folder, String... arguments) throws IOException, InterruptedException {
        Ran ran = gitRan(folder, arguments);
        if (ran.code() != 0) {
            throw new AssertionError(String.join(" ", arguments) + " failed: " + ran.out());
        }
        return ran.out();
    }

    record Ran(int code, String out) {}

    Ran gitRan(Path folder, String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("git", "-c", "safe.directory=*"));
        command.addAll(List.of(arguments));
        Path out = Files.createTempFile(root, "git", ".out");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(out.toFile());
        Map<String, String> blind = new TreeMap<>();
        blind.put("GIT_CONFIG_NOSYSTEM", "1");
        blind.put("GIT_CONFIG_GLOBAL", root.resolve("no-such-config").toString());
        blind.put("HOME", root.toString());
        blind.put("GIT_AUTHOR_NAME", "By Hand");
        blind.put("GIT_AUTHOR_EMAIL", "hand@workshop.example");
        blind.put("GIT_COMMITTER_NAME", "By Hand");
        blind.put("GIT_COMMITTER_EMAIL", "hand@workshop.example");
        blind.put("TZ", "UTC");
        builder.environment().putAll(blind);
        Process process = builder.start();
        if (!process.waitFor(60, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError("git did not end");
        }
        return new Ran(process.exitValue(), Files.readString(out, StandardCharsets.UTF_8));
    }

    /** Goes on one minute each time it is asked. */
    static final class Ticking extends Clock {
        private Instant next = Instant.parse("2026-03-02T10:00:00Z");

        @Override
        public ZoneId getZone() {
            return ZoneOffset.ofHours(1);
        }

        @Override
        public Clock withZone(ZoneId zone) {
            throw new UnsupportedOperationException();
        }

        @Override
        public synchronized Instant instant() {
            next = next.plus(Duration.ofMinutes(1));
            return next;
        }
    }
}
