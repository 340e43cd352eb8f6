package platekeep.client.command;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Means;

/**
 * A command that was typed, and what came of it.
 *
 * @param exit its exit code
 * @param out what it answered
 * @param err what it said beside the answer
 */
public record Typed(int exit, String out, String err) {

    /** Types a command in a folder, for verbs that need files only. */
    public static Typed in(Path folder, String... words) {
        return in(folder, new NoMeans(), words);
    }

    /** Types a command in a folder. */
    public static Typed in(Path folder, Means means, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Desk desk = new Desk(
                new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, false, StandardCharsets.UTF_8),
                folder,
                means);
        int exit = new Verbs(desk).run(words);
        return new Typed(exit, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** The answer's lines. */
    public List<String> lines() {
        return out.lines().toList();
    }
}
