package platekeep.client.compare;

import java.awt.Component;
import javax.swing.JList;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import platekeep.client.ui.Look;
import platekeep.client.ui.Widgets;

/** A change in words, wrapped to the width of the list; the words are shown as they are, never as markup. */
final class ChangeCell implements ListCellRenderer<String> {
    private final JTextArea text = Widgets.prose("compare-change", "");

    ChangeCell() {
        text.setBorder(Widgets.air(7, 12, 7, 12));
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends String> list, String words, int index, boolean isSelected, boolean hasFocus) {
        text.setFont(list.getFont());
        text.setText(words);
        text.setOpaque(isSelected);
        text.setBackground(Look.chosen());
        text.setForeground(Look.ink());
        int width =
                list.getParent() == null ? list.getWidth() : list.getParent().getWidth();
        text.setSize(Math.max(1, width), Short.MAX_VALUE);
        return text;
    }
}
