package platekeep.client.join;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Rectangle;
import java.util.List;
import java.util.function.IntConsumer;
import javax.swing.DefaultListModel;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import platekeep.client.ui.Look;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;

/** All that was found in a plate: what is to decide, then what was settled by itself. */
final class MatterList extends JList<Board.Matter> {
    private static final long serialVersionUID = 1L;

    private final DefaultListModel<Board.Matter> matters = new DefaultListModel<>();
    private boolean isShowing;

    MatterList(IntConsumer look) {
        setModel(matters);
        setName("join-matters");
        getAccessibleContext().setAccessibleName("To decide, and settled by itself");
        setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        setCellRenderer(new Cell());
        setOpaque(false);
        addListSelectionListener(e -> {
            if (!isShowing && getSelectedIndex() >= 0) {
                look.accept(getSelectedIndex());
            }
        });
    }

    void show(List<Board.Matter> shown, int selected) {
        isShowing = true;
        if (matters.size() != shown.size()) {
            matters.clear();
            matters.addAll(shown);
        } else {
            for (int i = 0; i < shown.size(); i++) {
                if (!matters.get(i).equals(shown.get(i))) {
                    matters.set(i, shown.get(i));
                }
            }
        }
        if (selected != getSelectedIndex()) {
            setSelectedIndex(selected);
        }
        if (selected >= 0) {
            ensureIndexIsVisible(selected);
        }
        isShowing = false;
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        boolean isOther = width != getWidth();
        super.setBounds(x, y, width, height);
        if (isOther) {
            // the cells wrap to the width, so their heights have to be asked for again
            setFixedCellHeight(10);
            setFixedCellHeight(-1);
        }
    }

    /** A sign for how it stands, the words, and over the first of a group its heading. */
    private final class Cell extends JPanel implements ListCellRenderer<Board.Matter> {
        private static final long serialVersionUID = 1L;

        private final JLabel group = Widgets.heading("");
        private final JLabel sign = new JLabel();
        private final JTextArea words = Widgets.prose("matter", "");
        private final JPanel line = new JPanel(new BorderLayout(8, 0));

        Cell() {
            super(new BorderLayout());
            setOpaque(false);
            group.setBorder(Widgets.air(12, 10, 4, 4));
            sign.setVerticalAlignment(JLabel.TOP);
            line.setBorder(Widgets.air(5, 10, 5, 8));
            line.add(sign, BorderLayout.WEST);
            line.add(words, BorderLayout.CENTER);
            add(group, BorderLayout.NORTH);
            add(line, BorderLayout.CENTER);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Board.Matter> from,
                Board.Matter value,
                int index,
                boolean isSelected,
                boolean hasFocus) {
            boolean isFirst = index == 0 || !matters.get(index - 1).group().equals(value.group());
            group.setVisible(isFirst);
            group.setText(value.group());
            line.setOpaque(isSelected);
            line.setBackground(Look.chosen());
            sign.setIcon(
                    switch (value.state()) {
                        case OPEN -> Sign.TROUBLE.icon(15, Look.trouble());
                        case DECIDED -> Sign.TICK.icon(15, Look.accent());
                        case IN, WHOLE -> Sign.TICK.icon(15, Look.faintInk());
                        case PARTLY -> Sign.MINUS.icon(15, Look.faintInk());
                        case OUT -> Sign.CLOSE.icon(15, Look.faintInk());
                    });
            words.setFont(from.getFont().deriveFont(from.getFont().getSize2D() - 0.5f));
            boolean isQuiet = value.state() == Board.State.IN || value.state() == Board.State.OUT;
            words.setForeground(isQuiet && !isSelected ? Look.faintInk() : Look.ink());
            String standing = value.standing().isEmpty()
                    ? ""
                    : "  ·\u00a0" + value.standing().replace(' ', '\u00a0');
            words.setText(value.words() + standing);
            words.setSize(Math.max(80, from.getWidth() - 41), Short.MAX_VALUE);
            getAccessibleContext().setAccessibleName(value.group() + ": " + value.words() + standing);
            return this;
        }
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 24;
    }
}
