package platekeep.client.command.file;

import java.io.IOException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import platekeep.client.command.desk.Trouble;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;
import platekeep.model.text.Reading;

/**
 * A plate file somewhere on disk.
 *
 * @param name as the command names it, for sentences
 * @param path where it lies
 */
public record PlateFile(String name, Path path) {

    /** No plate is larger than this many bytes; what is larger is not read at all. */
    private static final long MOST_BYTES = 64L << 20;

    /** The plate, or trouble that lists everything wrong with the file. */
    public Plate read() throws Trouble {
        return plate(reading());
    }

    /** The plate; empty when the file holds no byte, which stands for "there was nothing". */
    public Optional<Plate> readOrNothing() throws Trouble {
        byte[] bytes = bytes();
        return bytes.length == 0 ? Optional.empty() : Optional.of(plate(PlateText.read(name, bytes)));
    }

    /** The file as the reader sees it. */
    public Reading<Plate> reading() throws Trouble {
        return PlateText.read(name, bytes());
    }

    private static Plate plate(Reading<Plate> reading) throws Trouble {
        if (reading instanceof Reading.Bad<Plate> bad) {
            throw Trouble.of(bad.problems());
        }
        return reading.value().orElseThrow();
    }

    /** All bytes of the file. */
    public byte[] bytes() throws Trouble {
        try {
            if (Files.isDirectory(path)) {
                throw new Trouble(name + " is a folder; name a plate file.");
            }
            if (Files.isRegularFile(path) && Files.size(path) > MOST_BYTES) {
                throw new Trouble(name + " is larger than any plate can be, so it was not read.");
            }
            return Files.readAllBytes(path);
        } catch (NoSuchFileException e) {
            throw new Trouble("There is no file " + name + ".");
        } catch (IOException e) {
            throw new Trouble(name + " cannot be read: see whether you may open it.", e);
        }
    }

    /** Puts new bytes into the file: all of them, or the file stays as it was. */
    public void write(byte[] bytes) throws Trouble {
        try {
            if (Files.exists(path) && !Files.isRegularFile(path)) {
                Files.write(path, bytes);
                return;
            }
            replace(Files.exists(path) ? path.toRealPath() : path, bytes);
        } catch (IOException e) {
            throw new Trouble(
                    name + " cannot be written: see whether its folder is there, is yours to write in and has room.",
                    e);
        }
    }

    private static void replace(Path target, byte[] bytes) throws IOException {
        Path fresh = target.resolveSibling(
                "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".new");
        try {
            Files.write(fresh, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
            try {
                Files.move(fresh, target, StandardCopyOption.ATOMIC_MOVE);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(fresh);
        }
    }
}
