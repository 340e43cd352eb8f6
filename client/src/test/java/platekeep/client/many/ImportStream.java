package platekeep.client.many;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import platekeep.client.library.Hand;

/** Versions as a stream for {@code git fast-import}; what each command means stands in that command's manual. */
final class ImportStream {
    private final OutputStream out;
    private int marks;

    ImportStream(OutputStream out) {
        this.out = out;
    }

    /**
     * One version.
     *
     * @param branch where it is made
     * @param at seconds since 1970
     * @param files what changed against the first parent, by path; empty where the file goes
     * @param parents marks, or ids of versions that were there before
     */
    record Made(
            String branch,
            Hand inNameOf,
            Hand enteredBy,
            long at,
            String reason,
            List<String> parents,
            SortedMap<String, Optional<byte[]>> files) {}

    /** Writes a version and gives its mark. */
    String write(Made version) throws IOException {
        String mark = ":" + ++marks;
        line("commit refs/heads/" + version.branch());
        line("mark " + mark);
        line("author " + person(version.inNameOf(), version.at()));
        line("committer " + person(version.enteredBy(), version.at()));
        data((version.reason() + "\n").getBytes(StandardCharsets.UTF_8));
        for (int i = 0; i < version.parents().size(); i++) {
            line((i == 0 ? "from " : "merge ") + version.parents().get(i));
        }
        for (Map.Entry<String, Optional<byte[]>> file : version.files().entrySet()) {
            if (file.getValue().isPresent()) {
                line("M 100644 inline " + file.getKey());
                data(file.getValue().get());
            } else {
                line("D " + file.getKey());
            }
        }
        return mark;
    }

    /** Writes an annotated tag. */
    void tag(String name, String version, Hand hand, long at, String text) throws IOException {
        line("tag " + name);
        line("from " + version);
        line("tagger " + person(hand, at));
        data((text + "\n").getBytes(StandardCharsets.UTF_8));
    }

    /** Takes a branch away. */
    void drop(String branch) throws IOException {
        line("reset refs/heads/" + branch);
        line("from 0000000000000000000000000000000000000000");
    }

    void end() throws IOException {
        line("done");
        out.flush();
    }

    private static String person(Hand hand, long at) {
        return hand.name() + " <" + hand.address() + "> " + at + " +0100";
    }

    private void line(String text) throws IOException {
        out.write((text + "\n").getBytes(StandardCharsets.UTF_8));
    }

    private void data(byte[] bytes) throws IOException {
        line("data " + bytes.length);
        out.write(bytes);
        out.write('\n');
    }
}
