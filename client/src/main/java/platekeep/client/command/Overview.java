package platekeep.client.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Desk;
import platekeep.client.command.words.Answering;

/** The help above all verbs: how to open the window, and one line for each verb. */
final class Overview {
    private final Desk desk;

    Overview(Desk desk) {
        this.desk = desk;
    }

    /** The program's version, as its jar says; "unpacked" where it does not run from a jar. */
    static String version() {
        return Optional.ofNullable(Overview.class.getPackage().getImplementationVersion())
                .orElse("unpacked");
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add("Platekeep keeps the design plates of picture smocking, every version of them.");
        lines.add("");
        lines.add("Without a verb it opens its window.");
        lines.add("  --sample                 opens the sample library; without a display it shows it in the terminal");
        lines.add("  --sample-folder FOLDER   where the sample library lies or is made");
        lines.add("  --theme light, --theme dark   how the window looks; with --sample or open");
        lines.add("  --help, --version");
        lines.add("");
        lines.add("Verbs (\"platekeep VERB --help\" tells more, with an example):");
        Verbs verbs = new Verbs(desk);
        for (String name : Verbs.NAMES) {
            verbs.verb(name)
                    .map(Answering::about)
                    .ifPresent(about -> lines.add(String.format("  %-11s %s", name, about.summary())));
        }
        lines.add("");
        lines.add("Exit code: 0 done; 1 different, open clashes or errors; 2 trouble, and nothing was changed.");
        return lines;
    }
}
