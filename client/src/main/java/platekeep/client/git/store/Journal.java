package platekeep.client.git.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import java.util.stream.Stream;
import org.eclipse.jgit.lib.ObjectId;

/**
 * What is being written right now, noted beforehand. A note that is found by the next writer (who holds the lock, so
 * nobody is writing) was left by a program that was killed: then it is known which version's files have to be finished
 * and that lock files as old as the note, or younger, are the dead program's.
 */
final class Journal {
    private static final long SETTLED_MILLIS = 2_000;

    private final Path gitFolder;
    private final Path note;

    Journal(Path gitFolder) {
        this.gitFolder = gitFolder;
        this.note = gitFolder.resolve("platekeep.saving");
    }

    /**
     * What a note says.
     *
     * @param before the newest version before; empty when there was none
     * @param after the version being made; empty where only names of versions are written
     */
    record Note(Optional<ObjectId> before, Optional<ObjectId> after) {
        private String text() {
            return word(before) + " " + word(after) + "\n";
        }

        private static String word(Optional<ObjectId> id) {
            return id.map(ObjectId::name).orElse("none");
        }

        private static Note parse(String text) {
            String[] words = text.strip().split(" ");
            return words.length == 2
                    ? new Note(id(words[0]), id(words[1]))
                    : new Note(Optional.empty(), Optional.empty());
        }

        private static Optional<ObjectId> id(String word) {
            return ObjectId.isId(word) ? Optional.of(ObjectId.fromString(word)) : Optional.empty();
        }
    }

    /** Lets the note be written with other files. */
    void into(Together together, Note what) {
        together.put(note, what.text().getBytes(StandardCharsets.US_ASCII), gitFolder.resolve("platekeep.noting"));
    }

    Optional<Note> left() throws IOException {
        return Files.exists(note)
                ? Optional.of(Note.parse(Files.readString(note, StandardCharsets.US_ASCII)))
                : Optional.empty();
    }

    void clear() throws IOException {
        Files.deleteIfExists(note);
    }

    /**
     * Removes the lock files that the writer of the note left behind: those not older than the note. One that is only
     * seconds old may be another program's that runs now, and stays.
     */
    void removeDeadLocks() throws IOException {
        FileTime noted = Files.getLastModifiedTime(note);
        removeDeadLocks(Files.list(gitFolder), noted);
        removeDeadLocks(Files.walk(gitFolder.resolve("refs")), noted);
    }

    private static void removeDeadLocks(Stream<Path> files, FileTime noted) throws IOException {
        long now = System.currentTimeMillis();
        try (files) {
            for (Path file : (Iterable<Path>) files.filter(Journal::isLock)::iterator) {
                FileTime made = Files.getLastModifiedTime(file);
                if (made.compareTo(noted) >= 0 && now - made.toMillis() > SETTLED_MILLIS) {
                    Files.deleteIfExists(file);
                }
            }
        }
    }

    private static boolean isLock(Path file) {
        String name = file.getFileName().toString();
        return name.endsWith(".lock") && !name.equals("platekeep.lock");
    }
}
