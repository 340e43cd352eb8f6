package platekeep.client.git.store;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.Repository;

/**
 * New objects, held in memory until all of a version are written together. Each becomes a file of its own ("loose") in
 * the form that gitformat-loose describes: a head of kind, space, length and zero byte, then the content, compressed
 * quickly as native Git does by default, that can only be read.
 *
 * <p>No object gets its name before its bytes are on disk: one that has its name is taken for whole by everybody, also by
 * who would else write it anew.
 */
final class NewObjects extends ObjectInserter.Filter {
    /** Git's own cleaning up knows names that begin so as left behind. */
    private static final String TEMPORARY = "tmp_obj_platekeep_";

    private final Repository repository;
    private final ObjectInserter large;
    private final Disk disk;
    private final Path folder;
    private final Map<ObjectId, byte[]> held = new LinkedHashMap<>();

    /** Files and folders that have to be on disk, too, before anything refers to what was inserted. */
    private final List<Path> others = new ArrayList<>();

    private long bytes;

    NewObjects(Repository repository, Disk disk) {
        this.repository = repository;
        this.large = repository.newObjectInserter();
        this.disk = disk;
        this.folder = repository.getDirectory().toPath().resolve(Constants.OBJECTS);
    }

    @Override
    protected ObjectInserter delegate() {
        return large;
    }

    @Override
    public ObjectId insert(int type, byte[] data) throws IOException {
        return insert(type, data, 0, data.length);
    }

    @Override
    public ObjectId insert(int type, byte[] data, int offset, int length) throws IOException {
        ObjectId id = idFor(type, data, offset, length);
        if (held.containsKey(id)) {
            return id;
        }
        if (repository.getObjectDatabase().has(id)) {
            alsoForced(id);
            return id;
        }
        byte[] packed = packed(type, data, offset, length);
        held.put(id, packed);
        bytes += packed.length;
        if (bytes > Store.LARGEST_FILE) {
            flush();
        }
        return id;
    }

    @Override
    public ObjectId insert(int type, long length, InputStream in) throws IOException {
        if (length <= Store.LARGEST_FILE) {
            byte[] data = in.readNBytes((int) length);
            return insert(type, data, 0, data.length);
        }
        ObjectId id = large.insert(type, length, in);
        alsoForced(id);
        return id;
    }

    private static byte[] packed(int type, byte[] data, int offset, int length) throws IOException {
        Deflater deflater = new Deflater(Deflater.BEST_SPEED);
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream(length / 2 + 64);
            try (DeflaterOutputStream packing = new DeflaterOutputStream(out, deflater, 8192)) {
                packing.write(Constants.encodedTypeString(type));
                packing.write(' ');
                packing.write(Constants.encodeASCII(length));
                packing.write(0);
                packing.write(data, offset, length);
            }
            return out.toByteArray();
        } finally {
            deflater.end();
        }
    }

    /** Somebody wrote the object, who perhaps forced nothing. */
    void alsoForced(ObjectId id) {
        others.add(file(id));
        others.add(file(id).getParent());
        others.add(folder);
        others.add(folder.resolve("pack"));
    }

    private Path file(ObjectId id) {
        return folder.resolve(id.name().substring(0, 2)).resolve(id.name().substring(2));
    }

    /** Lets the objects be written with others. */
    void into(Together together) throws IOException {
        int number = 0;
        for (Map.Entry<ObjectId, byte[]> object : held.entrySet()) {
            Path file = file(object.getKey());
            Files.createDirectories(file.getParent());
            together.putForGood(file, object.getValue(), folder.resolve(TEMPORARY + number++));
            together.folders(List.of(folder));
        }
        together.folders(others);
        held.clear();
        others.clear();
        bytes = 0;
    }

    @Override
    public void flush() throws IOException {
        large.flush();
        Together together = new Together(disk);
        into(together);
        together.write();
    }
}
