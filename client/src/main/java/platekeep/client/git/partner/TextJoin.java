package platekeep.client.git.partner;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.plates.Contents;
import platekeep.client.git.plates.PlateIdScan;
import platekeep.client.library.LibraryException;
import platekeep.model.join.Hands;
import platekeep.model.join.Join;
import platekeep.model.join.JoinTrouble;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Series;
import platekeep.model.text.LibraryFacts;
import platekeep.model.text.LibraryText;
import platekeep.model.text.PlateText;
import platekeep.model.text.Problem;
import platekeep.model.text.Reading;
import platekeep.model.text.SeriesText;

/** Joins two texts that both sides changed: reads them as what they are, has them joined, writes the result. */
final class TextJoin {
    private static final String NEWER = "newer-format";

    private final Contents contents;
    private final LastHands hands;
    private final Map<ObjectId, Optional<String>> ids = new HashMap<>();

    /** Who changed a plate last on each side. */
    interface LastHands {
        Optional<String> mine(String plateId) throws IOException;

        Optional<String> theirs(String plateId) throws IOException;

        /** For joins of which nobody has to be told who was who. */
        LastHands UNKNOWN = new LastHands() {
            @Override
            public Optional<String> mine(String plateId) {
                return Optional.empty();
            }

            @Override
            public Optional<String> theirs(String plateId) {
                return Optional.empty();
            }
        };
    }

    TextJoin(Contents contents, LastHands hands) {
        this.contents = contents;
        this.hands = hands;
    }

    /** The id that a plate's or a series' text says it has. */
    Optional<String> idOf(ObjectId content) throws IOException {
        Optional<String> known = ids.get(content);
        if (known == null) {
            known = PlateIdScan.of(contents.bytes(content));
            ids.put(content.copy(), known);
        }
        return known;
    }

    /** The joined plate's text; empty when one side's cannot be read as a plate. */
    Optional<byte[]> plate(String id, String path, TreeJoin.Three<Optional<ObjectId>> of, Fates fates)
            throws IOException, LibraryException {
        Optional<Plate> mine = readPlate(path, of.mine());
        Optional<Plate> theirs = readPlate(path, of.theirs());
        if (mine.isEmpty() || theirs.isEmpty()) {
            return Optional.empty();
        }
        Plate joined = joined(
                path,
                readPlate(path, of.base()),
                mine.get(),
                theirs.get(),
                new Hands(hands.mine(id), hands.theirs(id)));
        if (joined.hasClashes()) {
            fates.clashing(id);
        } else {
            fates.joined(id);
        }
        return Optional.of(PlateText.bytes(joined));
    }

    private static Plate joined(String path, Optional<Plate> base, Plate mine, Plate theirs, Hands hands)
            throws LibraryException {
        try {
            return Join.of(base, mine, theirs, hands).plate();
        } catch (JoinTrouble e) {
            throw Refusals.notJoined(path, e);
        }
    }

    private Optional<Plate> readPlate(String path, Optional<ObjectId> content) throws IOException, LibraryException {
        if (content.isEmpty()) {
            return Optional.empty();
        }
        Reading<Plate> reading = PlateText.read(path, contents.bytes(content.get()));
        List<Problem> problems = reading.fold(good -> List.of(), bad -> bad.problems());
        if (problems.stream().anyMatch(problem -> problem.rule().equals(NEWER))) {
            throw Refusals.newer(path);
        }
        return reading.value();
    }

    /** The joined series' text; empty when one side's cannot be read. */
    Optional<byte[]> series(String path, TreeJoin.Three<Optional<ObjectId>> of) throws IOException {
        Optional<Series> mine = readSeries(path, of.mine());
        Optional<Series> theirs = readSeries(path, of.theirs());
        if (mine.isEmpty() || theirs.isEmpty()) {
            return Optional.empty();
        }
        Series joined = SeriesJoin.join(readSeries(path, of.base()), mine.get(), theirs.get());
        return Optional.of(SeriesText.bytes(joined));
    }

    private Optional<Series> readSeries(String path, Optional<ObjectId> content) throws IOException {
        return content.isEmpty()
                ? Optional.empty()
                : SeriesText.read(path, contents.bytes(content.get())).value();
    }

    /** What the library says about itself, joined; empty when one side's text is gone or cannot be read. */
    Optional<byte[]> facts(TreeJoin.Three<Optional<ObjectId>> of) throws IOException {
        Optional<LibraryFacts> mine = readFacts(of.mine());
        Optional<LibraryFacts> theirs = readFacts(of.theirs());
        if (mine.isEmpty() || theirs.isEmpty()) {
            return Optional.empty();
        }
        LibraryFacts joined = FactsJoin.join(readFacts(of.base()), mine.get(), theirs.get());
        return Optional.of(LibraryText.bytes(joined));
    }

    private Optional<LibraryFacts> readFacts(Optional<ObjectId> content) throws IOException {
        return content.isEmpty()
                ? Optional.empty()
                : LibraryText.read("library.json", contents.bytes(content.get()))
                        .value();
    }

    /** Whether of two texts the first is to be the plate: the one that can be read, else the one with the lesser id. */
    boolean better(ObjectId one, ObjectId other) throws IOException {
        boolean oneReads = PlateText.read("", contents.bytes(one)).value().isPresent();
        boolean otherReads = PlateText.read("", contents.bytes(other)).value().isPresent();
        return oneReads == otherReads ? one.compareTo(other) < 0 : oneReads;
    }
}
