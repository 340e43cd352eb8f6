package platekeep.client.command.keep;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import platekeep.client.command.desk.Trouble;
import platekeep.client.library.Hand;

/** A hand as it is typed on the command line: {@code Wenna Tarrow <wenna@harbour.example>}. */
public final class HandWord {
    private static final Pattern FORM =
            Pattern.compile("\\s*([^<>\\p{Cntrl}]*[^<>\\s\\p{Cntrl}])\\s*<([^<>\\s]+)>\\s*");

    private HandWord() {}

    public static Hand of(String word) throws Trouble {
        Matcher m = FORM.matcher(word);
        if (!m.matches()) {
            throw new Trouble("\"" + word + "\" is not a hand: write a name and an address, such as"
                    + " \"Wenna Tarrow <wenna@harbour.example>\".");
        }
        return new Hand(m.group(1), m.group(2));
    }
}
