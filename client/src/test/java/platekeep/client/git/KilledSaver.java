package platekeep.client.git;

import java.nio.file.Path;
import java.util.List;
import platekeep.client.library.Library;
import platekeep.client.task.Helpers;

/** A program that saves version after version of a plate until it is killed: {@code KilledSaver FOLDER CACHE}. */
final class KilledSaver {
    private KilledSaver() {}

    public static void main(String[] words) throws Exception {
        Workshop shop = new Workshop(Path.of(words[1]), new Helpers());
        try (Library library = shop.libraries.open(Path.of(words[0]))) {
            for (long turn = System.nanoTime(); true; turn++) {
                Workshop.save(
                        library,
                        "turn " + turn,
                        Workshop.plate(0x20, "Kite", "kites")
                                .edit()
                                .notes(List.of("turn " + turn))
                                .build());
            }
        }
    }
}
