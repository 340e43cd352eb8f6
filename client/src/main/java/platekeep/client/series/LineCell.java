package platekeep.client.series;

import java.awt.Component;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListCellRenderer;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Look;
import platekeep.client.ui.Widgets;

/** A series in the list: its title, and below it how many plates it has and in which library. */
final class LineCell extends JPanel implements ListCellRenderer<SeriesState.Line> {
    private static final long serialVersionUID = 1L;

    private final JLabel title = Widgets.label("series-line-title", "");
    private final JLabel words = Widgets.faint("series-line-words", "");
    private final JLabel library = Widgets.faint("series-line-library", "");

    LineCell() {
        super(new MigLayout("insets 7 12 7 10, fillx, wrap 1, gap 1, hidemode 3", "[grow, fill]"));
        add(title, "wmin 0");
        add(words, "wmin 0");
        add(library, "wmin 0");
    }

    @Override
    public Component getListCellRendererComponent(
            JList<? extends SeriesState.Line> list,
            SeriesState.Line value,
            int index,
            boolean isSelected,
            boolean cellHasFocus) {
        title.setFont(list.getFont().deriveFont(java.awt.Font.BOLD));
        title.setForeground(Look.ink());
        title.setText(value.title());
        words.setText(value.words());
        library.setText(value.library());
        library.setVisible(!value.library().isEmpty());
        setBackground(isSelected ? Look.chosen() : list.getBackground());
        setOpaque(true);
        setToolTipText(value.title());
        return this;
    }
}
