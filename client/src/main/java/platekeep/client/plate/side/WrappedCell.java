package platekeep.client.plate.side;

import java.awt.Component;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import platekeep.client.ui.Look;
import platekeep.client.ui.Widgets;

/** A text in a list that wraps where the list ends. */
final class WrappedCell implements ListCellRenderer<String> {
    private final JTextArea text = Widgets.prose("wrapped", "");

    WrappedCell() {
        text.setOpaque(true);
        text.setBorder(Widgets.air(4, 6, 4, 6));
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends String> list, String value, int index, boolean isSelected, boolean hasFocus) {
        text.setFont(list.getFont().deriveFont(list.getFont().getSize2D() - 1f));
        text.setBackground(isSelected ? Look.chosen() : list.getBackground());
        text.setForeground(list.getForeground());
        text.setText(value);
        text.setSize(Math.max(100, list.getParent().getWidth()), Short.MAX_VALUE);
        return text;
    }
}
