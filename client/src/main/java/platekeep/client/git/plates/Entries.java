package platekeep.client.git.plates;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentMap;
import java.util.concurrent.Executor;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.git.store.FileAt;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.TreeFiles;
import platekeep.client.library.Entry;
import platekeep.client.task.Progress;
import platekeep.model.plate.Plate;
import platekeep.model.text.PlateText;
import platekeep.model.text.Problem;
import platekeep.model.text.Reading;

/**
 * Reads plate files. What was read is remembered by place and content for a while, so that showing a list again after
 * one plate was saved reads one plate.
 */
public final class Entries {
    /** Texts of this many bytes altogether are remembered as plates. */
    private static final long MOST_REMEMBERED = 96L << 20;

    private final Store store;
    private final Executor helpers;
    private final Map<Key, Remembered> remembered = new LinkedHashMap<>(64, 0.75f, true);
    private final Map<ObjectId, String> ids = new ConcurrentHashMap<>();
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

    /** Reads one file. */
    public Entry read(String path, ObjectId content) throws IOException {
        Key key = new Key(path, content);
        synchronized (remembered) {
            Remembered known = remembered.get(key);
            if (known != null) {
                return known.entry();
            }
        }
        byte[] bytes = store.bytes(content);
        Entry entry = parse(path, content, bytes);
        entry.plate().ifPresent(plate -> ids.put(content.copy(), plate.id()));
        remember(key, new Remembered(entry, bytes.length));
        return entry;
    }

    /** What bytes that lie at a path say. */
    public static Entry parse(String path, ObjectId content, byte[] bytes) {
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
            while (rememberedBytes > MOST_REMEMBERED) {
                rememberedBytes -= eldest.next().getValue().bytes();
                eldest.remove();
            }
        }
    }

    /** Reads one plate of a version as it is to be shown: a double as damaged. */
    public Entry of(Shelf shelf, String path) throws IOException {
        Entry entry = read(path, shelf.files().files().get(path).content());
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

    /**
     * Reads the plate files among some files, so that their entries and ids are known.
     *
     * @throws CancellationException when the progress says so
     */
    public void readAhead(TreeFiles files, Progress progress) throws IOException {
        List<Map.Entry<String, FileAt>> plates = files.files().entrySet().stream()
                .filter(file ->
                        PlateFiles.isPlate(file.getKey()) && file.getValue().isPlain())
                .toList();
        ConcurrentMap<Integer, IOException> failures = new ConcurrentHashMap<>();
        new InParts(helpers).each(plates.size(), done -> progress.at(done, plates.size(), "reading plates"), i -> {
            if (progress.cancelled()) {
                throw new CancellationException();
            }
            try {
                read(plates.get(i).getKey(), plates.get(i).getValue().content());
            } catch (IOException e) {
                failures.put(i, e);
            }
        });
        if (!failures.isEmpty()) {
            throw failures.values().iterator().next();
        }
    }

    /** What a list names by its numbers. */
    @FunctionalInterface
    public interface Named<T> {
        T at(int index);
    }

    /** Hears what was read, one at a time. */
    @FunctionalInterface
    public interface Heard {
        void read(int index, Entry entry);
    }

    /**
     * Reads many files that are not remembered, so that what is looked at often stays so.
     *
     * @throws CancellationException when the progress says so
     */
    public void readOnce(int count, Named<String> paths, Named<ObjectId> contents, Progress progress, Heard heard)
            throws IOException {
        ConcurrentMap<Integer, IOException> failures = new ConcurrentHashMap<>();
        Object turn = new Object();
        new InParts(helpers).each(count, done -> progress.at(done, count, "reading versions"), i -> {
            if (progress.cancelled()) {
                throw new CancellationException();
            }
            try {
                Entry entry = parse(paths.at(i), contents.at(i), store.bytes(contents.at(i)));
                synchronized (turn) {
                    heard.read(i, entry);
                }
            } catch (IOException e) {
                failures.put(i, e);
            }
        });
        if (!failures.isEmpty()) {
            throw failures.values().iterator().next();
        }
    }

    /** All plates of a version as they are to be shown, in order of path. */
    public List<Entry> all(Shelf shelf) throws IOException {
        List<Entry> entries = new ArrayList<>();
        for (String path : shelf.plateFiles()) {
            entries.add(of(shelf, path));
        }
        return entries;
    }
}
