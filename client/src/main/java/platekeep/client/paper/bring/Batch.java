package platekeep.client.paper.bring;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.task.Progress;

/**
 * What became of the files that she chose.
 *
 * @param ready in the order of their names
 * @param leftOut a sentence each on those that are left out
 */
record Batch(List<Prepared> ready, List<String> leftOut) {
    /** So many bytes are held in memory while one version is made. */
    private static final long MOST_BYTES = 400L << 20;

    Batch {
        ready = List.copyOf(ready);
        leftOut = List.copyOf(leftOut);
    }

    /** Looks all files through; in the background. One that is broken stops nothing. */
    static Batch read(Library library, List<Path> chosen, Progress progress) throws LibraryException {
        List<Path> files = ScanFiles.of(chosen);
        List<Picture> there = library.pictures();
        List<Prepared> ready = new ArrayList<>();
        List<String> leftOut = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < files.size(); i++) {
            if (progress.cancelled()) {
                throw new CancellationException();
            }
            progress.at(i, files.size(), "Looking the pictures through");
            try {
                Prepared one = Prepared.read(files.get(i));
                if (one.isAmong(there)) {
                    leftOut.add("\"" + ScanFiles.name(one.file()) + "\" is in this library already.");
                } else if (!seen.add(one.digits().get(0))) {
                    leftOut.add("\"" + ScanFiles.name(one.file()) + "\" is there twice.");
                } else {
                    ready.add(one);
                }
            } catch (LibraryException e) {
                leftOut.add(e.getMessage());
            }
        }
        return new Batch(ready, leftOut);
    }

    long bytes(BringView.Size size) {
        return ready.stream().mapToLong(one -> one.length(size)).sum();
    }

    int large() {
        return (int) ready.stream().filter(one -> one.smaller().isPresent()).count();
    }

    void refuseTooMuch(BringView.Size size) throws LibraryException {
        if (bytes(size) > MOST_BYTES) {
            throw new LibraryException("These pictures are " + (bytes(size) >> 20) + " MB together, and at most "
                    + (MOST_BYTES >> 20)
                    + " MB are brought in at one go. Let them be made smaller, or bring in fewer at"
                    + " a time; nothing was changed.");
        }
    }

    /** What was left out and why, in one text; empty when nothing was. */
    String complaint() {
        if (leftOut.isEmpty()) {
            return "";
        }
        return (leftOut.size() == 1 ? "One file was left out: " : leftOut.size() + " files were left out: ")
                + String.join(" ", leftOut);
    }
}
