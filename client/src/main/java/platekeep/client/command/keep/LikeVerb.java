package platekeep.client.command.keep;

import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.file.PlateFile;
import platekeep.client.command.file.ReadablePlate;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Entry;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.task.Progress;
import platekeep.model.look.Alike;
import platekeep.model.look.Looks;
import platekeep.model.look.Mirror;
import platekeep.model.look.Signature;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Value;

/** Lists the plates of a library that look like one, whatever their colours. */
public final class LikeVerb extends LibraryVerb {
    private static final int USUAL = 10;
    private static final int MOST = 1000;

    private final Word word =
            takes(Times.ONCE, "PLATE", "A plate file, or title, number, id or file of a plate in the library.");

    private final Word most = option(Times.AT_MOST_ONCE, "NUMBER", "At most so many plates; 10 if unsaid.", "--most");

    public LikeVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "like",
                        "Lists plates that look like one, whatever their colours, mirrored or moved too; the likest first.",
                        "platekeep like \"Harbour Light\"",
                        "platekeep like drawn.json --library patterns --most 3 --json"));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        int number = number();
        boolean isFile = Files.isRegularFile(desk.at(word.text()));
        Plate asked = isFile
                ? new PlateFile(word.text(), desk.at(word.text())).read()
                : PlateChoice.among(library).plate(word.text());
        if (Signature.of(asked).isEmpty()) {
            throw new Trouble("\"" + asked.title() + "\" has no cables yet, so there is nothing it looks like.");
        }
        List<Entry> entries = library.list(Progress.NONE).stream()
                .filter(entry ->
                        entry.plate().filter(p -> !p.id().equals(asked.id())).isPresent())
                .toList();
        List<Plate> plates =
                entries.stream().flatMap(entry -> entry.plate().stream()).toList();
        Looks looks = new Looks(plates.stream().map(Signature::of).toList());
        List<Alike> alike = Alike.of(asked, looks, plates::get, number);
        if (asJson()) {
            sayJson(alike.stream().map(one -> json(one, entries.get(one.at()))).toList());
        } else {
            alike.forEach(one -> say(plates.get(one.at()).title() + "  (" + one.why() + ")  "
                    + entries.get(one.at()).path()));
            say(ReadablePlate.count(alike.size(), "plate") + ".");
        }
        return Exit.FINE;
    }

    private int number() throws Trouble {
        String text = most.value().orElse(String.valueOf(USUAL));
        if (!text.matches("[1-9][0-9]{0,3}") || Integer.parseInt(text) > MOST) {
            throw new Trouble("--most takes a whole number from 1 to " + MOST + ", not \"" + text + "\".");
        }
        return Integer.parseInt(text);
    }

    private static Value.Entries json(Alike alike, Entry entry) {
        Plate plate = entry.plate().orElseThrow();
        String mirrored =
                alike.mirror() == Mirror.NONE ? "no" : alike.mirror().name().toLowerCase(Locale.ROOT);
        return new Value.Builder()
                .put("id", plate.id())
                .put("title", plate.title())
                .put("path", entry.path())
                .put("likeness", (int) Math.round(100 * alike.likeness()))
                .put("mirrored", mirrored)
                .put("why", alike.why())
                .build();
    }
}
