package platekeep.client.series;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import platekeep.client.library.LibraryException;
import platekeep.model.plate.Series;
import platekeep.model.text.SeriesText;

/**
 * Keeps changed series that are in no version yet, two files each: as it was when she began, and as it is now. Each call
 * may touch the disk.
 */
public final class SeriesDrafts {
    private static final Logger LOG = Logger.getLogger(SeriesDrafts.class.getName());

    private final Path folder;

    /**
     * @param folder where they lie; made when the first one is kept
     */
    public SeriesDrafts(Path folder) {
        this.folder = folder;
    }

    /** As it was when she began, and as she has it. */
    record Kept(Series base, Series now) {}

    synchronized void keep(Path library, Kept kept) throws LibraryException {
        try {
            Files.createDirectories(folder);
            write(file(library, kept.now().id(), "base"), kept.base());
            write(file(library, kept.now().id(), "now"), kept.now());
        } catch (IOException e) {
            throw new LibraryException(
                    "What you changed in \"" + kept.now().title()
                            + "\" could not be kept on disk: is it full? It is still in"
                            + " the window; make room, then save a version.",
                    e);
        }
    }

    private static void write(Path file, Series series) throws IOException {
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        Files.write(beside, SeriesText.bytes(series));
        Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    synchronized Optional<Kept> of(Path library, String id) {
        Optional<Series> base = read(file(library, id, "base"));
        Optional<Series> now = read(file(library, id, "now"));
        return base.flatMap(b -> now.map(n -> new Kept(b, n)));
    }

    private static Optional<Series> read(Path file) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            return SeriesText.read(String.valueOf(file.getFileName()), Files.readAllBytes(file))
                    .value();
        } catch (IOException e) {
            LOG.log(Level.WARNING, "a changed series could not be read", e);
            return Optional.empty();
        }
    }

    synchronized void drop(Path library, String id) throws LibraryException {
        try {
            Files.deleteIfExists(file(library, id, "now"));
            Files.deleteIfExists(file(library, id, "base"));
        } catch (IOException e) {
            throw new LibraryException("The changed series could not be taken away from disk.", e);
        }
    }

    private Path file(Path library, String id, String what) {
        try {
            byte[] place = library.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8);
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(place);
            return folder.resolve(HexFormat.of().formatHex(hash, 0, 8) + "-" + id + "." + what);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
