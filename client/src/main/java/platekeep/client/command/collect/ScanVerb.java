package platekeep.client.command.collect;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Scans;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.keep.AgeWord;
import platekeep.client.command.keep.LibraryVerb;
import platekeep.client.command.keep.PlateChoice;
import platekeep.client.command.keep.Told;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.model.plate.Age;
import platekeep.model.plate.Draft;
import platekeep.model.plate.Origin;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Unknown;
import platekeep.model.plate.Value;

/** Brings scans in, each a plate that is only a scan yet, or puts scans and photos beside a plate; all as one version. */
public final class ScanVerb extends LibraryVerb {

    private final Word files = takes(Times.AT_LEAST_ONCE, "FILE", "JPEG or PNG files, or folders of such.");

    private final Word themes = option(Times.ANY, "THEME", "A theme of all of them; may be given again.", "--theme");

    private final Word ages = option(Times.ANY, "AGE", "An age of all of them; may be given again.", "--age");

    private final Word kind =
            option(Times.AT_MOST_ONCE, "KIND", "Where they come from: " + words(Origin.KINDS) + ".", "--from");

    private final Word by = option(Times.AT_MOST_ONCE, "NAME", "By whom they are.", "--by");

    private final Word place = option(Times.AT_MOST_ONCE, "PLACE", "Where the paper lies.", "--place");

    private final Word use =
            option(Times.AT_MOST_ONCE, "USE", "What may be done with them: " + words(Origin.USES) + ".", "--use");

    private final Word beside =
            option(Times.AT_MOST_ONCE, "PLATE", "Put them beside this plate, in place of new ones.", "--beside");

    private final Word photo = flag("With --beside: they are photos of the finished work.", "--photo");

    private final Word smaller = flag("Make large pictures smaller on the way in.", "--smaller");

    private final Word reason =
            option(Times.AT_MOST_ONCE, "REASON", "Why; without it, how many were brought in.", "--reason");

    public ScanVerb(Desk desk) {
        super(
                desk,
                new About(
                        "scan",
                        "Brings scans of paper plates in, each a plate that is only a scan yet, as one version."
                                + " What a camera wrote beside the picture, such as where it was taken, is left out.",
                        "0 all were brought in; 1 some files were left out, each with a sentence; 2 trouble, and"
                                + " nothing was changed.",
                        List.of(
                                "platekeep scan binder/ --place \"binder 3\" --use mine --theme seaside",
                                "platekeep scan finished.jpg --beside \"Harbour Light\" --photo")));
    }

    private static String words(List<String> words) {
        return String.join(", ", words);
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        List<Path> paths = new ArrayList<>();
        for (String file : files.values()) {
            paths.add(desk.at(file));
        }
        Optional<Plate> owner = owner(library);
        Plate facts = facts();
        Scans.Size size = smaller.given() ? Scans.Size.SMALLER : Scans.Size.AS_THEY_ARE;
        Scans.Sheets sheets = desk.means().scans().read(library, paths, size);
        if (sheets.ready().isEmpty()) {
            throw new Trouble("Nothing was brought in. "
                    + (sheets.leftOut().isEmpty()
                            ? "There is no JPEG or PNG file among what was named."
                            : String.join(" ", sheets.leftOut())));
        }
        List<Plate> plates = owner.isPresent() ? List.of() : plates(sheets.ready(), facts);
        List<Change> changes =
                owner.map(plate -> beside(plate, sheets.ready())).orElseGet(() -> changes(sheets.ready(), plates));
        Version version = library.save(new Saving(
                changes,
                reason.value().orElse(words(sheets.ready().size(), owner)),
                Optional.empty(),
                Optional.empty()));
        tell(version, owner.map(List::of).orElse(plates), sheets.leftOut());
        return sheets.leftOut().isEmpty() ? Exit.FINE : Exit.FOUND;
    }

    private Optional<Plate> owner(Library library) throws Trouble, LibraryException {
        if (photo.given() && !beside.given()) {
            throw new Trouble("A photo lies beside a plate: say which with --beside.");
        }
        return beside.given() ? Optional.of(PlateChoice.among(library).plate(beside.text())) : Optional.empty();
    }

    /** A plate with what is said of all of them. */
    private Plate facts() throws Trouble {
        List<Age> allAges = new ArrayList<>();
        for (String age : ages.values()) {
            allAges.add(AgeWord.of(age));
        }
        check(kind, Origin.KINDS);
        check(use, Origin.USES);
        return new Draft(new UUID(0, 0).toString(), "facts")
                .themes(themes.values())
                .ages(allAges)
                .origin(new Origin(kind.value(), by.value(), place.value(), use.value(), Unknown.NONE))
                .build();
    }

    private static void check(Word word, List<String> known) throws Trouble {
        if (word.given() && !known.contains(word.text())) {
            throw new Trouble("\"" + word.text() + "\" is none of: " + words(known) + ".");
        }
    }

    private static List<Plate> plates(List<Scans.Sheet> sheets, Plate facts) {
        return sheets.stream()
                .map(sheet -> facts.edit()
                        .id(UUID.randomUUID().toString())
                        .title(sheet.title())
                        .build())
                .toList();
    }

    private static List<Change> changes(List<Scans.Sheet> sheets, List<Plate> plates) {
        List<Change> changes = new ArrayList<>();
        for (int i = 0; i < plates.size(); i++) {
            changes.add(new Change.PutPlate(plates.get(i)));
            changes.add(new Change.PutPicture(
                    plates.get(i).id(), Picture.Kind.SCAN, sheets.get(i).bytes()));
        }
        return changes;
    }

    private List<Change> beside(Plate plate, List<Scans.Sheet> sheets) {
        Picture.Kind what = photo.given() ? Picture.Kind.PHOTO : Picture.Kind.SCAN;
        return sheets.stream()
                .map(sheet -> (Change) new Change.PutPicture(plate.id(), what, sheet.bytes()))
                .toList();
    }

    private String words(int count, Optional<Plate> owner) {
        String what = count + (photo.given() ? " photo" : " scan") + (count == 1 ? "" : "s");
        return owner.map(plate -> what + " of \"" + plate.title() + "\"").orElse(what + " brought in");
    }

    private void tell(Version version, List<Plate> plates, List<String> leftOut) {
        if (asJson()) {
            sayJson(new Value.Builder()
                    .put("version", version.id())
                    .put(
                            "plates",
                            Told.items(plates.stream().map(ScanVerb::json).toList()))
                    .put("leftOut", Value.ofTexts(leftOut))
                    .build());
        } else {
            say("Saved: " + Told.line(version));
            if (!beside.given()) {
                plates.forEach(plate -> say(plate.title() + "  " + plate.id()));
            }
            leftOut.forEach(desk::warn);
        }
    }

    private static Value json(Plate plate) {
        return new Value.Builder()
                .put("id", plate.id())
                .put("title", plate.title())
                .build();
    }
}
