package platekeep.client.command.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import platekeep.client.command.desk.Trouble;

/**
 * All words that a verb takes, in the order in which its help lists them, and the reading of a command. Of the words
 * that are not options only the last may be given several times.
 */
final class Words {
    private final List<Word> words = new ArrayList<>();

    Word add(Word word) {
        words.add(word);
        return word;
    }

    List<Word> all() {
        return List.copyOf(words);
    }

    /** Reads what was typed after the verb; what does not fit is trouble in one sentence. */
    void read(List<String> typed) throws Trouble {
        boolean options = true;
        for (int i = 0; i < typed.size(); i++) {
            String text = typed.get(i);
            if (options && text.equals("--")) {
                options = false;
            } else if (options && text.startsWith("-") && text.length() > 1) {
                i += readOption(text, i + 1 < typed.size() ? Optional.of(typed.get(i + 1)) : Optional.empty());
            } else {
                readPlain(text);
            }
        }
        for (Word word : words) {
            if (!word.complete()) {
                throw new Trouble(word.title() + " is missing.");
            }
        }
    }

    /** Reads an option and says how many of the words after it belong to it. */
    private int readOption(String text, Optional<String> next) throws Trouble {
        int equals = text.startsWith("--") ? text.indexOf('=') : -1;
        String name = equals < 0 ? text : text.substring(0, equals);
        Word option = words.stream()
                .filter(word -> word.hasName(name))
                .findFirst()
                .orElseThrow(() -> new Trouble("There is no option " + name + " here."));
        if (!option.takesValue()) {
            if (equals >= 0) {
                throw new Trouble(name + " takes no value.");
            }
            option.give("");
            return 0;
        }
        if (equals >= 0) {
            option.give(text.substring(equals + 1));
            return 0;
        }
        option.give(next.orElseThrow(() -> new Trouble(name + " needs a value: " + option.label() + ".")));
        return 1;
    }

    private void readPlain(String text) throws Trouble {
        for (Word word : words) {
            if (!word.isOption() && word.open()) {
                word.give(text);
                return;
            }
        }
        throw new Trouble("\"" + text + "\" is one word too many.");
    }
}
