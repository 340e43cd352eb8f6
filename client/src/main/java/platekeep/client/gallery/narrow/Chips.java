package platekeep.client.gallery.narrow;

import java.awt.Color;
import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.FlowLayout;
import java.awt.Graphics;
import java.util.List;
import javax.swing.Icon;
import javax.swing.JButton;
import javax.swing.JPanel;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.find.Group;

/** What is chosen, each to be taken back by one press; in as many lines as it needs. */
public final class Chips extends JPanel {
    private static final long serialVersionUID = 1L;

    private final transient NarrowEars ears;
    private final JButton clear;
    private transient List<Section> shown = List.of();

    /**
     * @param all asks for everything again
     */
    public Chips(NarrowEars ears, Runnable all) {
        super(new Lines());
        this.ears = ears;
        this.clear = Widgets.button("gallery-clear", "Show all", all);
        setName("gallery-chips");
        setOpaque(false);
        setVisible(false);
    }

    /** Shows what is chosen; nothing where nothing is. */
    public void show(List<Section> sections) {
        setVisible(sections.stream().anyMatch(section -> !section.chosen().isEmpty()));
        if (sections.equals(shown) && getComponentCount() > 0) {
            return;
        }
        shown = sections;
        removeAll();
        for (Section section : sections) {
            section.chosen().forEach(value -> add(chip(section.group(), value)));
        }
        add(clear);
        revalidate();
        repaint();
    }

    private JButton chip(Group group, Section.Value value) {
        JButton chip = Widgets.button(
                "chip-" + group + "-" + value.value(),
                Wording.alone(group, value.value()),
                () -> ears.turn(group, value.value()));
        chip.setIcon(group == Group.COLOUR ? new Dot(Color.decode(value.value())) : Sign.CLOSE.icon(10));
        chip.setToolTipText("Take \"" + value.word() + "\" back");
        return Widgets.styled(chip, "arc: 999; margin: 2,8,2,8; background: $Platekeep.chosen");
    }

    /** A colour on a chip. */
    private record Dot(Color colour) implements Icon {
        @Override
        public void paintIcon(Component c, Graphics g, int x, int y) {
            g.setColor(colour);
            g.fillRect(x, y, getIconWidth(), getIconHeight());
        }

        @Override
        public int getIconWidth() {
            return 12;
        }

        @Override
        public int getIconHeight() {
            return 12;
        }
    }

    /** Lets parts flow into lines, and asks for the height that these need. */
    private static final class Lines extends FlowLayout {
        private static final long serialVersionUID = 1L;

        Lines() {
            super(FlowLayout.LEADING, 6, 4);
        }

        @Override
        public Dimension preferredLayoutSize(Container parts) {
            int width = parts.getParent() == null ? 0 : parts.getParent().getWidth() - 28;
            if (width <= 0) {
                return super.preferredLayoutSize(parts);
            }
            int x = 0;
            int line = 0;
            int height = getVgap();
            for (Component part : parts.getComponents()) {
                Dimension size = part.getPreferredSize();
                if (x > 0 && x + size.width + getHgap() > width) {
                    height += line + getVgap();
                    x = 0;
                    line = 0;
                }
                x += size.width + getHgap();
                line = Math.max(line, size.height);
            }
            return new Dimension(width, height + line + getVgap());
        }
    }
}
