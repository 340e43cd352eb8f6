package platekeep.client.sample;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import platekeep.client.library.Libraries;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;
import platekeep.sample.Happening;
import platekeep.sample.Happening.Side;
import platekeep.sample.Happening.Who;
import platekeep.sample.SampleStory;

/**
 * The sample library in its three folders. Made from the story, each time with the same version ids. The workshop's
 * library has a version or two that were not sent yet, and the shared copy newer ones of the partner's that were not
 * brought in yet.
 *
 * @param workshop Wenna's library, the one to look at
 * @param shared the shared copy
 * @param partner Isolde's library
 */
public record SampleLibrary(Path workshop, Path shared, Path partner) {
    /** Lies beside the folders while they are being made, so that a making that was cut short is noticed. */
    private static final String UNFINISHED = "being made";

    /** Where the sample library is, or would be, below a folder. */
    public static SampleLibrary in(Path parent) {
        return new SampleLibrary(parent.resolve("workshop"), parent.resolve("shared copy"), parent.resolve("partner"));
    }

    /** Whether it is there, whole. */
    public boolean isThere() {
        return Files.isDirectory(workshop) && !Files.exists(workshop.resolveSibling(UNFINISHED));
    }

    /** As {@link #make(Path, Libraries, Progress)}, watched by nobody. */
    public static SampleLibrary make(Path parent, Libraries libraries) throws LibraryException {
        return make(parent, libraries, Progress.NONE);
    }

    /**
     * Makes the sample library below a folder. What an earlier making that was cut short left there is taken away
     * first; anything else that lies in the way is refused with a sentence.
     */
    public static SampleLibrary make(Path parent, Libraries libraries, Progress progress) throws LibraryException {
        SampleLibrary sample = in(parent);
        Path unfinished = parent.resolve(UNFINISHED);
        try {
            Files.createDirectories(parent);
            if (Files.exists(unfinished)) {
                for (Path folder : List.of(sample.workshop, sample.shared, sample.partner)) {
                    remove(folder);
                }
            } else {
                sample.refuseWhatIsInTheWay();
                Files.createFile(unfinished);
            }
            sample.tell(libraries, progress);
            Files.delete(unfinished);
            return sample;
        } catch (IOException e) {
            throw new LibraryException(
                    "The sample library could not be made in " + parent + ". Is there room, and may you write there?",
                    e);
        }
    }

    private void refuseWhatIsInTheWay() throws LibraryException {
        for (Path folder : List.of(workshop, shared, partner)) {
            if (Files.exists(folder)) {
                throw new LibraryException(folder + " is there already. Choose another folder for the sample library.");
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
                    Files.delete(file);
                }
            }
        }
    }

    private void tell(Libraries libraries, Progress progress) throws LibraryException {
        SampleStory story = SampleStory.read();
        StoryClock clock = new StoryClock(SampleStory.BEGAN.toZonedDateTime());
        Libraries then = libraries.at(clock).syncedWhenClosed();
        List<Happening> before = story.happenings(Side.BOTH);
        try (Library yours = then.create(workshop, SampleStory.NAME, Teller.hand(Who.WENNA))) {
            Teller teller = new Teller(yours, story, clock);
            for (int i = 0; i < before.size(); i++) {
                progress.at(i, before.size(), "making the sample library");
                teller.tell(before.get(i));
            }
            yours.introduce(Teller.hand(Who.WENNA));
            yours.share(shared);
            yours.send(Progress.NONE);
            try (Library partners = then.copyFrom(shared, partner, Teller.hand(Who.ISOLDE))) {
                new Teller(partners, story, clock).tell(story.happenings(Side.PARTNER));
                partners.send(Progress.NONE);
            }
            teller.tell(story.happenings(Side.YOURS));
        }
    }
}
