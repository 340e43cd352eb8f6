package platekeep.client.gallery;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.List;
import java.util.Optional;
import javax.swing.AbstractListModel;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JScrollPane;
import javax.swing.ListSelectionModel;
import javax.swing.Timer;
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

    /** A window that is put away paints nothing; milliseconds after which it is no longer waited for. */
    private static final int PATIENCE = 1000;

    private final CardCell cell;
    private final transient Tasks tasks;
    private final transient Pictures pictures;
    private final Timer patience = new Timer(PATIENCE, e -> seen());
    private transient Optional<Runnable> waiting = Optional.empty();
    private int wanted;

    CardList(Tasks tasks, Thumbnails thumbnails, CardCell.Papers paper, int width) {
        this.wanted = width;
        this.tasks = tasks;
        this.pictures = new Pictures(tasks, thumbnails, this::repaint);
        this.cell = new CardCell(pictures, paper, picture(width));
        patience.setRepeats(false);
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

    /** Does something as soon as all cards on the screen are painted with their pictures, or after a while in any case. */
    void whenSeen(Runnable then) {
        if (waiting.isEmpty()) {
            patience.restart();
        }
        waiting = Optional.of(then);
        repaint();
    }

    private void seen() {
        Optional<Runnable> then = waiting;
        waiting = Optional.empty();
        patience.stop();
        then.ifPresent(Runnable::run);
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        if (waiting.isPresent() && getModel().getSize() > 0 && pictures.areAllThere()) {
            tasks.onEventThread(this::seen);
        }
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
