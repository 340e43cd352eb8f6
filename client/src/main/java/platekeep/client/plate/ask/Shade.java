package platekeep.client.plate.ask;

import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics;
import java.util.Optional;
import java.util.function.IntFunction;
import javax.swing.DefaultListCellRenderer;
import javax.swing.Icon;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;

/** A bar of a shade, to stand on a button or beside a name. */
record Shade(int rgb) implements Icon {
    private static final int UNKNOWN = 0x808080;

    /** Puts the shade of each colour beside its name in a box. */
    static void beside(JComboBox<String> box, IntFunction<Optional<Integer>> shades) {
        box.setRenderer(new DefaultListCellRenderer() {
            private static final long serialVersionUID = 1L;

            @Override
            public Component getListCellRendererComponent(
                    JList<?> list, Object value, int index, boolean isSelected, boolean hasFocus) {
                JLabel label = (JLabel) super.getListCellRendererComponent(list, value, index, isSelected, hasFocus);
                int at = index < 0 ? box.getSelectedIndex() : index;
                label.setIcon(at < 0 ? null : shades.apply(at).map(Shade::new).orElse(null));
                label.setIconTextGap(8);
                return label;
            }
        });
    }

    @Override
    public void paintIcon(Component c, Graphics g, int x, int y) {
        g.setColor(new Color(rgb));
        g.fillRoundRect(x, y, getIconWidth(), getIconHeight(), 8, 8);
        g.setColor(new Color(UNKNOWN));
        g.drawRoundRect(x, y, getIconWidth() - 1, getIconHeight() - 1, 8, 8);
    }

    @Override
    public int getIconWidth() {
        return 30;
    }

    @Override
    public int getIconHeight() {
        return 16;
    }
}
