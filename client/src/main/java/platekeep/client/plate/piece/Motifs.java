package platekeep.client.plate.piece;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import platekeep.client.library.LibraryException;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/**
 * The motifs that were cut out and kept, to be put in whatever plate is open: small plates, a file each, hers alone and in
 * no library. Each call touches the disk.
 */
public final class Motifs {
    private static final Logger LOG = Logger.getLogger(Motifs.class.getName());
    private static final String ENDING = ".json";

    private final Path folder;

    /**
     * @param folder where they lie; made when the first one is kept
     */
    public Motifs(Path folder) {
        this.folder = folder;
    }

    /** Keeps a motif. */
    public synchronized void keep(Plate motif) throws LibraryException {
        try {
            Files.createDirectories(folder);
            Path beside = folder.resolve(motif.id() + ".new");
            Files.writeString(beside, PlateText.write(motif), StandardCharsets.UTF_8);
            Files.move(beside, file(motif), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new LibraryException(
                    "The motif \"" + motif.title()
                            + "\" could not be kept on disk: is it full? The plate is untouched.",
                    e);
        }
    }

    /** All motifs by title; one that cannot be read is left out and named in the log. */
    public synchronized List<Plate> all() throws LibraryException {
        List<Plate> motifs = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return motifs;
        }
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(f -> f.toString().endsWith(ENDING)).toList()) {
                PlateText.read(file.getFileName().toString(), Files.readAllBytes(file))
                        .value()
                        .ifPresentOrElse(
                                motifs::add, () -> LOG.log(Level.WARNING, "no motif: {0}", file.getFileName()));
            }
        } catch (IOException e) {
            throw new LibraryException("The motifs could not be read from disk. Nothing was changed; try again.", e);
        }
        motifs.sort(Comparator.comparing((Plate m) -> m.title().toLowerCase(Locale.ROOT))
                .thenComparing(Plate::id));
        return motifs;
    }

    /** Forgets a motif; plates that it was put in are untouched. */
    public synchronized void forget(Plate motif) throws LibraryException {
        try {
            Files.deleteIfExists(file(motif));
        } catch (IOException e) {
            throw new LibraryException("The motif \"" + motif.title() + "\" could not be taken away from disk.", e);
        }
    }

    private Path file(Plate motif) {
        return folder.resolve(motif.id() + ENDING);
    }
}
