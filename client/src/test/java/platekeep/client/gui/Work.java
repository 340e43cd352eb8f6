package platekeep.client.gui;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What a designer does in the window, by keys and mouse. */
final class Work {
    private final Program program;

    Work(Program program) {
        this.program = program;
    }

    /** Opens a plate from the gallery with the keyboard. */
    void openPlate(String title) {
        program.keys("ctrl 1");
        program.choose("gallery-plates", title);
        program.focus("gallery-plates");
        program.keys("ENTER");
        program.says("plate-title", title);
        program.focus("chart");
    }

    /** Paints from one position to another of a row with the n-th colour, counted from 1. */
    void paintByMouse(int colour, int row, int from, int to) {
        take(colour);
        program.drag(program.spot(row, from), program.spot(row, to));
        isDraft();
    }

    /** Walks to a position with the arrow keys from the chart's top left corner and paints there. */
    void paintByKeys(int colour, int row, int index) {
        take(colour);
        walk(row, index);
        program.keys("SPACE");
        isDraft();
    }

    /** Walks to a position with the arrow keys from the chart's top left corner. */
    void walk(int row, int index) {
        program.focus("chart");
        program.keys("HOME");
        for (int i = 0; i < 12; i++) {
            program.keys("UP");
        }
        for (int i = 0; i < row; i++) {
            program.keys("DOWN");
        }
        for (int i = 0; i < index; i++) {
            program.keys("RIGHT");
        }
    }

    /** Takes a tool by its key, and with it the n-th colour, counted from 1. */
    void take(String key, String tool, int colour) {
        program.focus("chart");
        program.keys(key, String.valueOf(colour));
        program.until("colour-list", "has colour " + colour + " chosen", seen -> seen.chosen() == colour - 1);
        program.until(tool, "is in hand", Seen::selected);
    }

    private void take(int colour) {
        take("P", "tool-paint", colour);
    }

    /** Waits until the window calls the plate a draft. */
    void isDraft() {
        program.says("plate-line", "draft");
    }

    /** Saves a version of the plate that is open. */
    void save(String reason) {
        program.keys("ctrl S");
        program.fill("save-reason", reason);
        program.click("ask-yes");
        program.says("status", "Saved: " + reason);
    }

    /** Sends what waits, on the Partner screen. */
    void send() {
        program.keys("ctrl 5");
        program.click("partner-send");
        program.says("status", " sent.");
    }

    /** Brings in what the partner sent, on the Partner screen. */
    void bringIn() {
        program.keys("ctrl 5");
        program.reach("partner-bring-in");
        program.focus("partner-bring-in");
        program.keys("ctrl B");
        program.says("status", "Brought in: ");
    }

    /** Chooses the folder of the shared copy. */
    void shareIn(Path folder) {
        program.keys("ctrl 5");
        program.click("partner-choose-folder");
        program.fill("shared-folder", folder.toString());
        program.keys("ENTER");
        program.says("partner-shared-copy", folder.toString());
    }

    /** Brings in what the partner sent where there is something to decide first: that is on the Join screen. */
    void bringInToDecide(String counter) {
        program.keys("ctrl 5");
        program.reach("partner-bring-in");
        program.focus("partner-bring-in");
        program.keys("ctrl B");
        program.says("join-counter", counter);
    }

    /** Goes to what is left to decide of a join that was begun before. */
    void goOnDeciding(String counter) {
        // a library that is still being opened has nothing to decide yet
        program.item("gallery-plates", TwoDesks.TITLE);
        program.keys("ctrl 4");
        program.says("join-counter", counter);
    }

    /** Decides a clash for what one of the two made, by the key beside that answer. */
    void decide(String place, String who, String counter) {
        program.focus("join-matters");
        for (int i = 0; i < 2 && !program.see("join-where").text().contains(place); i++) {
            program.keys("N");
        }
        program.says("join-where", place);
        program.until("join-who-1", "is there", Seen::showing);
        int answer = 1;
        while (!program.see("join-who-" + answer).text().contains(who)) {
            answer++;
            assertThat(answer).as("the number of the answer of " + who).isLessThan(5);
        }
        program.keys(String.valueOf(answer));
        program.says("join-counter", counter);
    }

    /** Saves what was decided on the Join screen. */
    void saveJoined() {
        program.reach("join-save");
        program.keys("ctrl S");
        program.says("status", "Saved as one version: 1 plate joined");
    }

    /** Closes the window. */
    void close() {
        program.keys("ctrl Q");
        program.hasClosed();
    }

    /** Waits until a draft that holds this text lies on disk. */
    void isKept(Path home, String part) {
        program.until(
                "a draft with \"" + part + "\" is on disk",
                () -> drafts(home).stream().anyMatch(text -> text.contains(part)));
    }

    /** The drafts on disk, as text. */
    static List<String> drafts(Path home) {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.walk(home.resolve("data"))) {
            for (Path file :
                    files.filter(file -> file.toString().endsWith(".draft")).toList()) {
                texts.add(Files.readString(file));
            }
        } catch (IOException | UncheckedIOException e) {
            // the program is moving files just now, or has made none yet
            return texts;
        }
        return texts;
    }
}
