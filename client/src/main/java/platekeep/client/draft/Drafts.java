package platekeep.client.draft;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import platekeep.client.library.LibraryException;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;

/**
 * Keeps drafts, a file each: the version that the draft was drawn from on the first line, the plate's text after it. A
 * file is put in place whole and synced, so that whenever the program ends the draft on disk is the last one kept. Each
 * call may touch the disk.
 */
public final class Drafts {
    private static final Logger LOG = Logger.getLogger(Drafts.class.getName());
    private static final String ENDING = ".draft";
    private static final String NO_VERSION = "-";

    private final Path folder;

    /**
     * @param folder where drafts lie; made when the first one is kept
     */
    public Drafts(Path folder) {
        this.folder = folder;
    }

    /** Keeps a draft in the place of the one kept before. */
    public synchronized void keep(Path library, Plate plate, Optional<String> seen) throws LibraryException {
        try {
            Path file = file(library, plate.id());
            Files.createDirectories(file.getParent());
            Path beside = file.resolveSibling(file.getFileName() + ".new");
            String text = seen.orElse(NO_VERSION) + "\n" + PlateText.write(plate);
            try (FileChannel channel = FileChannel.open(
                    beside,
                    StandardOpenOption.CREATE,
                    StandardOpenOption.WRITE,
                    StandardOpenOption.TRUNCATE_EXISTING)) {
                ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
                while (bytes.hasRemaining()) {
                    channel.write(bytes);
                }
                channel.force(true);
            }
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new LibraryException(
                    "The draft of \"" + plate.title()
                            + "\" could not be kept on disk: is it full? What you drew is still"
                            + " in the window; make room, then draw on or save a version.",
                    e);
        }
    }

    /** The draft of a plate. */
    public synchronized Optional<KeptDraft> of(Path library, String plateId) {
        return read(library, file(library, plateId));
    }

    /** All drafts of a library's plates, in no order; one that cannot be read is left out and named in the log. */
    public synchronized List<KeptDraft> all(Path library) {
        Path drawer = drawer(library);
        if (!Files.isDirectory(drawer)) {
            return List.of();
        }
        List<KeptDraft> drafts = new ArrayList<>();
        try (Stream<Path> files = Files.list(drawer)) {
            files.filter(file -> file.toString().endsWith(ENDING))
                    .sorted()
                    .forEach(file -> read(library, file).ifPresent(drafts::add));
        } catch (IOException e) {
            LOG.log(Level.WARNING, "drafts could not be listed", e);
        }
        return drafts;
    }

    /** Forgets a draft. */
    public synchronized void drop(Path library, String plateId) throws LibraryException {
        try {
            Files.deleteIfExists(file(library, plateId));
        } catch (IOException e) {
            throw new LibraryException(
                    "The draft could not be taken away from disk; it will be offered again at the next start.", e);
        }
    }

    private Optional<KeptDraft> read(Path library, Path file) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            String text = Files.readString(file, StandardCharsets.UTF_8);
            int end = text.indexOf('\n');
            if (end < 0) {
                return Optional.empty();
            }
            String seen = text.substring(0, end);
            byte[] plate = text.substring(end + 1).getBytes(StandardCharsets.UTF_8);
            Optional<Plate> read =
                    PlateText.read(file.getFileName().toString(), plate).value();
            if (read.isEmpty()) {
                LOG.warning("a draft does not read as a plate: " + file.getFileName());
                return Optional.empty();
            }
            return Optional.of(new KeptDraft(
                    library,
                    read.get(),
                    Optional.of(seen).filter(version -> !version.equals(NO_VERSION)),
                    Files.getLastModifiedTime(file).toInstant()));
        } catch (IOException e) {
            LOG.log(Level.WARNING, "a draft could not be read", e);
            return Optional.empty();
        }
    }

    private Path file(Path library, String plateId) {
        return drawer(library).resolve(plateId + ENDING);
    }

    /** A folder for each library, named by its place on disk. */
    private Path drawer(Path library) {
        try {
            byte[] place = library.toAbsolutePath().normalize().toString().getBytes(StandardCharsets.UTF_8);
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(place);
            return folder.resolve(HexFormat.of().formatHex(hash, 0, 8));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
