package platekeep.client.git.history;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import platekeep.client.cache.Cache;

/**
 * The index of versions between two runs of the program. Since a version's step never changes, what was kept is right
 * as long as it can be read; one that cannot be read is left aside and made anew.
 */
public final class IndexFile {
    /** From this many new versions on the index is written again; fewer are found again in no time. */
    static final int WORTH_KEEPING = 200;

    private static final int FORM = 1;

    private final Cache cache;
    private final String key;

    /**
     * @param key names the library; libraries with common versions may share one
     */
    public IndexFile(Cache cache, String key) {
        this.cache = cache;
        this.key = "versions-" + key;
    }

    /** The steps that were kept, each after its parents; none where nothing readable was kept. */
    List<Step> read() {
        Optional<byte[]> kept = cache.read(key);
        if (kept.isEmpty()) {
            return List.of();
        }
        try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(kept.get()))) {
            return in.readInt() == FORM ? steps(in) : List.of();
        } catch (IOException | IndexOutOfBoundsException e) {
            return List.of();
        }
    }

    private static List<Step> steps(DataInputStream in) throws IOException {
        int count = in.readInt();
        List<Step> steps = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            ObjectId version = id(in);
            long order = in.readLong();
            List<ObjectId> parents = new ArrayList<>();
            for (int left = in.readUnsignedByte(); left > 0; left--) {
                parents.add(steps.get(in.readInt()).version());
            }
            List<Touch> touches = new ArrayList<>();
            for (int left = in.readInt(); left > 0; left--) {
                String plateId = in.readUTF();
                String path = in.readUTF();
                touches.add(new Touch(plateId, path, in.readBoolean() ? Optional.of(id(in)) : Optional.empty()));
            }
            steps.add(new Step(version, parents, order, touches));
        }
        return steps;
    }

    private static ObjectId id(DataInputStream in) throws IOException {
        byte[] raw = new byte[Constants.OBJECT_ID_LENGTH];
        in.readFully(raw);
        return ObjectId.fromRaw(raw);
    }

    /** Keeps the steps, each given after its parents. */
    void write(Collection<Step> steps) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(bytes)) {
            out.writeInt(FORM);
            out.writeInt(steps.size());
            Map<ObjectId, Integer> places = new HashMap<>();
            for (Step step : steps) {
                places.put(step.version(), places.size());
                write(out, step, places);
            }
        } catch (IOException e) {
            throw new IllegalStateException("writing into memory failed", e);
        }
        cache.write(key, bytes.toByteArray());
    }

    private static void write(DataOutputStream out, Step step, Map<ObjectId, Integer> places) throws IOException {
        step.version().copyRawTo(out);
        out.writeLong(step.order());
        out.writeByte(step.parents().size());
        for (ObjectId parent : step.parents()) {
            out.writeInt(places.get(parent));
        }
        out.writeInt(step.touches().size());
        for (Touch touch : step.touches()) {
            out.writeUTF(touch.plateId());
            out.writeUTF(touch.path());
            out.writeBoolean(touch.content().isPresent());
            if (touch.content().isPresent()) {
                touch.content().get().copyRawTo(out);
            }
        }
    }
}
