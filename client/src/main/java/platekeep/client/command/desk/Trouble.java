package platekeep.client.command.desk;

import java.util.List;
import platekeep.model.text.Problem;

/** A command cannot be carried out. Holds one plain sentence for each thing that is wrong, in order of place. */
public final class Trouble extends Exception {
    private static final long serialVersionUID = 1L;

    /** A list that can be serialised, as exceptions must be. */
    private final String[] sentences;

    public Trouble(String sentence) {
        this(List.of(sentence));
    }

    public Trouble(List<String> sentences) {
        super(String.join(" ", sentences));
        this.sentences = sentences.toArray(String[]::new);
    }

    public Trouble(String sentence, Throwable cause) {
        super(sentence, cause);
        this.sentences = new String[] {sentence};
    }

    /** A text that is refused, with all that is wrong with it. */
    public static Trouble of(List<Problem> problems) {
        return new Trouble(problems.stream().map(Problem::sentence).toList());
    }

    public List<String> sentences() {
        return List.of(sentences);
    }
}
