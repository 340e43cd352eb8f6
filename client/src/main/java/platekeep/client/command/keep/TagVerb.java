package platekeep.client.command.keep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.desk.Exit;
import platekeep.client.command.desk.Trouble;
import platekeep.client.command.words.About;
import platekeep.client.command.words.Word;
import platekeep.client.command.words.Word.Times;
import platekeep.client.library.Change;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Saving;
import platekeep.client.library.Version;
import platekeep.model.find.tag.Tagging;
import platekeep.model.find.tag.Tags;
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;

/** Gives themes, ages, uses and designers to plates or takes them away, all in one version. */
public final class TagVerb extends LibraryVerb {

    private final Word words = takes(Times.AT_LEAST_ONCE, "PLATE", "Title, number, id or file of each plate.");

    private final Word themes = option(Times.ANY, "THEME", "A theme to give; may be given again.", "--theme");

    private final Word noThemes = option(Times.ANY, "THEME", "A theme to take away; may be given again.", "--no-theme");

    private final Word ages = option(Times.ANY, "AGE", "An age to give; may be given again.", "--age");

    private final Word noAges = option(Times.ANY, "AGE", "An age to take away; may be given again.", "--no-age");

    private final Word uses = option(Times.ANY, "USE", "A use to give; may be given again.", "--for");

    private final Word noUses = option(Times.ANY, "USE", "A use to take away; may be given again.", "--no-for");

    private final Word designers = option(Times.ANY, "NAME", "A designer to name; may be given again.", "--designer");

    private final Word noDesigners =
            option(Times.ANY, "NAME", "A designer to name no longer; may be given again.", "--no-designer");

    private final Word reason =
            option(Times.AT_MOST_ONCE, "REASON", "Why; without it the change in words.", "--reason");

    public TagVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "tag",
                        "Gives themes, ages, uses and designers to plates, or takes them away, as one version.",
                        "platekeep tag \"Harbour Light\" \"Kite over the Pier\" --theme seaside --age toddler --no-theme beach"));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        Tagging tagging = new Tagging(
                new Tags(themes.values(), ages(ages), uses.values(), designers.values()),
                new Tags(noThemes.values(), ages(noAges), noUses.values(), noDesigners.values()));
        if (tagging.isEmpty()) {
            throw new Trouble("Say what to give or take away, such as --theme boats or --no-age newborn.");
        }
        Optional<String> seen = library.newest().map(Version::id);
        PlateChoice choice = PlateChoice.among(library);
        List<Change> changes = new ArrayList<>();
        for (String word : words.values()) {
            Plate plate = choice.plate(word);
            Plate tagged = tagging.on(plate);
            if (!tagged.equals(plate)) {
                changes.add(new Change.PutPlate(tagged));
            }
        }
        if (changes.isEmpty()) {
            throw new Trouble("The plates are tagged like that already; there is nothing to save.");
        }
        tellSaved(library.save(new Saving(changes, reason.value().orElseGet(tagging::words), Optional.empty(), seen)));
        return Exit.FINE;
    }

    private static List<Age> ages(Word typed) throws Trouble {
        List<Age> ages = new ArrayList<>();
        for (String age : typed.values()) {
            ages.add(AgeWord.of(age));
        }
        return ages;
    }
}
