package platekeep.client.gallery.tag;

import java.awt.Component;
import java.util.List;
import java.util.Optional;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;
import platekeep.model.find.tag.ThemeLine;

/** The themes of a library with their plates, what they are also called, and what may be put right. */
final class ThemesDialog {
    private static final String RENAME = "Call it, or join it to";
    private static final String ALSO = "It is also called";
    private static final String OFF = "Take it off the list";

    private final List<ThemeLine> themes;
    private final JTable table = new JTable();
    private final JComboBox<String> deed = new JComboBox<>(new String[] {RENAME, ALSO, OFF});
    private final JTextField theme = new JTextField(18);
    private final JTextField text = new JTextField(24);

    private ThemesDialog(List<ThemeLine> themes) {
        this.themes = themes;
        table.setName("themes-table");
        table.setModel(new Rows(themes));
        table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        table.setShowGrid(false);
        table.setRowHeight(table.getRowHeight() + 6);
        if (table.getTableHeader().getDefaultRenderer() instanceof JLabel head) {
            head.setHorizontalAlignment(SwingConstants.LEADING);
        }
        table.getColumnModel().getColumn(0).setPreferredWidth(130);
        table.getColumnModel().getColumn(1).setPreferredWidth(50);
        table.getColumnModel().getColumn(2).setPreferredWidth(170);
        table.getColumnModel().getColumn(3).setPreferredWidth(200);
        // Enter is the answer to the dialog
        table.getInputMap(JTable.WHEN_ANCESTOR_OF_FOCUSED_COMPONENT).put(Widgets.stroke("ENTER"), "none");
        theme.setName("themes-theme");
        text.setName("themes-text");
        deed.setName("themes-deed");
        table.getSelectionModel().addListSelectionListener(e -> take());
        deed.addActionListener(e -> take());
        if (!themes.isEmpty()) {
            table.setRowSelectionInterval(0, 0);
        }
    }

    /** Puts the chosen theme into the fields, with the likeliest answer. */
    private void take() {
        int at = table.getSelectedRow();
        if (at >= 0) {
            ThemeLine line = themes.get(at);
            theme.setText(line.theme());
            text.setText(
                    deed.getSelectedItem() == ALSO
                            ? String.join(", ", line.also())
                            : deed.getSelectedItem() == RENAME
                                    ? line.near().stream().findFirst().orElse("")
                                    : "");
        }
        text.setEnabled(deed.getSelectedItem() != OFF);
    }

    static Optional<TagView.Deed> ask(Component over, String library, List<ThemeLine> themes) {
        ThemesDialog dialog = new ThemesDialog(themes);
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[][grow, fill][grow, fill]"));
        form.add(Widgets.scroll("themes-scroll", dialog.table), "span 3, growx, w 600:, h 314!, wrap");
        form.add(dialog.theme, "gaptop 8");
        form.add(dialog.deed);
        form.add(dialog.text, "wrap");
        form.add(
                Widgets.faint(
                        "themes-hint", "A theme that is typed anew is put on the list. Words are parted by commas."),
                "span 3, wrap");
        Ask.Answer answer = Ask.ask(over, "Themes of " + library, form, "Go on", dialog::wrong);
        return answer == Ask.Answer.GIVEN_UP ? Optional.empty() : Optional.of(dialog.deed());
    }

    private Optional<String> wrong() {
        if (theme.getText().isBlank()) {
            return Optional.of("Choose a theme, or type a new one.");
        }
        boolean isRename = deed.getSelectedItem() == RENAME;
        if (isRename
                && (text.getText().isBlank()
                        || text.getText().strip().equals(theme.getText().strip()))) {
            return Optional.of("Type what the theme is to be called.");
        }
        boolean isThere = themes.stream()
                .anyMatch(line -> line.theme().equals(theme.getText().strip()));
        return isRename && !isThere
                ? Optional.of("There is no theme \"" + theme.getText().strip() + "\" to be renamed.")
                : Optional.empty();
    }

    private TagView.Deed deed() {
        String word = theme.getText().strip();
        if (deed.getSelectedItem() == RENAME) {
            return new TagView.Deed.Rename(word, text.getText().strip());
        }
        return deed.getSelectedItem() == ALSO
                ? new TagView.Deed.Also(word, TagDialogs.words(text.getText()))
                : new TagView.Deed.TakeOff(word);
    }

    /** The rows of the table. */
    private static final class Rows extends AbstractTableModel {
        private static final long serialVersionUID = 1L;
        private static final String[] COLUMNS = {"Theme", "Plates", "Also called", "To look at"};

        private final transient List<ThemeLine> themes;

        Rows(List<ThemeLine> themes) {
            this.themes = themes;
        }

        @Override
        public int getRowCount() {
            return themes.size();
        }

        @Override
        public int getColumnCount() {
            return COLUMNS.length;
        }

        @Override
        public String getColumnName(int column) {
            return COLUMNS[column];
        }

        @Override
        public Object getValueAt(int row, int column) {
            ThemeLine line = themes.get(row);
            return switch (column) {
                case 0 -> line.theme();
                case 1 -> Integer.toString(line.plates());
                case 2 -> String.join(", ", line.also());
                default ->
                    line.isUnused()
                            ? "no plate has it"
                            : line.near().isEmpty() ? "" : "nearly the same: " + String.join(", ", line.near());
            };
        }
    }
}
