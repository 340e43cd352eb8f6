package platekeep.client.command.keep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
import platekeep.model.plate.Age;
import platekeep.model.plate.Plate;

/** Gives themes, ages and uses to plates or takes them away, all in one version. */
public final class TagVerb extends LibraryVerb {

    private final Word words = takes(Times.AT_LEAST_ONCE, "PLATE", "Title, number, id or file of each plate.");

    private final Word themes = option(Times.ANY, "THEME", "A theme to give; may be given again.", "--theme");

    private final Word noThemes = option(Times.ANY, "THEME", "A theme to take away; may be given again.", "--no-theme");

    private final Word ages = option(Times.ANY, "AGE", "An age to give; may be given again.", "--age");

    private final Word noAges = option(Times.ANY, "AGE", "An age to take away; may be given again.", "--no-age");

    private final Word uses = option(Times.ANY, "USE", "A use to give; may be given again.", "--for");

    private final Word noUses = option(Times.ANY, "USE", "A use to take away; may be given again.", "--no-for");

    private final Word reason =
            option(Times.AT_MOST_ONCE, "REASON", "Why; without it the change in words.", "--reason");

    public TagVerb(Desk desk) {
        super(
                desk,
                About.of(
                        "tag",
                        "Gives themes, ages and uses to plates, or takes them away, as one version.",
                        "platekeep tag \"Harbour Light\" \"Kite over the Pier\" --theme seaside --age toddler --no-theme beach"));
    }

    @Override
    protected int answer(Library library) throws Trouble, LibraryException {
        if (gained().isEmpty() && lost().isEmpty()) {
            throw new Trouble("Say what to give or take away, such as --theme boats or --no-age newborn.");
        }
        Optional<String> seen = library.newest().map(Version::id);
        PlateChoice choice = PlateChoice.among(library);
        List<Change> changes = new ArrayList<>();
        for (String word : words.values()) {
            Plate plate = choice.plate(word);
            Plate tagged = tagged(plate);
            if (!tagged.equals(plate)) {
                changes.add(new Change.PutPlate(tagged));
            }
        }
        if (changes.isEmpty()) {
            throw new Trouble("The plates are tagged like that already; there is nothing to save.");
        }
        tellSaved(library.save(new Saving(changes, reason.value().orElseGet(this::inWords), Optional.empty(), seen)));
        return Exit.FINE;
    }

    private Plate tagged(Plate plate) throws Trouble {
        List<Age> newAges = new ArrayList<>(plate.ages());
        for (String age : ages.values()) {
            newAges.add(AgeWord.of(age));
        }
        for (String age : noAges.values()) {
            newAges.remove(AgeWord.of(age));
        }
        return plate.edit()
                .themes(changed(plate.themes(), themes.values(), noThemes.values()))
                .uses(changed(plate.uses(), uses.values(), noUses.values()))
                .ages(newAges)
                .build();
    }

    private static List<String> changed(List<String> before, List<String> more, List<String> less) {
        List<String> after = new ArrayList<>(before);
        after.addAll(more);
        after.removeAll(less);
        return after;
    }

    private List<String> gained() {
        return Stream.of(themes.values(), ages.values(), uses.values())
                .flatMap(List::stream)
                .toList();
    }

    private List<String> lost() {
        return Stream.of(noThemes.values(), noAges.values(), noUses.values())
                .flatMap(List::stream)
                .toList();
    }

    private String inWords() {
        List<String> parts = new ArrayList<>();
        if (!gained().isEmpty()) {
            parts.add("tagged " + String.join(", ", gained()));
        }
        if (!lost().isEmpty()) {
            parts.add("no longer " + String.join(", ", lost()));
        }
        String sentence = String.join("; ", parts);
        return Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}
