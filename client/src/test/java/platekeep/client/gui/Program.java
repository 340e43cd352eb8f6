package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Point;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URLDecoder;
import java.nio.IntBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.jar.Attributes;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;

/**
 * The finished program at work on the display, in a process of its own with a home of its own. Everything that is asked
 * for is waited for up to a deadline; what does not come is a failure with a picture of the display beside it.
 */
final class Program implements AutoCloseable {
    /** Generous, since it only ends what hangs; a machine under load takes its time to start a window. */
    private static final long MOST_SECONDS = Long.getLong("platekeep.gui.seconds", 90);

    private static final int PAUSE = 40;

    private final Process process;
    private final Path said;
    private final Path portFile;
    private final Fingers fingers = new Fingers();

    private Program(Process process, Path said, Path portFile) {
        this.process = process;
        this.said = said;
        this.portFile = portFile;
    }

    /**
     * Starts it and waits for its window.
     *
     * @param home stands for the user's home; her settings, drafts and log lie below it
     */
    static Program start(Path home, String... words) throws IOException {
        Path portFile = Files.createTempFile(home, "eye", ".port");
        Files.delete(portFile);
        Path said = Files.createTempFile(home, "said", ".txt");
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-javaagent:" + eyeIn(home) + "=" + portFile,
                "-Duser.home=" + home,
                "-jar",
                System.getProperty("platekeep.jar")));
        command.addAll(List.of(words));
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(home.toFile())
                .redirectErrorStream(true)
                .redirectOutput(said.toFile());
        builder.environment()
                .keySet()
                .removeIf(name -> name.startsWith("GIT_") || name.startsWith("XDG_") || name.startsWith("JAVA_"));
        builder.environment().put("HOME", home.toString());
        builder.environment().put("XDG_DATA_HOME", home.resolve("data").toString());
        builder.environment().put("XDG_STATE_HOME", home.resolve("state").toString());
        Program program = new Program(builder.start(), said, portFile);
        program.until("the window is there", () -> program.see("rail").showing());
        return program;
    }

    /** Packs the eye into a jar that the virtual machine takes as its agent. */
    private static Path eyeIn(Path home) throws IOException {
        Path jar = home.resolve("eye.jar");
        Manifest manifest = new Manifest();
        manifest.getMainAttributes().put(Attributes.Name.MANIFEST_VERSION, "1.0");
        manifest.getMainAttributes().put(new Attributes.Name("Premain-Class"), Eye.class.getName());
        String entry = Eye.class.getName().replace('.', '/') + ".class";
        try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar), manifest);
                var bytes = Eye.class.getClassLoader().getResourceAsStream(entry)) {
            out.putNextEntry(new JarEntry(entry));
            bytes.transferTo(out);
        }
        return jar;
    }

    /** What can be seen of a component now. */
    Seen see(String name) {
        return new Seen(ask("named " + name));
    }

    private Map<String, String> ask(String question) {
        Map<String, String> facts = new LinkedHashMap<>();
        if (!Files.exists(portFile)) {
            return facts;
        }
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), Integer.parseInt(Files.readString(portFile)))) {
            socket.setSoTimeout((int) TimeUnit.SECONDS.toMillis(MOST_SECONDS));
            socket.getOutputStream().write((question + "\n").getBytes(StandardCharsets.UTF_8));
            BufferedReader in =
                    new BufferedReader(new InputStreamReader(socket.getInputStream(), StandardCharsets.UTF_8));
            for (String line = in.readLine(); line != null && !line.isEmpty(); line = in.readLine()) {
                int equals = line.indexOf('=');
                facts.put(
                        line.substring(0, equals),
                        URLDecoder.decode(line.substring(equals + 1), StandardCharsets.UTF_8));
            }
        } catch (IOException e) {
            // it is starting, or ending
            return Map.of();
        }
        return facts;
    }

    /** Waits until something is so. */
    void until(String what, Supplier<Boolean> isSo) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(MOST_SECONDS);
        while (!isSo.get()) {
            if (!process.isAlive()) {
                throw failure(what + ": the program has ended");
            }
            if (System.nanoTime() > end) {
                throw failure(what + ": not within " + MOST_SECONDS + " s");
            }
            pause();
        }
    }

    private static void pause() {
        try {
            Thread.sleep(PAUSE);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while waiting for the program", e);
        }
    }

    private AssertionError failure(String what) {
        StringBuilder words = new StringBuilder(what)
                .append("\npicture: ")
                .append(fingers.picture())
                .append("\nkeyboard: ")
                .append(ask("keyboard"));
        ask("all")
                .forEach((name, text) ->
                        words.append("\n  ").append(name).append(": ").append(text));
        try {
            words.append("\nsaid:\n").append(Files.readString(said));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new AssertionError(words.toString());
    }

    /** Waits until a component is as wanted, and gives it. */
    Seen until(String name, String what, Predicate<Seen> isSo) {
        Seen[] last = new Seen[1];
        until(name + " " + what, () -> isSo.test(last[0] = see(name)));
        return last[0];
    }

    /** Waits until a component can be reached and lies still, and gives it. */
    Seen reach(String name) {
        Seen[] last = {see(name)};
        until(name + " can be reached", () -> {
            Seen before = last[0];
            last[0] = see(name);
            return last[0].reachable() && last[0].middle().equals(before.middle());
        });
        return last[0];
    }

    /** Waits until a component says this. */
    void says(String name, String part) {
        until(
                name,
                "says \"" + part + "\"",
                seen -> seen.showing() && seen.text().contains(part));
    }

    void click(String name) {
        fingers.click(reach(name).middle());
    }

    /** Presses keys for the component that has the focus; they are taken in turn. */
    void keys(String... names) {
        haveKeyboard();
        for (String name : names) {
            fingers.key(name);
        }
    }

    /**
     * Waits until the window in front takes keys. Where no window manager gives the keyboard back after a dialog, a
     * click on the foot of the window does.
     */
    private void haveKeyboard() {
        long patience = System.nanoTime() + TimeUnit.SECONDS.toNanos(3);
        until("a window has the keyboard", () -> {
            boolean has = !ask("keyboard").isEmpty();
            Seen foot = has || System.nanoTime() < patience ? new Seen(Map.of()) : see("status");
            if (foot.reachable()) {
                fingers.click(foot.middle());
            }
            return has;
        });
    }

    /** Waits until a component has the keyboard. */
    void focus(String name) {
        until(name, "has the keyboard", Seen::focus);
    }

    /** Puts a text into a field in place of what stands there. */
    void fill(String name, String text) {
        click(name);
        focus(name);
        fingers.key("ctrl A");
        fingers.type(text);
        until(name, "holds \"" + text + "\"", seen -> seen.text().equals(text));
    }

    /** Opens a menu by its key and takes an item of it by the mouse. */
    void menu(String key, String item) {
        haveKeyboard();
        fingers.key("alt " + key);
        click(item);
        until(item, "is gone", seen -> !seen.showing());
    }

    /** The number of the first item of a list that has this in it, once there is one. */
    int item(String list, String part) {
        Seen seen = until(list, "holds \"" + part + "\"", s -> at(s, part) >= 0);
        return at(seen, part);
    }

    private static int at(Seen seen, String part) {
        for (int i = 0; i < seen.items().size(); i++) {
            if (seen.items().get(i).contains(part)) {
                return i;
            }
        }
        return -1;
    }

    /** Chooses an item of a list by the mouse. */
    void choose(String list, String part) {
        int index = item(list, part);
        fingers.click(reach(list).cell(index));
        until(list, "has \"" + part + "\" chosen", seen -> seen.chosen() == at(seen, part));
    }

    /** Where a cable lies on the screen: row from the top, position from the left, both from 0. */
    Point spot(int row, int index) {
        Seen[] last = new Seen[1];
        until("row " + row + ", position " + index + " is on the screen", () -> {
            last[0] = new Seen(ask("spot " + row + " " + index));
            return last[0].reachable();
        });
        return last[0].middle();
    }

    /** Presses the mouse at one cable and lets go at another. */
    void drag(Point from, Point to) {
        fingers.press(from);
        fingers.moveTo(to);
        fingers.release();
    }

    /** What the display shows of a component, dot by dot; the display is asked, not the program. */
    IntBuffer dots(String name) {
        return fingers.dots(reach(name).place());
    }

    /** What the display shows of a component once that is the same a few times in a row. */
    IntBuffer dotsLyingStill(String name) {
        IntBuffer[] last = {dots(name)};
        int[] same = {0};
        until(name + " lies still", () -> {
            IntBuffer before = last[0];
            last[0] = dots(name);
            same[0] = before.equals(last[0]) ? same[0] + 1 : 0;
            return same[0] == 3;
        });
        return last[0];
    }

    Fingers fingers() {
        return fingers;
    }

    /** Ends it as a power cut would. */
    void kill() {
        process.destroyForcibly();
        ended();
    }

    /** Waits until it has ended by itself, and well. */
    void hasClosed() {
        assertThat(ended()).isZero();
    }

    private int ended() {
        try {
            if (!process.waitFor(MOST_SECONDS, TimeUnit.SECONDS)) {
                throw failure("the program ends");
            }
            return process.exitValue();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    /** What it printed. */
    String said() throws IOException {
        return Files.readString(said);
    }

    @Override
    public void close() {
        process.destroyForcibly();
    }
}
