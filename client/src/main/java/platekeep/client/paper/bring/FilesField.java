package platekeep.client.paper.bring;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javax.swing.JFileChooser;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.filechooser.FileNameExtensionFilter;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Widgets;

/** Files and folders, typed or chosen, with a bar between them. */
final class FilesField extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final String BAR = " | ";

    private final JTextField text = new JTextField(34);

    FilesField() {
        super(new MigLayout("insets 0, fillx", "[grow, fill]6[]"));
        text.setName("paper-files");
        text.getAccessibleContext().setAccessibleName("Files or a folder");
        add(text);
        add(Widgets.button("paper-choose", "Choose…", this::choose));
    }

    JTextField text() {
        return text;
    }

    private void choose() {
        JFileChooser chooser = new JFileChooser(
                text.getText().isBlank()
                        ? null
                        : new File(text.getText().split("\\|")[0].strip()));
        chooser.setFileSelectionMode(JFileChooser.FILES_AND_DIRECTORIES);
        chooser.setMultiSelectionEnabled(true);
        chooser.setFileFilter(new FileNameExtensionFilter("JPEG and PNG pictures, and folders", "jpg", "jpeg", "png"));
        if (chooser.showDialog(this, "Choose these") == JFileChooser.APPROVE_OPTION) {
            text.setText(
                    Arrays.stream(chooser.getSelectedFiles()).map(File::getPath).collect(Collectors.joining(BAR)));
        }
    }

    void put(List<Path> files) {
        text.setText(files.stream().map(Path::toString).collect(Collectors.joining(BAR)));
    }

    /** What is not right yet, in a sentence. */
    Optional<String> wrong() {
        if (text.getText().isBlank()) {
            return Optional.of("Choose the pictures, or the folder in which they lie.");
        }
        try {
            return files().stream().allMatch(Path::isAbsolute)
                    ? Optional.empty()
                    : Optional.of("Give each file from its root on, or choose them with the button.");
        } catch (InvalidPathException e) {
            return Optional.of("\"" + e.getInput() + "\" cannot be the name of a file on this computer.");
        }
    }

    List<Path> files() {
        return Arrays.stream(text.getText().split("\\|"))
                .map(String::strip)
                .filter(file -> !file.isEmpty())
                .map(Path::of)
                .toList();
    }
}
