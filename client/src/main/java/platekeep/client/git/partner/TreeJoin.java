package platekeep.client.git.partner;

import java.io.IOException;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.plates.Contents;
import platekeep.client.git.plates.PictureFiles;
import platekeep.client.git.plates.PlaceTable;
import platekeep.client.git.plates.PlateFiles;
import platekeep.client.git.plates.Shelf;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.library.LibraryException;

/**
 * Joins two libraries, file by file, over the files that both came from. Whichever side is which, the same files come
 * out, byte for byte, so two partners who both join have one library afterwards.
 *
 * <p>Plates and series are followed by their ids, wherever their files lie, and joined as what they are. Any other
 * file is taken as it is where one side changed it; where both did, both stay, one under a name with digits of its
 * content. What one side put away and the other changed stays, as changed. Nothing is written here: the result's new
 * texts are thought of in {@link Contents}.
 */
final class TreeJoin {
    private final Contents contents;
    private final TextJoin texts;

    TreeJoin(Contents contents, TextJoin texts) {
        this.contents = contents;
        this.texts = texts;
    }

    /** The three versions that a join is about, or three states of one thing in them. */
    record Three<T>(T base, T mine, T theirs) {}

    /** The joined files and what became of the plates. */
    record Joined(TreeFiles files, Fates fates) {}

    Joined join(Three<TreeFiles> trees) throws IOException, LibraryException {
        Run run = new Run(new Three<>(sort(trees.base()), sort(trees.mine()), sort(trees.theirs())));
        return new Joined(new TreeFiles(run.files()), run.fates);
    }

    private Sorted sort(TreeFiles files) throws IOException, LibraryException {
        Refusals.refuseUnplain(files);
        return Sorted.of(
                Shelf.of(files, (path, content) -> texts.idOf(content)), (path, content) -> texts.idOf(content));
    }

    /** One join under way. */
    private final class Run {
        private final Three<Sorted> sides;
        private final PlaceTable places = new PlaceTable();
        private final Fates fates = new Fates();

        Run(Three<Sorted> sides) {
            this.sides = sides;
        }

        SortedMap<String, FileAt> files() throws IOException, LibraryException {
            for (String id : ids(
                    sides.base().plates(), sides.mine().plates(), sides.theirs().plates())) {
                named(id, each(id, Sorted::plates), true);
            }
            for (String id : ids(
                    sides.base().series(), sides.mine().series(), sides.theirs().series())) {
                named(id, each(id, Sorted::series), false);
            }
            for (String path : ids(
                    sides.base().others(), sides.mine().others(), sides.theirs().others())) {
                other(path, each(path, Sorted::others));
            }
            return places.placed();
        }

        private Three<Optional<Sorted.Placed>> each(String key, Function<Sorted, Map<String, Sorted.Placed>> kind) {
            return new Three<>(
                    Optional.ofNullable(kind.apply(sides.base()).get(key)),
                    Optional.ofNullable(kind.apply(sides.mine()).get(key)),
                    Optional.ofNullable(kind.apply(sides.theirs()).get(key)));
        }

        /** A plate or a series. */
        private void named(String id, Three<Optional<Sorted.Placed>> of, boolean plate)
                throws IOException, LibraryException {
            Three<Optional<FileAt>> file = map(of, Sorted.Placed::file);
            Optional<Optional<FileAt>> clear = Settle.settled(file.base(), file.mine(), file.theirs());
            if (clear.isPresent()) {
                clear.get().ifPresent(stands -> places.put(path(of), id, stands));
                if (plate && !clear.get().equals(file.mine())) {
                    fates.tookOver(id);
                }
            } else if (file.mine().isEmpty() || file.theirs().isEmpty()) {
                places.put(path(of), id, file.mine().or(file::theirs).orElseThrow());
                if (plate) {
                    fates.kept(id);
                }
            } else {
                bothChanged(id, of, plate);
            }
        }

        private void bothChanged(String id, Three<Optional<Sorted.Placed>> of, boolean plate)
                throws IOException, LibraryException {
            Three<Optional<ObjectId>> content = map(of, placed -> placed.file().content());
            Optional<byte[]> joined =
                    plate ? texts.plate(id, path(of), content, fates) : texts.series(path(of), content);
            if (joined.isPresent()) {
                places.put(path(of), id, contents.think(joined.get()));
            } else {
                bothStay(id, of);
            }
        }

        /** One side's text cannot be read: the readable one stays the plate, the other stays beside it. */
        private void bothStay(String id, Three<Optional<Sorted.Placed>> of) throws IOException {
            FileAt mine = of.mine().orElseThrow().file();
            FileAt theirs = of.theirs().orElseThrow().file();
            boolean mineFirst = texts.better(mine.content(), theirs.content());
            places.put(path(of), id, mineFirst ? mine : theirs);
            places.put(path(of), mineFirst ? theirs : mine);
        }

        private void other(String path, Three<Optional<Sorted.Placed>> of) throws IOException {
            Three<Optional<FileAt>> file = map(of, Sorted.Placed::file);
            Optional<Optional<FileAt>> clear = Settle.settled(file.base(), file.mine(), file.theirs());
            if (clear.isPresent()) {
                clear.get().or(() -> ofKept(path, file)).ifPresent(stands -> places.put(path, stands));
            } else if (path.equals(PlateFiles.FACTS)) {
                facts(path, file);
            } else {
                file.mine().ifPresent(stands -> places.put(path, stands));
                file.theirs().ifPresent(stands -> places.put(path, stands));
            }
        }

        /** A picture that went with its plate stays where the plate stays. */
        private Optional<FileAt> ofKept(String path, Three<Optional<FileAt>> file) {
            Optional<FileAt> picture = file.mine().or(file::theirs);
            return picture.filter(
                    stands -> PictureFiles.at(path, stands.content().name())
                            .filter(of -> fates.kept().contains(of.plateId()))
                            .isPresent());
        }

        private void facts(String path, Three<Optional<FileAt>> file) throws IOException {
            Optional<byte[]> joined = texts.facts(map(file, FileAt::content));
            if (joined.isPresent()) {
                places.put(path, contents.think(joined.get()));
            } else {
                file.mine().ifPresent(stands -> places.put(path, stands));
                file.theirs().ifPresent(stands -> places.put(path, stands));
            }
        }

        /** Where a file that somebody may have moved belongs; moved by both, the place that sorts first. */
        private String path(Three<Optional<Sorted.Placed>> of) {
            Three<Optional<String>> path = map(of, Sorted.Placed::path);
            if (path.mine().isEmpty() || path.theirs().isEmpty()) {
                return path.mine().or(path::theirs).orElseThrow();
            }
            return Settle.one(path.base(), path.mine().get(), path.theirs().get());
        }
    }

    private static <A, B> Three<Optional<B>> map(Three<Optional<A>> of, Function<A, B> to) {
        return new Three<>(of.base().map(to), of.mine().map(to), of.theirs().map(to));
    }

    private static TreeSet<String> ids(
            Map<String, Sorted.Placed> base, Map<String, Sorted.Placed> mine, Map<String, Sorted.Placed> theirs) {
        TreeSet<String> all = new TreeSet<>(base.keySet());
        all.addAll(mine.keySet());
        all.addAll(theirs.keySet());
        return all;
    }
}
