package platekeep.client.command.words;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The help of a verb: how it is called, what it does, its words, its exit codes, examples. */
final class Help {
    private static final int WIDTH = 96;
    private static final int LEFT = 28;

    private Help() {}

    static List<String> lines(About about, List<Word> words) {
        List<String> lines = new ArrayList<>();
        Stream<Word> inOrder = Stream.concat(
                words.stream().filter(Word::isOption), words.stream().filter(w -> !w.isOption()));
        lines.addAll(wrapped(
                "Usage: platekeep " + about.name() + " ",
                inOrder.map(Word::usage).collect(Collectors.joining(" ")),
                "         "));
        lines.addAll(wrapped("", about.what(), ""));
        lines.add("");
        Stream.concat(words.stream().filter(w -> !w.isOption()), words.stream().filter(Word::isOption))
                .forEach(word -> lines.addAll(row(word)));
        if (!about.exits().isEmpty()) {
            lines.add("");
            lines.add("Exit code: " + about.exits());
        }
        lines.add("");
        lines.add(about.examples().size() == 1 ? "Example:" : "Examples:");
        about.examples().forEach(example -> lines.add("  " + example));
        return lines;
    }

    private static List<String> row(Word word) {
        String left = "  " + word.help();
        String pad = " ".repeat(LEFT);
        String first = left.length() < LEFT - 1 ? left + pad.substring(left.length()) : left + "  ";
        return wrapped(first, word.description(), pad);
    }

    /** Text broken between words so that no line is longer than the width, where that can be. */
    private static List<String> wrapped(String first, String text, String next) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean begun = false;
        for (String word : text.split(" ")) {
            if (begun && line.length() + 1 + word.length() > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(next);
                begun = false;
            }
            line.append(begun ? " " : "").append(word);
            begun = true;
        }
        lines.add(line.toString());
        return lines;
    }
}
