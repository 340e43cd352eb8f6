package platekeep.client.plate.picture;

import java.awt.Component;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;
import platekeep.model.draw.Drawing;

/** Asks what a picture is to show, how large, and where it goes. */
final class PictureDialog implements PictureView {
    private static final int FIRST_PLEAT = 12;

    private final Component over;

    /**
     * @param over where the questions are asked
     */
    PictureDialog(Component over) {
        this.over = over;
    }

    @Override
    public Optional<Wanted> ask(Drawing drawing) {
        JComboBox<String> format = new JComboBox<>();
        format.setName("picture-format");
        for (Format one : Format.values()) {
            format.addItem(one.words());
        }
        JSpinner pleat = Widgets.number("picture-pleat", FIRST_PLEAT, 2, 64);
        JLabel size = Widgets.faint("picture-size", " ");
        Runnable tell = () -> size.setText(words(drawing, wanted(format, pleat)));
        format.addActionListener(e -> tell.run());
        pleat.addChangeListener(e -> tell.run());
        tell.run();
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]8[]"));
        row(form, "Show", format);
        row(form, "Dots across a pleat", pleat);
        form.add(size, "skip, wrap");
        Ask.Answer answer = Ask.ask(
                over,
                "Save a picture",
                form,
                "Choose the file…",
                () -> PicturePresenter.tooLarge(drawing, wanted(format, pleat)));
        return answer == Ask.Answer.GIVEN_UP ? Optional.empty() : Optional.of(wanted(format, pleat));
    }

    private static Wanted wanted(JComboBox<String> format, JSpinner pleat) {
        return new Wanted(Format.values()[format.getSelectedIndex()], (Integer) pleat.getValue());
    }

    private static String words(Drawing drawing, Wanted wanted) {
        return PlateImage.size(drawing, wanted.pleat()) + (wanted.format() == Format.CHART_LINES ? " units" : " dots");
    }

    private static void row(JPanel form, String word, JComponent part) {
        JLabel label = new JLabel(word);
        label.setLabelFor(part);
        form.add(label);
        form.add(part, "wrap");
    }

    @Override
    public Optional<Path> askFile(String name) {
        JFileChooser chooser = new JFileChooser();
        chooser.setDialogTitle("Save a picture");
        chooser.setSelectedFile(new java.io.File(name));
        if (chooser.showDialog(over, "Save") != JFileChooser.APPROVE_OPTION) {
            return Optional.empty();
        }
        Path file = chooser.getSelectedFile().toPath();
        return !Files.exists(file) || mayReplace(file) ? Optional.of(file) : Optional.empty();
    }

    private boolean mayReplace(Path file) {
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[grow, fill]"));
        form.add(
                Widgets.prose(
                        "picture-replace",
                        "\"" + file.getFileName() + "\" is there already. Put this one in its place?"),
                "growx, wmin 380");
        return Ask.ask(over, "Save a picture", form, "Put it in its place", Optional::empty) == Ask.Answer.YES;
    }
}
