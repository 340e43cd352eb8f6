package platekeep.client.ui;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JTextField;
import net.miginfocom.swing.MigLayout;

/** A folder, typed or chosen; it need not be there yet. */
public final class FolderField extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JTextField text = new JTextField(30);

    /** @param name of the field where the folder is typed; the button's has {@code -choose} behind it */
    public FolderField(String name) {
        super(new MigLayout("insets 0, fillx", "[grow, fill]6[]"));
        text.setName(name);
        add(text);
        add(Widgets.button(name + "-choose", "Choose…", this::choose));
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser(text.getText().isBlank() ? null : text.getText());
        chooser.setFileSelectionMode(JFileChooser.DIRECTORIES_ONLY);
        if (chooser.showDialog(this, "Choose this folder") == JFileChooser.APPROVE_OPTION) {
            text.setText(chooser.getSelectedFile().getPath());
        }
    }

    /** What is not right yet, in a sentence; empty when {@link #path} can be asked. */
    public Optional<String> wrong() {
        if (text.getText().isBlank()) {
            return Optional.of("Choose a folder.");
        }
        try {
            return Path.of(text.getText().strip()).isAbsolute()
                    ? Optional.empty()
                    : Optional.of("Give the folder from its root on, or choose it with the button.");
        } catch (InvalidPathException e) {
            return Optional.of("\"" + text.getText() + "\" cannot be the name of a folder on this computer.");
        }
    }

    /** The folder. */
    public Path path() {
        return Path.of(text.getText().strip()).normalize();
    }
}
