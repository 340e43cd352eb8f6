package platekeep.client.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

class VerbsTest {
    static final List<String> NAMES = Verbs.NAMES;

    @TempDir
    Path here;

    @ParameterizedTest
    @FieldSource("NAMES")
    void everyVerbHasHelpWithAnExample(String verb) {
        Typed help = Typed.in(here, verb, "--help");
        assertThat(help.exit()).isZero();
        assertThat(help.out())
                .startsWith("Usage: platekeep " + verb)
                .containsPattern("Examples?:\n  platekeep " + verb);
        assertThat(help.err()).isEmpty();
    }

    @ParameterizedTest
    @FieldSource("NAMES")
    void theHelpAboveAllVerbsHasALineForEach(String verb) {
        assertThat(Typed.in(here, "--help").lines())
                .anySatisfy(line -> assertThat(line).matches("  " + verb + " +\\S.*\\."));
    }

    @ParameterizedTest
    @FieldSource("NAMES")
    void anOptionThatAVerbDoesNotHaveIsTroubleInOneSentence(String verb) {
        Typed typed = Typed.in(here, verb, "--no-such-option");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.out()).isEmpty();
        assertThat(typed.err().lines()).hasSize(1);
        assertThat(typed.err()).contains("platekeep " + verb + " --help");
    }

    @Test
    void aVerbThatIsNotThereIsTrouble() {
        Typed typed = Typed.in(here, "embroider");
        assertThat(typed.exit()).isEqualTo(2);
        assertThat(typed.err()).isEqualTo("There is no verb \"embroider\". \"platekeep --help\" lists the verbs.\n");
    }

    @Test
    void aThemeThatIsNotThereIsTrouble() {
        for (String word : List.of("open", "--sample")) {
            Typed typed = Typed.in(here, word, "--theme", "pink");
            assertThat(typed.exit()).isEqualTo(2);
            assertThat(typed.err()).isEqualTo("There is no theme \"pink\"; there are light and dark.\n");
        }
    }

    @Test
    void aBugEndsInACalmSentenceAndIsLogged() {
        Logger logger = Logger.getLogger(Verbs.class.getName());
        List<LogRecord> logged = new ArrayList<>();
        Handler handler = new Kept(logged);
        logger.setUseParentHandlers(false);
        logger.addHandler(handler);
        try {
            Typed typed = Typed.in(here, new NoMeans(), "list");
            assertThat(typed.exit()).isEqualTo(2);
            assertThat(typed.err())
                    .startsWith("Something went wrong inside Platekeep")
                    .doesNotContain("Exception");
        } finally {
            logger.removeHandler(handler);
            logger.setUseParentHandlers(true);
        }
        assertThat(logged)
                .singleElement()
                .satisfies(entry -> assertThat(entry.getThrown()).isInstanceOf(IllegalStateException.class));
    }

    /** Keeps what is logged. */
    private static final class Kept extends Handler {
        private final List<LogRecord> logged;

        Kept(List<LogRecord> logged) {
            this.logged = logged;
        }

        @Override
        public void publish(LogRecord entry) {
            logged.add(entry);
        }

        @Override
        public void flush() {
            // kept at once
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}
