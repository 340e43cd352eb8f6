package platekeep.client.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * Runs programs as a user would in a folder, with the user's and the system's Git settings out of sight, so that a test
 * does not depend on the machine.
 */
public final class Shell {
    private static final long MOST_SECONDS = 180;

    private final Path home;

    /** @param home an empty folder that stands for the user's home */
    public Shell(Path home) {
        this.home = home;
    }

    /** What a program printed, both streams together, and its exit code. */
    public record Done(int exit, String text) {}

    /** Whether native Git is on this machine. */
    public static boolean hasGit() {
        try {
            Process process = new ProcessBuilder("git", "--version")
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return process.waitFor() == 0;
        } catch (IOException e) {
            return false;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** Runs native Git. */
    public Done git(Path folder, String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of("git"));
        command.addAll(List.of(words));
        return run(folder, command);
    }

    /** Runs the finished jar. */
    public Done platekeep(Path folder, String... words) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-jar",
                System.getProperty("platekeep.jar")));
        command.addAll(List.of(words));
        return run(folder, command);
    }

    private Done run(Path folder, List<String> command) throws IOException, InterruptedException {
        Path text = Files.createTempFile(home, "said", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectErrorStream(true)
                .redirectOutput(text.toFile());
        Map<String, String> environment = builder.environment();
        environment.keySet().removeIf(name -> name.startsWith("GIT_") || name.startsWith("XDG_"));
        environment.remove("DISPLAY");
        environment.putAll(Map.of(
                "HOME",
                home.toString(),
                "GIT_CONFIG_NOSYSTEM",
                "1",
                "GIT_CONFIG_GLOBAL",
                home.resolve("no-such-settings").toString(),
                "GIT_EDITOR",
                "true",
                "GIT_PAGER",
                "cat",
                "LC_ALL",
                "C.UTF-8",
                "XDG_DATA_HOME",
                home.resolve("data").toString(),
                "XDG_STATE_HOME",
                home.resolve("state").toString()));
        Process process = builder.start();
        if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new IOException("still running after " + MOST_SECONDS + " seconds: " + command);
        }
        return new Done(process.exitValue(), Files.readString(text, StandardCharsets.UTF_8));
    }
}
