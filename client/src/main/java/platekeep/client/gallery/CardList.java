package platekeep.client.gallery;

import java.awt.Dimension;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import javax.swing.AbstractListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import platekeep.client.task.Tasks;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;

/** The plates as cards, as many beside each other as the wanted size allows. */
final class CardList extends JList<Card> {
    private static final long serialVersionUID = 1L;

    static final int SMALLEST = 110;
    static final int LARGEST = 420;
    private static final int SIDES = 22;

    private final CardCell cell;
    private int wanted;

    CardList(Tasks tasks, Thumbnails thumbnails, CardCell.Papers paper, int width) {
        this.wanted = width;
        this.cell = new CardCell(new Pictures(tasks, thumbnails, this::repaint), paper, picture(width));
        setName("gallery-plates");
        setLayoutOrientation(JList.HORIZONTAL_WRAP);
        setVisibleRowCount(-1);
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setCellRenderer(cell);
        setBorder(Widgets.air(2, 10, 10, 10));
        setOpaque(false);
        getAccessibleContext().setAccessibleName("Plates");
        setModel(new Shown(List.of()));
    }

    private static Dimension picture(int width) {
        return new Dimension(width, width * 3 / 4);
    }

    /** Itself in a scroll pane that keeps the cards as wide as they should be. */
    JComponent scrolled() {
        JScrollPane scroll = Widgets.scroll("gallery-scroll", this);
        scroll.getViewport().addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent e) {
                resizeCards();
            }
        });
        return scroll;
    }

    void wanted(int width) {
        wanted = width;
        resizeCards();
    }

    void show(List<Card> cards) {
        setModel(new Shown(cards));
    }

    /** Makes as many columns as the wanted size allows, and the cards just so wide that they fill the width. */
    private void resizeCards() {
        int around = cell.cellSize(getFontMetrics(getFont())).width - cell.pictureWidth();
        int across = getParent() == null ? 0 : getParent().getWidth() - SIDES;
        int columns = Math.max(1, Math.round(across / (float) (wanted + around)));
        int width = across <= 0 ? wanted : Math.max(SMALLEST, across / columns - around);
        cell.pictureSize(picture(width));
        Dimension one = cell.cellSize(getFontMetrics(getFont()));
        if (getFixedCellWidth() != one.width || getFixedCellHeight() != one.height) {
            setFixedCellWidth(one.width);
            setFixedCellHeight(one.height);
        }
    }

    /** A list that is there as a whole. */
    private static final class Shown extends AbstractListModel<Card> {
        private static final long serialVersionUID = 1L;

        private final transient List<Card> cards;

        Shown(List<Card> cards) {
            this.cards = cards;
        }

        @Override
        public int getSize() {
            return cards.size();
        }

        @Override
        public Card getElementAt(int index) {
            return cards.get(index);
        }
    }
}
