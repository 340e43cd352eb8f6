package platekeep.client.gallery.narrow;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javax.swing.JButton;
import javax.swing.JColorChooser;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Widgets;
import platekeep.model.find.Group;

/** The colours that plates have, one swatch for all that look alike, and any other colour to be looked for. */
final class ColourGrid extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int ACROSS = 7;
    private static final int MOST = 42;

    private final transient NarrowEars ears;
    private final transient List<Swatch> swatches = new ArrayList<>();
    private final JPanel grid = Widgets.clear(new MigLayout("insets 0, gap 3, hidemode 3, wrap " + ACROSS));
    private final JButton other;

    ColourGrid(NarrowEars ears) {
        super(new MigLayout("insets 0, gap 2, hidemode 3", "[grow, left]"));
        this.ears = ears;
        setOpaque(false);
        setName("narrow-colours");
        add(grid, "wrap");
        other = Widgets.styled(
                Widgets.button("narrow-other-colour", "Another colour…", this::ask),
                "buttonType: borderless; font: -1; foreground: $Platekeep.accent; margin: 1,2,1,2");
        add(other);
    }

    private void ask() {
        Color asked = JColorChooser.showDialog(this, "Plates with something like this", new Color(0x4F7A3A), false);
        if (asked != null) {
            ears.turn(Group.COLOUR, String.format(Locale.ROOT, "#%06X", asked.getRGB() & 0xFFFFFF));
        }
    }

    void show(List<Section.Value> values) {
        List<Section.Value> first = new ArrayList<>(values.subList(0, Math.min(MOST, values.size())));
        values.stream().skip(MOST).filter(Section.Value::chosen).forEach(first::add);
        for (int i = swatches.size(); i < first.size(); i++) {
            Swatch swatch = new Swatch();
            swatches.add(swatch);
            grid.add(swatch);
        }
        for (int i = 0; i < swatches.size(); i++) {
            swatches.get(i).setVisible(i < first.size());
            if (i < first.size()) {
                swatches.get(i).show(first.get(i));
            }
        }
        setVisible(!values.isEmpty());
    }

    /** A colour to be turned on and off. */
    private final class Swatch extends JToggleButton {
        private static final long serialVersionUID = 1L;

        private transient Section.Value value = new Section.Value("#000000", "", 0, false);

        Swatch() {
            setPreferredSize(new Dimension(24, 24));
            setBorder(null);
            setContentAreaFilled(false);
            addActionListener(e -> ears.turn(Group.COLOUR, value.value()));
        }

        void show(Section.Value newValue) {
            value = newValue;
            setName("narrow-COLOUR-" + value.value());
            setSelected(value.chosen());
            String plates = value.count() == 1 ? "1 plate" : value.count() + " plates";
            setToolTipText("Something like " + value.value() + ": " + plates);
            getAccessibleContext().setAccessibleName("Like " + value.value() + ", " + plates);
            repaint();
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            PlatePainter.smooth(g);
            int inset = isSelected() ? 4 : 2;
            g.setColor(Color.decode(value.value()));
            g.fillRoundRect(inset, inset, getWidth() - 2 * inset, getHeight() - 2 * inset, 6, 6);
            g.setColor(Look.edge());
            g.drawRoundRect(inset, inset, getWidth() - 2 * inset - 1, getHeight() - 2 * inset - 1, 6, 6);
            if (isSelected() || isFocusOwner()) {
                g.setColor(isFocusOwner() ? Look.accent() : Look.ink());
                g.setStroke(new java.awt.BasicStroke(2f));
                g.drawRoundRect(1, 1, getWidth() - 3, getHeight() - 3, 8, 8);
            }
            g.dispose();
        }
    }
}
