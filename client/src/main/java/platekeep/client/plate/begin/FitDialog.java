package platekeep.client.plate.begin;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.ImageIcon;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;

/** How a picture becomes a chart, with what comes of each setting shown beside it at once. */
final class FitDialog {
    static final Dimension PREVIEW = new Dimension(440, 400);
    private static final int FIRST_PLEATS = 80;
    private static final int FIRST_COLOURS = 8;

    private final Picture picture;
    private final BeginDialogs.Naming naming;
    private final Consumer<BeginView.Fit> wanted;
    private final JSpinner pleats = Widgets.number("fit-pleats", FIRST_PLEATS, 3, Pleats.MOST_POSITIONS + 1);
    private final JSpinner rows;
    private final JCheckBox proportions = new JCheckBox("Keep the picture's proportions", true);
    private final JComboBox<String> palette = new JComboBox<>();
    private final JSpinner colours = Widgets.number("fit-colours", FIRST_COLOURS, 1, Palette.KEYS.length());
    private final JSpinner least = Widgets.number("fit-least", 3, 1, 50);
    private final JCheckBox ground = new JCheckBox("Leave out what lies around the figure", true);
    private final JLabel preview = new JLabel();
    private final JLabel words = Widgets.faint("fit-words", " ");
    private boolean isSetting;

    FitDialog(Picture picture, List<String> palettes, BeginDialogs.Naming naming, Consumer<BeginView.Fit> wanted) {
        this.picture = picture;
        this.naming = naming;
        this.wanted = wanted;
        this.rows = Widgets.number("fit-rows", PictureFit.rowsFor(picture, FIRST_PLEATS), 1, Plate.MOST_ROWS);
        palette.setName("fit-palette");
        palette.addItem("the picture's own");
        palettes.forEach(name -> palette.addItem("those of " + name));
        palette.setPrototypeDisplayValue("those of a plate with a title");
        proportions.setName("fit-proportions");
        ground.setName("fit-ground");
        preview.setName("fit-preview");
        preview.setPreferredSize(PREVIEW);
        pleats.addChangeListener(e -> keepProportions());
        proportions.addActionListener(e -> keepProportions());
        List.of(rows, colours, least).forEach(spinner -> spinner.addChangeListener(e -> tell()));
        palette.addActionListener(e -> {
            colours.setEnabled(palette.getSelectedIndex() == 0);
            tell();
        });
        ground.addActionListener(e -> tell());
        rows.setEnabled(false);
    }

    private void keepProportions() {
        rows.setEnabled(!proportions.isSelected());
        if (proportions.isSelected()) {
            isSetting = true;
            rows.setValue(PictureFit.rowsFor(picture, value(pleats)));
            isSetting = false;
        }
        tell();
    }

    private void tell() {
        if (!isSetting) {
            wanted.accept(fit());
        }
    }

    private BeginView.Fit fit() {
        return new BeginView.Fit(
                value(pleats),
                value(rows),
                value(colours),
                Optional.of(palette.getSelectedIndex() - 1).filter(n -> n >= 0),
                value(least),
                ground.isSelected() ? PictureFit.Ground.LEFT_OUT : PictureFit.Ground.WORKED);
    }

    Optional<BeginView.FitAnswer> ask(Component over) {
        JPanel all = new JPanel(new MigLayout("insets 0, fill", "[grow, fill]16[]", "[grow, fill]"));
        all.add(preview);
        all.add(form(), "aligny top");
        tell();
        return Ask.ask(over, "New plate from a picture", all, "Begin drawing", naming::wrong) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new BeginView.FitAnswer(naming.named(), fit()));
    }

    private JPanel form() {
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]8[]"));
        naming.addTo(form);
        row(form, "Pleats", pleats);
        row(form, "Rows", rows);
        form.add(proportions, "skip, wrap");
        row(form, "Colours", palette);
        row(form, "How many of them", colours);
        row(form, "Clean patches under", least);
        form.add(Widgets.faint("fit-least-hint", "cables; each takes the colour around it."), "skip, wrap");
        form.add(ground, "skip, wrap");
        form.add(words, "skip, wrap, gaptop 8");
        return form;
    }

    private static void row(JPanel form, String word, JComponent part) {
        JLabel label = new JLabel(word);
        label.setLabelFor(part);
        form.add(label);
        form.add(part, "wrap");
    }

    /** Shows what the settings give. */
    void show(Plate plate, BufferedImage drawn) {
        preview.setIcon(new ImageIcon(drawn));
        words.setText(plate.pleats().orElseThrow().count() + " pleats, "
                + plate.rows().size() + " rows, " + plate.palette().entries().size() + " colours");
    }

    private static int value(JSpinner spinner) {
        return (Integer) spinner.getValue();
    }
}
