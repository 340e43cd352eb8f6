package platekeep.client.git;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jgit.lib.StoredConfig;
import platekeep.client.git.store.BlindSystem;
import platekeep.client.git.store.Disk;
import platekeep.client.git.store.Store;
import platekeep.client.git.store.Trouble;
import platekeep.client.library.LibraryException;

/**
 * Sets one copy of a library up for people who use Git itself on its folder: plates are then joined and compared by
 * this program there. It stands in the copy's own settings, which never travel, so a library that comes from elsewhere
 * cannot bring it along; and it can be taken back.
 */
public final class GitSetup {
    private static final String NAME = "platekeep";
    private static final String PLATES = "plates/**/*.json merge=platekeep diff=platekeep";
    private static final String BEGIN = "# set up by platekeep: begin";
    private static final String END = "# set up by platekeep: end";

    public GitSetup() {
        BlindSystem.install();
    }

    /**
     * Lets Git join and compare plates in this folder by calling this program. Asking again replaces the command.
     *
     * @param folder the library's folder
     * @param command how a shell calls this program, quoted as a shell needs it
     */
    public void on(Path folder, String command) throws LibraryException {
        set(folder, (config, lines) -> {
            config.setString("merge", NAME, "name", "plates, row by row and cable by cable");
            config.setString("merge", NAME, "driver", command + " join --git %O %A %B %L %P");
            config.setString("diff", NAME, "command", command + " compare --git");
            config.setString("diff", NAME, "textconv", command + " show --text");
            lines.addAll(List.of(BEGIN, PLATES, END));
        });
    }

    /** Takes back what {@link #on} did; all else in the settings stays. */
    public void off(Path folder) throws LibraryException {
        set(folder, (config, lines) -> {
            config.unsetSection("merge", NAME);
            config.unsetSection("diff", NAME);
        });
    }

    /** Changes the settings and the lines of attributes, which come without an earlier set-up's. */
    private interface Setting {
        void change(StoredConfig config, List<String> lines);
    }

    private static void set(Path folder, Setting setting) throws LibraryException {
        if (!Store.isStore(folder)) {
            throw new LibraryException("There is no library in " + folder + ". Nothing was changed.");
        }
        try (Store store = Store.open(folder, Disk.atOnce(Runnable::run))) {
            Path attributes = store.repository().getDirectory().toPath().resolve("info/attributes");
            List<String> lines = withoutOurs(attributes);
            StoredConfig config = store.repository().getConfig();
            setting.change(config, lines);
            config.save();
            write(attributes, lines);
        } catch (IOException e) {
            throw Trouble.of("The set-up was not changed", "", e);
        }
    }

    private static List<String> withoutOurs(Path attributes) throws IOException {
        List<String> kept = new ArrayList<>();
        boolean ours = false;
        for (String line : Files.exists(attributes) ? Files.readAllLines(attributes) : List.<String>of()) {
            ours |= line.equals(BEGIN);
            if (!ours) {
                kept.add(line);
            }
            ours &= !line.equals(END);
        }
        return kept;
    }

    private static void write(Path attributes, List<String> lines) throws IOException {
        if (lines.isEmpty()) {
            Files.deleteIfExists(attributes);
            return;
        }
        Files.createDirectories(attributes.getParent());
        Path temporary = attributes.resolveSibling("attributes.platekeep");
        Files.writeString(temporary, String.join("\n", lines) + "\n", StandardCharsets.UTF_8);
        Files.move(temporary, attributes, StandardCopyOption.REPLACE_EXISTING);
    }
}
