package platekeep.client.plate.ask;

import java.awt.Color;
import java.awt.Component;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.JButton;
import javax.swing.JColorChooser;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import javax.swing.SpinnerNumberModel;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.ThreadSwatch;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Colour;

/** Asks for a colour: name, shade, strands and floss, or one of the series to begin from. */
public final class ColourDialog {
    private static final String HEX = "#?[0-9a-fA-F]{6}";
    private static final int A_ROW = 8;

    private final Colour before;
    private final List<Colour> series;
    private final JTextField name;
    private final JTextField hex;
    private final JSpinner strands;
    private final JTextField floss;
    private final ThreadSwatch swatch;

    public ColourDialog(Colour before, List<Colour> series) {
        this.before = before;
        this.series = series;
        this.name = Forms.field("colour-name", before.name());
        this.hex = Forms.field("colour-hex", before.srgb());
        this.strands = new JSpinner(new SpinnerNumberModel(before.strands(), 1, 6, 1));
        strands.setName("colour-strands");
        this.floss = Forms.field("colour-floss", before.floss().orElse(""));
        this.swatch = new ThreadSwatch(before.rgb());
        hex.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                rgb().ifPresent(swatch::show);
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                rgb().ifPresent(swatch::show);
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // the style of plain text does not change
            }
        });
    }

    public Optional<Colour> ask(Component over, String title) {
        if (Ask.ask(over, title, form(), "Take it", this::wrong) == Ask.Answer.GIVEN_UP) {
            return Optional.empty();
        }
        return Optional.of(new Colour(
                name.getText().strip(),
                String.format(Locale.ROOT, "#%06X", rgb().orElseThrow()),
                (Integer) strands.getValue(),
                Optional.of(floss.getText().strip()).filter(text -> !text.isEmpty()),
                before.unknown()));
    }

    private JPanel form() {
        JPanel form = Forms.form();
        Forms.row(form, "Name", name);
        JPanel shade = new JPanel(new MigLayout("insets 0, fillx", "[grow, fill]8[60!]8[]"));
        shade.add(hex);
        shade.add(swatch, "h 30!");
        shade.add(Widgets.button("colour-choose", "Choose…", this::choose));
        Forms.row(form, "Shade, as #RRGGBB", shade);
        Forms.row(form, "Strands", strands);
        Forms.row(form, "Floss", floss);
        if (!series.isEmpty()) {
            JPanel swatches = new JPanel(new MigLayout("insets 0, gap 2, wrap " + A_ROW));
            series.forEach(colour -> swatches.add(swatch(colour)));
            Forms.row(form, "From the series", swatches);
        }
        return form;
    }

    private JButton swatch(Colour colour) {
        JButton button = Widgets.iconButton("series-" + colour.name(), new Shade(colour.rgb()), words(colour), () -> {
            name.setText(colour.name());
            hex.setText(colour.srgb());
            strands.setValue(colour.strands());
            floss.setText(colour.floss().orElse(""));
        });
        return Widgets.styled(button, "margin: 2,2,2,2");
    }

    private static String words(Colour colour) {
        return colour.name() + " " + colour.srgb()
                + colour.floss().map(f -> ", " + f).orElse("");
    }

    private Optional<String> wrong() {
        if (name.getText().isBlank()) {
            return Optional.of("Give the colour a name.");
        }
        return rgb().isEmpty()
                ? Optional.of("\"" + hex.getText() + "\" is no shade: write # and six digits of 0-9 and A-F.")
                : Optional.empty();
    }

    private void choose() {
        Color chosen = JColorChooser.showDialog(hex, "Choose a shade", new Color(rgb().orElse(0x808080)));
        if (chosen != null) {
            hex.setText(String.format(Locale.ROOT, "#%06X", chosen.getRGB() & 0xFFFFFF));
        }
    }

    private Optional<Integer> rgb() {
        String text = hex.getText().strip();
        return text.matches(HEX) ? Optional.of(Integer.parseInt(text.replace("#", ""), 16)) : Optional.empty();
    }
}
