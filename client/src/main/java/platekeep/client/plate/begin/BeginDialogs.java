package platekeep.client.plate.begin;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.ImageIcon;
import javax.swing.JComboBox;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.filechooser.FileNameExtensionFilter;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Thumbnails;
import platekeep.model.plate.Plate;

/** The questions before a plate is begun. */
final class BeginDialogs implements BeginView {
    private static final Dimension PICTURE = new Dimension(420, 260);

    private final Component over;
    private Optional<FitDialog> fit = Optional.empty();

    /**
     * @param over where the questions are asked
     */
    BeginDialogs(Component over) {
        this.over = over;
    }

    @Override
    public Optional<String> clipboard() {
        try {
            return Optional.of(
                    (String) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor));
        } catch (UnsupportedFlavorException | IOException | IllegalStateException e) {
            return Optional.empty();
        }
    }

    @Override
    public Optional<Path> askFile(Kind kind) {
        JFileChooser chooser = new JFileChooser();
        boolean isPicture = kind == Kind.PICTURE;
        chooser.setDialogTitle(isPicture ? "Begin from a picture" : "Begin from a text file");
        chooser.setFileFilter(
                isPicture
                        ? new FileNameExtensionFilter("Pictures (PNG, JPEG)", "png", "jpg", "jpeg")
                        : new FileNameExtensionFilter("Text (txt, csv)", "txt", "csv", "text", "tsv"));
        return chooser.showDialog(over, "Take it") == JFileChooser.APPROVE_OPTION
                ? Optional.of(chooser.getSelectedFile().toPath())
                : Optional.empty();
    }

    @Override
    public Optional<Named> askNamed(Plate made, List<String> libraries) {
        Naming naming = new Naming(libraries);
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]8[]"));
        form.add(new JLabel(new ImageIcon(Thumbnails.draw(made, PICTURE))), "span 2, wrap, gapbottom 8");
        form.add(
                new JLabel(made.pleats().orElseThrow().count() + " pleats, "
                        + made.rows().size() + " rows, "
                        + made.palette().entries().size() + " colours"),
                "span 2, wrap, gapbottom 8");
        naming.addTo(form);
        return Ask.ask(over, "New plate from text", form, "Begin drawing", naming::wrong) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(naming.named());
    }

    @Override
    public Optional<FitAnswer> askFit(
            Picture picture, List<String> palettes, List<String> libraries, Consumer<Fit> wanted) {
        FitDialog dialog = new FitDialog(picture, palettes, new Naming(libraries), wanted);
        fit = Optional.of(dialog);
        Optional<FitAnswer> answer = dialog.ask(over);
        fit = Optional.empty();
        return answer;
    }

    @Override
    public Runnable preview(Plate plate) {
        BufferedImage drawn = Thumbnails.draw(plate, FitDialog.PREVIEW);
        return () -> fit.ifPresent(dialog -> dialog.show(plate, drawn));
    }

    /** Title and library. */
    static final class Naming {
        private final JTextField title = new JTextField(18);
        private final JComboBox<String> library;

        Naming(List<String> libraries) {
            title.setName("begin-title");
            library = new JComboBox<>(libraries.toArray(new String[0]));
            library.setName("begin-library");
        }

        void addTo(JPanel form) {
            JLabel word = new JLabel("Title");
            word.setLabelFor(title);
            form.add(word);
            form.add(title, "wrap");
            if (library.getItemCount() > 1) {
                JLabel where = new JLabel("Library");
                where.setLabelFor(library);
                form.add(where);
                form.add(library, "wrap");
            }
        }

        Optional<String> wrong() {
            return title.getText().isBlank() ? Optional.of("Give the plate a title.") : Optional.empty();
        }

        Named named() {
            return new Named(title.getText().strip(), library.getSelectedIndex());
        }
    }
}
