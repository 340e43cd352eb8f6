package platekeep.client.many;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Calls the machine's own Git in a folder, without anybody's settings. */
record NativeGit(Path folder) {
    /** What native Git forces to disk when it is not told (git-config, "core.fsync"). */
    static final String USUAL = "core.fsync=committed,-loose-object";

    /** Everything is forced. */
    static final String FORCING = "core.fsync=all";

    /** Whether the machine has one. */
    static boolean isThere() {
        try {
            return new ProcessBuilder("git", "--version").start().waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** What it says; fails where it does. */
    String says(String... words) throws IOException {
        Process git = started(words);
        git.getOutputStream().close();
        String said = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        end(git, words);
        return said;
    }

    /** What writes to its input. */
    interface Feeding {
        void to(OutputStream input) throws IOException;
    }

    /** Feeds it; what it says is thrown away. */
    void fed(Feeding feeding, String... words) throws IOException {
        Process git = started(words);
        try (OutputStream input = new java.io.BufferedOutputStream(git.getOutputStream(), 1 << 16)) {
            feeding.to(input);
        }
        git.getInputStream().readAllBytes();
        end(git, words);
    }

    Process started(String... words) throws IOException {
        List<String> command = new ArrayList<>(List.of("git"));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command).directory(folder.toFile());
        builder.redirectError(ProcessBuilder.Redirect.INHERIT);
        builder.environment()
                .put("GIT_CONFIG_GLOBAL", folder.resolve("no-settings").toString());
        builder.environment().put("GIT_CONFIG_NOSYSTEM", "1");
        return builder.start();
    }

    private static void end(Process git, String... words) throws IOException {
        try {
            if (git.waitFor() != 0) {
                throw new IOException("git " + String.join(" ", words) + " failed");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(e);
        }
    }
}
