package platekeep.client.git.plates;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectReader;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.Texts;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.task.InParts;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;
import platekeep.model.text.Problem;
import platekeep.model.text.Reading;

/**
 * Reads plate files. The list that was read last is held, so that reading it again after one plate was saved reads one
 * plate; of what else is read (old versions as a rule) the last few megabytes are remembered.
 */
public final class Entries {
    /** Texts of this many bytes altogether are remembered as plates besides the list. */
    private static final long MOST_REMEMBERED = 4L << 20;

    /** Old texts that are read one after the other: each is told by what it differs in from one read just before. */
    private static final int LONG_PART = 256;

    private final Store store;
    private final Executor helpers;
    private final Map<Key, Remembered> remembered = new LinkedHashMap<>(64, 0.75f, true);
    private final Map<ObjectId, String> ids = new ConcurrentHashMap<>();
    private volatile Map<Key, Entry> listed = Map.of();
    private long rememberedBytes;

    private record Key(String path, ObjectId content) {}

    private record Remembered(Entry entry, int bytes) {}

    /**
     * @param helpers where parts of a long list may be read besides the calling thread
     */
    public Entries(Store store, Executor helpers) {
        this.store = store;
        this.helpers = helpers;
    }

    /** Does something for many files, on helpers too. */
    public InParts inParts() {
        return InParts.working(helpers);
    }

    /** Reads one file. */
    public Entry read(String path, ObjectId content) throws IOException {
        Key key = new Key(path, content);
        Optional<Entry> known = known(key);
        if (known.isPresent()) {
            return known.get();
        }
        return remembered(key, store.bytes(path, content));
    }

    /** The same for a content that is not the newest, as a rule: the folder is not looked at. */
    public Entry readStored(ObjectReader reader, String path, ObjectId content) throws IOException {
        Key key = new Key(path, content);
        Optional<Entry> known = known(key);
        return known.isPresent() ? known.get() : remembered(key, Store.bytes(reader, content));
    }

    private Entry remembered(Key key, byte[] bytes) {
        Entry entry = noted(key.path(), key.content(), ByteBuffer.wrap(bytes));
        remember(key, new Remembered(entry, bytes.length));
        return entry;
    }

    private Optional<Entry> known(Key key) {
        Entry inList = listed.get(key);
        if (inList != null) {
            return Optional.of(inList);
        }
        synchronized (remembered) {
            return Optional.ofNullable(remembered.get(key)).map(Remembered::entry);
        }
    }

    private Entry noted(String path, ObjectId content, ByteBuffer bytes) {
        Entry entry = parse(path, content, bytes);
        noteId(content, entry);
        return entry;
    }

    private void noteId(ObjectId content, Entry entry) {
        entry.plate().ifPresent(plate -> ids.put(content, plate.id()));
    }

    /** What bytes that lie at a path say. */
    public static Entry parse(String path, ObjectId content, byte[] bytes) {
        return parse(path, content, ByteBuffer.wrap(bytes));
    }

    private static Entry parse(String path, ObjectId content, ByteBuffer bytes) {
        Reading<Plate> reading = PlateText.read(path, bytes);
        return reading.fold(
                good -> new Entry.Good(path, content.name(), good.read()),
                bad -> new Entry.Damaged(path, content.name(), bad.problems()));
    }

    private void remember(Key key, Remembered value) {
        synchronized (remembered) {
            if (remembered.put(key, value) == null) {
                rememberedBytes += value.bytes();
            }
            var eldest = remembered.entrySet().iterator();
            while (rememberedBytes > MOST_REMEMBERED && remembered.size() > 1) {
                rememberedBytes -= eldest.next().getValue().bytes();
                eldest.remove();
            }
        }
    }

    /** Reads one plate of a version as it is to be shown: a double as damaged. */
    public Entry of(Shelf shelf, String path) throws IOException {
        return shown(shelf, path, read(path, shelf.files().files().get(path).content()));
    }

    private static Entry shown(Shelf shelf, String path, Entry entry) {
        Optional<String> first = shelf.doubleOf(path);
        return first.isPresent() ? doubled(entry, first.get()) : entry;
    }

    private static Entry doubled(Entry entry, String first) {
        Problem problem = new Problem(
                entry.path(),
                1,
                1,
                Optional.empty(),
                Optional.empty(),
                "doubled-plate",
                "this file has the same id as " + first
                        + ". Take one of the two out, or give this one an id of its own");
        return entry.fold(good -> new Entry.Damaged(good.path(), good.content(), List.of(problem)), damaged -> damaged);
    }

    /** The id of a plate that was read from this content before; empty where none was. */
    public Optional<String> knownId(ObjectId content) {
        return Optional.ofNullable(ids.get(content));
    }

    /** Sorts a version's files when all of them have been read. */
    public interface Sorting {
        Shelf shelf() throws IOException;
    }

    /**
     * All plates of a version as they are to be shown, in order of path.
     *
     * @param sorting is asked when all have been read, so that their ids are known
     * @param soFar hears a few times what has been read until then, from the first path on
     * @throws CancellationException when the progress says so
     */
    public List<Entry> all(TreeFiles files, Sorting sorting, Progress progress, Consumer<List<Entry>> soFar)
            throws IOException {
        List<Map.Entry<String, FileAt>> plates = plates(files).toList();
        Entry[] read = new Entry[plates.size()];
        for (int from = 0, step = Library.SCREENFUL; from < read.length; from += step, step *= 8) {
            int begin = from;
            int end = Math.min(read.length, from + step);
            inParts()
                    .each(
                            end - begin,
                            done -> progress.at(begin + done, read.length, "reading plates"),
                            (a, b) -> read(plates, read, begin + a, begin + b, progress));
            if (end < read.length) {
                soFar.accept(List.of(Arrays.copyOf(read, end)));
            }
        }
        hold(plates, read);
        Shelf shelf = sorting.shelf();
        List<Entry> shown = new ArrayList<>(read.length);
        for (Entry entry : read) {
            shown.add(shown(shelf, entry.path(), entry));
        }
        return shown;
    }

    private static Stream<Map.Entry<String, FileAt>> plates(TreeFiles files) {
        return files.files().entrySet().stream()
                .filter(file ->
                        PlateFiles.isPlate(file.getKey()) && file.getValue().isPlain());
    }

    /** The first plates of a version in order of path; doubles are not sorted out. They are remembered for the whole list. */
    public List<Entry> first(TreeFiles files, int most) throws IOException {
        List<Map.Entry<String, FileAt>> plates = plates(files).limit(most).toList();
        Entry[] read = new Entry[plates.size()];
        inParts().each(read.length, done -> {}, (from, to) -> {
            for (int i = from; i < to; i++) {
                read[i] = read(plates.get(i).getKey(), plates.get(i).getValue().content());
            }
        });
        return List.of(read);
    }

    private void read(List<Map.Entry<String, FileAt>> plates, Entry[] read, int from, int to, Progress progress)
            throws IOException {
        if (progress.cancelled()) {
            throw new CancellationException();
        }
        try (Texts texts = store.texts()) {
            for (int i = from; i < to; i++) {
                String path = plates.get(i).getKey();
                ObjectId content = plates.get(i).getValue().content();
                Optional<Entry> known = known(new Key(path, content));
                read[i] = known.isPresent() ? known.get() : parse(path, content, texts.read(path, content));
            }
        }
    }

    /** What a list names by its numbers. */
    @FunctionalInterface
    public interface Named<T> {
        T at(int index);
    }

    /** Hears what was read, on several threads at a time. */
    @FunctionalInterface
    public interface Heard {
        void read(int index, Entry entry);
    }

    /**
     * Reads many files of which those that are not in the list are not remembered, so that what is looked at often stays
     * so; in the order in which they are stored.
     *
     * @throws CancellationException when the progress says so
     */
    public void readOnce(int count, Named<String> paths, Named<ObjectId> contents, Progress progress, Heard heard)
            throws IOException {
        int[] order = store.readingOrder(count, contents::at);
        inParts().by(LONG_PART).each(count, done -> progress.at(done, count, "reading versions"), (from, to) -> {
            if (progress.cancelled()) {
                throw new CancellationException();
            }
            try (Texts texts = store.texts()) {
                for (int n = from; n < to; n++) {
                    int i = order[n];
                    ObjectId content = contents.at(i);
                    Entry inList = listed.get(new Key(paths.at(i), content));
                    heard.read(i, inList == null ? readOnce(texts, paths.at(i), content) : inList);
                }
            }
        });
    }

    /** What is not in the list that was read is no longer in the folder, as a rule. */
    private Entry readOnce(Texts texts, String path, ObjectId content) throws IOException {
        return parse(path, content, listed.isEmpty() ? texts.read(path, content) : texts.readStored(content));
    }

    private void hold(List<Map.Entry<String, FileAt>> plates, Entry[] read) {
        Map<Key, Entry> all = new HashMap<>(2 * read.length);
        for (int i = 0; i < read.length; i++) {
            ObjectId content = plates.get(i).getValue().content();
            all.put(new Key(plates.get(i).getKey(), content), read[i]);
            noteId(content, read[i]);
        }
        listed = all;
    }
}
