package platekeep.client.command.keep;

import java.util.List;
import java.util.Locale;
import platekeep.client.command.desk.Trouble;
import platekeep.client.library.PlateVersion;
import platekeep.model.plate.Plate;

/** Finds the version of a plate that a word on the command line means: its id, the beginning of it, or a name of it. */
final class VersionChoice {

    private VersionChoice() {}

    static PlateVersion of(Plate plate, List<PlateVersion> history, String word) throws Trouble {
        String wanted = word.toLowerCase(Locale.ROOT);
        List<PlateVersion> named =
                history.stream().filter(v -> v.names().contains(word)).toList();
        List<PlateVersion> found = named.isEmpty()
                ? history.stream()
                        .filter(v -> v.version().id().startsWith(wanted))
                        .toList()
                : named;
        if (found.size() == 1) {
            return found.get(0);
        }
        throw new Trouble(
                found.isEmpty()
                        ? "There is no version \"" + word + "\" of " + plate.title()
                                + ". See \"platekeep history\" for its versions."
                        : "\"" + word + "\" can mean " + found.size() + " versions of " + plate.title()
                                + ". Say more of the version's id.");
    }
}
