package platekeep.client.window;

import java.awt.Component;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;
import platekeep.client.library.Hand;
import platekeep.client.ui.Ask;
import platekeep.client.ui.FolderField;
import platekeep.client.ui.Widgets;

/** The questions about libraries: where one lies, what it is called, who she is. */
final class LibraryDialogs {

    private LibraryDialogs() {}

    /** A library to be made. */
    record NewLibrary(Path folder, String name, Hand hand) {}

    /** A library to be copied from a shared copy. */
    record FirstCopy(Path sharedCopy, Path folder, Hand hand) {}

    static Optional<NewLibrary> newLibrary(Component over, Hand before) {
        JTextField name = field("library-name", "");
        FolderField folder = new FolderField("library-folder");
        HandFields hand = new HandFields(before);
        JPanel form = form("A library is a folder of its own on this computer. Nothing in it is ever sent anywhere"
                + " unless you do so.");
        row(form, "Name of the library", name);
        row(form, "Folder", folder);
        hand.addTo(form);
        Ask.Answer answer = Ask.ask(over, "New library", form, "Make the library", () -> {
            if (name.getText().isBlank()) {
                return Optional.of("Give the library a name.");
            }
            return folder.wrong().or(hand::wrong);
        });
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new NewLibrary(folder.path(), name.getText().strip(), hand.hand()));
    }

    static Optional<Path> openLibrary(Component over) {
        FolderField folder = new FolderField("library-folder");
        JPanel form = form("Open the folder of a library.");
        row(form, "Folder", folder);
        Ask.Answer answer = Ask.ask(over, "Open a library", form, "Open", folder::wrong);
        return answer == Ask.Answer.GIVEN_UP ? Optional.empty() : Optional.of(folder.path());
    }

    static Optional<FirstCopy> firstCopy(Component over, Hand before) {
        FolderField shared = new FolderField("shared-folder");
        FolderField folder = new FolderField("library-folder");
        HandFields hand = new HandFields(before);
        JPanel form = form("Make your own copy of a library that a partner shares through a folder.");
        row(form, "The shared folder", shared);
        row(form, "Your own folder", folder);
        hand.addTo(form);
        Ask.Answer answer = Ask.ask(
                over,
                "Copy from a partner",
                form,
                "Make the copy",
                () -> shared.wrong().or(folder::wrong).or(hand::wrong));
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new FirstCopy(shared.path(), folder.path(), hand.hand()));
    }

    static Optional<Hand> hand(Component over, String library, Hand before) {
        HandFields hand = new HandFields(before);
        JPanel form = form("Each version in \"" + library + "\" says who made it. You are asked this once.");
        hand.addTo(form);
        Ask.Answer answer = Ask.ask(over, "Who are you?", form, "That is me", hand::wrong);
        return answer == Ask.Answer.GIVEN_UP ? Optional.empty() : Optional.of(hand.hand());
    }

    private static JPanel form(String text) {
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]8[]"));
        form.add(Widgets.prose("dialog-text", text), "span 2, growx, wmin 420, wrap, gapbottom 8");
        return form;
    }

    private static void row(JPanel form, String word, JComponent part) {
        JLabel label = new JLabel(word);
        label.setLabelFor(part);
        form.add(label);
        form.add(part, "wrap");
    }

    private static JTextField field(String name, String text) {
        JTextField field = new JTextField(text, 30);
        field.setName(name);
        return field;
    }

    /** Name and address. */
    private static final class HandFields {
        private final JTextField name;
        private final JTextField address;

        HandFields(Hand before) {
            this.name = field("hand-name", before.name());
            this.address = field("hand-address", before.address());
        }

        void addTo(JPanel form) {
            row(form, "Your name", name);
            row(form, "Your mail address", address);
        }

        Optional<String> wrong() {
            if (name.getText().isBlank() || name.getText().matches(".*[<>\\n].*")) {
                return Optional.of("Say your name, without < and >; it stands beside every version that you make.");
            }
            if (address.getText().isBlank() || address.getText().matches(".*[<>\\s].*")) {
                return Optional.of("Say a mail address, or any word that tells you from another of your name, without"
                        + " blanks, < and >.");
            }
            return Optional.empty();
        }

        Hand hand() {
            return new Hand(name.getText().strip(), address.getText().strip());
        }
    }
}
