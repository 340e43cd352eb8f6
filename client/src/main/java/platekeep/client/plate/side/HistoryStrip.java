package platekeep.client.plate.side;

import java.awt.BasicStroke;
import java.awt.BorderLayout;
import java.awt.Color;
import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import javax.swing.ListCellRenderer;
import javax.swing.ListSelectionModel;
import platekeep.client.ui.Look;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Texts;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Plate;

/** The versions of a plate as a strip of pictures, newest first, each with its day, hand, reason and names. */
public final class HistoryStrip extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final Dimension PICTURE = new Dimension(112, 84);
    private static final Dimension CELL = new Dimension(288, 106);

    private final DefaultListModel<Item> model = new DefaultListModel<>();
    private final JList<Item> list = new JList<>(model);
    private final transient Ears ears;
    private transient List<Item> shown = List.of();

    /** What can be asked for, by version ids. */
    public interface Ears {
        void lookAt(String versionId);

        void compare(String versionId, String otherVersionId);

        void name(String versionId);
    }

    /**
     * A version.
     *
     * @param plate empty where it was put away
     * @param first day, and the names given to it
     * @param second by whom
     * @param third why
     */
    public record Item(
            String versionId, String content, Optional<Plate> plate, String first, String second, String third) {}

    public HistoryStrip(Pictures pictures, Ears ears) {
        super(new BorderLayout());
        this.ears = ears;
        setName("history");
        list.setName("history-list");
        list.setLayoutOrientation(JList.HORIZONTAL_WRAP);
        list.setVisibleRowCount(1);
        list.setFixedCellWidth(CELL.width);
        list.setFixedCellHeight(CELL.height);
        list.setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        list.setCellRenderer(new Cell(pictures));
        list.setOpaque(false);
        list.getAccessibleContext().setAccessibleName("History");
        Widgets.onOwnKey(list, "ENTER", this::lookAtChosen);
        list.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                if (e.getClickCount() == 1 && !e.isControlDown() && !e.isShiftDown() && e.getButton() == 1) {
                    lookAtChosen();
                }
            }

            @Override
            public void mousePressed(MouseEvent e) {
                popup(e);
            }

            @Override
            public void mouseReleased(MouseEvent e) {
                popup(e);
            }
        });
        add(Widgets.scroll("history-scroll", list), BorderLayout.CENTER);
        setPreferredSize(new Dimension(10, CELL.height + 14));
        setBorder(Widgets.edge(1, 0, 0, 0));
    }

    private void popup(MouseEvent e) {
        int at = list.locationToIndex(e.getPoint());
        if (!e.isPopupTrigger() || at < 0) {
            return;
        }
        if (!list.isSelectedIndex(at)) {
            list.setSelectedIndex(at);
        }
        JPopupMenu menu = new JPopupMenu();
        menu.add(Widgets.action("Look at this version", this::lookAtChosen));
        menu.add(Widgets.action("Name this version…", this::nameChosen));
        if (list.getSelectedIndices().length == 2) {
            menu.add(Widgets.action("Compare the two", this::compareChosen));
        }
        menu.show(list, e.getX(), e.getY());
    }

    /** Looks at the version that is chosen. */
    public void lookAtChosen() {
        Optional.ofNullable(list.getSelectedValue()).ifPresent(item -> ears.lookAt(item.versionId()));
    }

    /** Asks for a name for the version that is chosen, the newest where none is. */
    public void nameChosen() {
        Optional.ofNullable(list.getSelectedValue())
                .or(() -> shown.stream().findFirst())
                .ifPresent(item -> ears.name(item.versionId()));
    }

    /** Compares the two versions that are chosen; one chosen: with the one before it. */
    public void compareChosen() {
        List<Item> chosen = list.getSelectedValuesList();
        if (chosen.size() == 2) {
            ears.compare(chosen.get(0).versionId(), chosen.get(1).versionId());
        } else if (chosen.size() < 2 && shown.size() > 1) {
            int at = Math.max(0, Math.min(shown.size() - 2, list.getSelectedIndex()));
            ears.compare(shown.get(at).versionId(), shown.get(at + 1).versionId());
        }
    }

    /** Puts the focus here. */
    public void enter() {
        if (list.getSelectedIndex() < 0 && !shown.isEmpty()) {
            list.setSelectedIndex(0);
        }
        list.requestFocusInWindow();
    }

    /** Shows versions, and which of them is looked at. */
    public void show(List<Item> items, Optional<String> lookedAt) {
        if (!items.equals(shown)) {
            shown = items;
            model.clear();
            model.addAll(items);
        }
        ((Cell) list.getCellRenderer()).lookedAt = lookedAt;
        list.repaint();
    }

    /** A picture with three lines beside it. */
    private static final class Cell extends JPanel implements ListCellRenderer<Item> {
        private static final long serialVersionUID = 1L;

        private final transient Pictures pictures;
        private transient Optional<String> lookedAt = Optional.empty();
        private transient Item item;
        private boolean isChosen;

        Cell(Pictures pictures) {
            this.pictures = pictures;
            setOpaque(false);
        }

        @Override
        public Component getListCellRendererComponent(
                JList<? extends Item> from, Item value, int index, boolean isSelected, boolean hasFocus) {
            item = value;
            isChosen = isSelected;
            setFont(from.getFont());
            // what the cell has no room for
            setToolTipText(value.first() + "  ·  " + value.third());
            getAccessibleContext().setAccessibleName(value.first() + ", " + value.second() + ", " + value.third());
            return this;
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            PlatePainter.smooth(g);
            boolean isLooked = lookedAt.filter(item.versionId()::equals).isPresent();
            RoundRectangle2D ground = new RoundRectangle2D.Double(3.5, 3.5, getWidth() - 7, getHeight() - 7, 10, 10);
            g.setColor(isChosen ? Look.chosen() : Look.card());
            g.fill(ground);
            g.setColor(isLooked || isChosen ? Look.accent() : Look.edge());
            g.setStroke(new BasicStroke(isLooked ? 2 : 1));
            g.draw(ground);
            paintPicture(g);
            paintText(g);
            g.dispose();
        }

        private void paintPicture(Graphics2D g) {
            double zoom = g.getTransform().getScaleX();
            Dimension dots =
                    new Dimension((int) Math.ceil(PICTURE.width * zoom), (int) Math.ceil(PICTURE.height * zoom));
            Optional<BufferedImage> picture = item.plate().flatMap(p -> pictures.of(item.content(), p, dots));
            if (picture.isPresent()) {
                g.drawImage(picture.get(), 10, 10, PICTURE.width, PICTURE.height, null);
            } else {
                g.setColor(new Color(Look.cloth()));
                g.fillRect(10, 10, PICTURE.width, PICTURE.height);
            }
        }

        private void paintText(Graphics2D g) {
            int x = PICTURE.width + 20;
            int width = getWidth() - x - 12;
            Font small = getFont().deriveFont(getFont().getSize2D() - 1f);
            FontMetrics metrics = g.getFontMetrics(small);
            int y = 10 + metrics.getAscent();
            g.setFont(small.deriveFont(Font.BOLD));
            g.setColor(Look.ink());
            g.drawString(Texts.cut(item.first(), g.getFontMetrics(), width), x, y);
            g.setFont(small);
            g.setColor(Look.faintInk());
            g.drawString(Texts.cut(item.second(), metrics, width), x, y + metrics.getHeight());
            g.setColor(Look.ink());
            int line = y + 2 * metrics.getHeight() + 2;
            for (String part : Texts.wrapped(item.third(), metrics, width, 3)) {
                g.drawString(part, x, line);
                line += metrics.getHeight();
            }
        }
    }
}
