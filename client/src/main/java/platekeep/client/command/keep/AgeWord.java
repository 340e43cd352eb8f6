package platekeep.client.command.keep;

import java.util.Arrays;
import java.util.stream.Collectors;
import platekeep.client.command.desk.Trouble;
import platekeep.model.plate.Age;

/** An age as it is typed on the command line. */
public final class AgeWord {

    private AgeWord() {}

    /** The age, or trouble that names the ages there are. */
    public static Age of(String word) throws Trouble {
        return Age.of(word)
                .orElseThrow(() -> new Trouble("There is no age \"" + word + "\"; the ages are "
                        + Arrays.stream(Age.values()).map(Age::word).collect(Collectors.joining(", ")) + "."));
    }
}
