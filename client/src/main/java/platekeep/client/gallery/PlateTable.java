package platekeep.client.gallery;

import java.awt.Component;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellRenderer;
import javax.swing.table.TableColumn;
import platekeep.client.ui.Widgets;
import platekeep.model.find.Group;
import platekeep.model.find.Order;
import platekeep.model.find.Summary;

/** The plates as a list with columns; a press on a heading sorts. */
final class PlateTable extends JTable {
    private static final long serialVersionUID = 1L;

    /** Of so many plates one must have been found in a version for a column to say so. */
    private static final int MOST_ASKED = 100;

    private transient List<Card> cards = List.of();
    private transient Order order = Order.BEST;
    private final Map<Column, TableColumn> parts = new EnumMap<>(Column.class);
    private Set<Column> shown = EnumSet.allOf(Column.class);

    /** A column. */
    private enum Column {
        TITLE("Title", 168, Order.By.TITLE, s -> s.title()),
        NUMBER("Number", 74, Order.By.NUMBER, s -> s.number().orElse("")),
        FOUND("Found in", 176, Order.By.BEST, s -> ""),
        AGES("Ages", 130, Order.By.AGES, s -> Card.ages(s.ages())),
        PLEATS("Pleats", 56, Order.By.PLEATS, s -> s.pleats() == 0 ? "" : "" + s.pleats()),
        ROWS("Rows", 50, Order.By.ROWS, s -> s.rows() == 0 ? "" : "" + s.rows()),
        MARKS(
                "To look at",
                92,
                Order.By.BEST,
                s -> s.marks().stream().map(mark -> mark.word()).collect(Collectors.joining(", "))),
        STATE(
                "How far",
                76,
                Order.By.STATE,
                s -> s.state().map(state -> state.word()).orElse("")),
        LIBRARY("Library", 90, Order.By.LIBRARY, Summary::library),
        THEMES("Themes", 190, Order.By.THEMES, s -> String.join(", ", s.themes())),
        SERIES("Series", 140, Order.By.SERIES, s -> String.join(", ", s.series())),
        YEAR("Year", 54, Order.By.YEAR, s -> s.lastYear() == 0 ? "" : "" + s.lastYear()),
        DESIGNERS("Designers", 120, Order.By.DESIGNERS, s -> String.join(", ", s.designers())),
        COLOURS("Colours", 66, Order.By.COLOURS, s -> "" + s.colours().size());

        private final String word;
        private final int width;
        private final Order.By by;
        private final Function<Summary, String> text;

        Column(String word, int width, Order.By by, Function<Summary, String> text) {
            this.word = word;
            this.width = width;
            this.by = by;
            this.text = text;
        }

        boolean isNumber() {
            return this == PLEATS || this == ROWS || this == COLOURS || this == YEAR;
        }
    }

    /** What can be sorted by, in words. */
    static Map<String, Order.By> sorts() {
        Map<String, Order.By> sorts = new LinkedHashMap<>();
        sorts.put("Best first", Order.By.BEST);
        Stream.of(Column.values())
                .filter(column -> column.by != Order.By.BEST)
                .forEach(column -> sorts.put(column.word, column.by));
        return sorts;
    }

    /**
     * @param sort hears by which column to sort
     */
    PlateTable(Consumer<Order.By> sort) {
        setName("gallery-table");
        getAccessibleContext().setAccessibleName("Plates");
        setModel(new Rows());
        setSelectionMode(ListSelectionModel.MULTIPLE_INTERVAL_SELECTION);
        setAutoResizeMode(AUTO_RESIZE_OFF);
        setShowGrid(false);
        setFillsViewportHeight(true);
        setRowHeight(getRowHeight() + 6);
        for (Column column : Column.values()) {
            TableColumn part = getColumnModel().getColumn(column.ordinal());
            part.setPreferredWidth(column.width);
            part.setCellRenderer(new Cell(column));
            parts.put(column, part);
        }
        setFocusTraversalKeysEnabled(true);
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Widgets.stroke("TAB"), "none");
        getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Widgets.stroke("shift TAB"), "none");
        JTableHeader head = getTableHeader();
        head.setReorderingAllowed(false);
        head.setDefaultRenderer(new Head(head.getDefaultRenderer()));
        head.setToolTipText("Press a heading to sort by it, once more for the other way round");
        head.addMouseListener(new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                int at = columnAtPoint(e.getPoint());
                if (at >= 0) {
                    sort.accept(Column.values()[convertColumnIndexToModel(at)].by);
                }
            }
        });
    }

    void show(GalleryState state) {
        cards = state.cards();
        order = state.order();
        Set<Column> wanted = EnumSet.allOf(Column.class);
        if (state.cards().stream()
                .limit(MOST_ASKED)
                .allMatch(card -> card.found().isEmpty())) {
            wanted.remove(Column.FOUND);
        }
        if (state.sections().stream().noneMatch(section -> section.group() == Group.LIBRARY)) {
            wanted.remove(Column.LIBRARY);
        }
        showColumns(wanted);
        ((Rows) getModel()).fireTableDataChanged();
        getTableHeader().repaint();
    }

    /** Shows the columns that say something just now, in their order; widths stay as they were pulled. */
    private void showColumns(Set<Column> wanted) {
        if (!wanted.equals(shown)) {
            shown = wanted;
            parts.values().forEach(getColumnModel()::removeColumn);
            wanted.forEach(column -> getColumnModel().addColumn(parts.get(column)));
        }
    }

    /** The rows. */
    private final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1L;

        @Override
        public int getRowCount() {
            return cards.size();
        }

        @Override
        public int getColumnCount() {
            return Column.values().length;
        }

        @Override
        public String getColumnName(int column) {
            return Column.values()[column].word;
        }

        @Override
        public Object getValueAt(int row, int column) {
            Card card = cards.get(row);
            Column wanted = Column.values()[column];
            if (wanted == Column.FOUND) {
                return card.foundWords();
            }
            return card.summary()
                    .map(wanted.text)
                    .orElse(wanted == Column.TITLE ? card.title() : wanted == Column.MARKS ? "damaged" : "");
        }
    }

    /** A cell; what does not fit is told on hovering. */
    private static final class Cell extends DefaultTableCellRenderer {
        private static final long serialVersionUID = 1L;

        private final Column column;

        Cell(Column column) {
            this.column = column;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
            super.getTableCellRendererComponent(table, value, isSelected, false, row, at);
            setHorizontalAlignment(column.isNumber() ? TRAILING : LEADING);
            setBorder(Widgets.air(0, 6, 0, 6));
            setToolTipText(value.toString().isEmpty() ? null : value.toString());
            return this;
        }
    }

    /** A heading; an arrow at the one that sorts. */
    private final class Head implements TableCellRenderer {
        private final TableCellRenderer plain;

        Head(TableCellRenderer plain) {
            this.plain = plain;
        }

        @Override
        public Component getTableCellRendererComponent(
                JTable table, Object value, boolean isSelected, boolean hasFocus, int row, int at) {
            Column column = Column.values()[table.convertColumnIndexToModel(at)];
            String arrow = order.by() == column.by && column.by != Order.By.BEST
                    ? order.way() == Order.Way.UP ? "  ↑" : "  ↓"
                    : "";
            Component head = plain.getTableCellRendererComponent(table, value + arrow, isSelected, hasFocus, row, at);
            if (head instanceof JLabel label) {
                label.setHorizontalAlignment(column.isNumber() ? SwingConstants.TRAILING : SwingConstants.LEADING);
            }
            return head;
        }
    }
}
