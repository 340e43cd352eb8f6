package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import platekeep.client.command.Shell;

/** Two designers, each with a home and a library of her own, and the folder that both can reach. */
final class TwoDesks {
    static final String WENNA = "Wenna Tarrow";
    static final String ISOLDE = "Isolde Marsh";
    static final String PLATE = "plates/q/quay-lamp.json";
    static final String TITLE = "Quay Lamp";

    /** What both begin with: a lamp of three rows over 12 pleats. */
    static final String LAMP = """
            {
              "format": "plate 1",
              "id": "5f0c5a44-9b1e-4a55-8f0e-2f6f4b7a9a01",
              "title": "Quay Lamp",
              "themes": [
                "lighthouses"
              ],
              "ages": [],
              "designers": [
                "Wenna Tarrow"
              ],
              "notes": [],
              "colours": {
                "b": {"name": "brick", "srgb": "#A63C2B", "strands": 4},
                "c": {"name": "chalk", "srgb": "#F4F1E8", "strands": 4},
                "y": {"name": "lamp yellow", "srgb": "#E9B83C", "strands": 4}
              },
              "pleats": {"from": 1, "to": 12},
              "starts": [
                {"row": "aa03", "pleat": 2, "cable": "down"}
              ],
              "rows": [
                "aa01 ...bbbbb...",
                "aa02 ..ccccccc..",
                "aa03 .bbbbbbbbb."
              ]
            }
            """;

    private final Path room;

    TwoDesks(Path room) throws IOException {
        this.room = room;
        Files.createDirectories(home(WENNA));
        Files.createDirectories(home(ISOLDE));
    }

    /** A designer's home, which is not her library. */
    Path home(String who) {
        return room.resolve(who.substring(0, who.indexOf(' ')).toLowerCase(java.util.Locale.ROOT));
    }

    Path library(String who) {
        return home(who).resolve("patterns");
    }

    /** The folder that both can reach. */
    Path shared() {
        return room.resolve("shared");
    }

    /** Wenna's library with the lamp in it, sent, and Isolde's first copy. */
    void shareTheLamp() throws Exception {
        makeWennasLibrary();
        share();
    }

    /** Wenna's library sent, and Isolde's first copy. */
    void share() throws Exception {
        command(WENNA, "share", shared().toString());
        command(WENNA, "send");
        run(ISOLDE, home(ISOLDE), "create", "patterns", "--from", shared().toString(), "--hand", hand(ISOLDE));
    }

    /** Wenna's library with the lamp in it. */
    void makeWennasLibrary() throws Exception {
        makeAnEmptyLibrary();
        keep(LAMP, "A lamp for the quay");
    }

    /** Wenna's library with no plate in it. */
    void makeAnEmptyLibrary() throws Exception {
        run(WENNA, home(WENNA), "create", "patterns", "--name", "Ours", "--hand", hand(WENNA));
    }

    /** Keeps a plate in Wenna's library as a new version. */
    void keep(String plate, String reason) throws Exception {
        keep(WENNA, plate, reason);
    }

    /** Keeps a plate in a designer's library as a new version. */
    void keep(String who, String plate, String reason) throws Exception {
        Files.writeString(home(who).resolve("new.json"), plate);
        command(who, "save", "../new.json", "--reason", reason);
    }

    private static String hand(String who) {
        return who + " <" + who.substring(0, who.indexOf(' ')).toLowerCase(java.util.Locale.ROOT) + "@harbour.example>";
    }

    /** Types a command in a designer's library. */
    void command(String who, String... words) throws Exception {
        run(who, library(who), words);
    }

    private void run(String who, Path folder, String... words) throws Exception {
        Shell.Done done = new Shell(home(who)).platekeep(folder, words);
        assertThat(done.exit()).as(done.text()).isZero();
    }

    /** The program at a designer's desk, with her library open. */
    Program open(String who) throws IOException {
        return Program.start(home(who), "open", library(who).toString());
    }

    /** What native Git says about a designer's library. */
    String git(String who, String... words) throws Exception {
        Shell.Done done = new Shell(home(who)).git(library(who), words);
        assertThat(done.exit()).as(done.text()).isZero();
        return done.text();
    }

    /** Both libraries and the shared copy are sound, and both have come to the same plates, bytes and all. */
    void agree() throws Exception {
        String tree = "HEAD^{tree}";
        assertThat(git(WENNA, "rev-parse", tree)).isEqualTo(git(ISOLDE, "rev-parse", tree));
        assertThat(git(WENNA, "status", "--porcelain")).isEmpty();
        assertThat(git(ISOLDE, "status", "--porcelain")).isEmpty();
        areSound();
    }

    /** Native Git finds nothing wrong in both libraries and the shared copy. */
    void areSound() throws Exception {
        for (Path folder : List.of(library(WENNA), library(ISOLDE), shared())) {
            Shell.Done done = new Shell(home(WENNA)).git(folder, "fsck", "--strict", "--full");
            assertThat(done.exit()).as(done.text()).isZero();
            assertThat(done.text()).doesNotContain("error", "warning");
        }
    }

    /** How many versions of a designer's library have two parents. */
    int joins(String who) throws Exception {
        return (int) git(who, "rev-list", "--min-parents=2", "--max-parents=2", "HEAD")
                .lines()
                .count();
    }
}
