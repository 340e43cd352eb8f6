package platekeep.client.join;

import java.util.List;
import java.util.Map;
import javax.swing.DefaultComboBoxModel;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JPopupMenu;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Clash;

/** Above the Join screen: which plate, how much is open, and what can be done with all of it. */
final class JoinBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JComboBox<String> libraries = new JComboBox<>();
    private final JComboBox<JoinState.Waiting> plates = new JComboBox<>();
    private final JLabel counter = Widgets.styled(Widgets.label("join-counter", ""), "font: bold +1");
    private final JButton next;
    private final JButton rest;
    private final JButton undo;
    private final JButton redo;
    private final JButton save;
    private final transient Ears ears;
    private boolean isShowing;

    /** What can be asked for. */
    interface Ears {
        void chooseLibrary(int index);

        void choosePlate(int index);

        void nextOpen();

        void bulk(Bulk bulk);

        Map<Clash.What, Integer> openKinds();

        String partnerName();

        void undo();

        void redo();

        void save();
    }

    JoinBar(Ears ears) {
        super(new MigLayout("insets 0, fillx, gapx 8, hidemode 3", "[][][]push[][][][]8[]"));
        this.ears = ears;
        setOpaque(false);
        libraries.setName("join-library");
        libraries.getAccessibleContext().setAccessibleName("Library");
        libraries.addActionListener(e -> {
            if (!isShowing) {
                ears.chooseLibrary(libraries.getSelectedIndex());
            }
        });
        plates.setName("join-waiting");
        plates.getAccessibleContext().setAccessibleName("Plates with something to decide");
        plates.setToolTipText("Ctrl+Page Down: the next plate");
        plates.addActionListener(e -> {
            if (!isShowing) {
                ears.choosePlate(plates.getSelectedIndex());
            }
        });
        next = Widgets.button("join-next", "Next open (N)", ears::nextOpen);
        rest = Widgets.button("join-rest", "All the rest (A)", this::offerRest);
        undo = Widgets.iconButton("join-undo", Sign.UNDO.icon(20), "Take back (Ctrl+Z)", ears::undo);
        redo = Widgets.iconButton("join-redo", Sign.REDO.icon(20), "Do again (Ctrl+Y)", ears::redo);
        save = Widgets.mainButton("join-save", "Save version (Ctrl+S)", ears::save);
        add(libraries, "wmin 60");
        add(plates, "wmin 60");
        add(counter);
        add(next);
        add(rest);
        add(undo);
        add(redo);
        add(save);
    }

    void show(JoinState state) {
        isShowing = true;
        libraries.setModel(new DefaultComboBoxModel<>(state.libraries().toArray(String[]::new)));
        libraries.setSelectedIndex(state.library());
        libraries.setVisible(state.libraries().size() > 1);
        plates.setModel(new DefaultComboBoxModel<>(state.plates().toArray(JoinState.Waiting[]::new)));
        plates.setSelectedIndex(state.chosen());
        plates.setVisible(!state.plates().isEmpty());
        isShowing = false;
        counter.setText(state.board().map(Board::counter).orElse(""));
        int open = state.board().filter(Board::isJoined).map(Board::open).orElse(0);
        next.setEnabled(state.openInVersion() > 0);
        rest.setEnabled(open > 0);
        undo.setEnabled(state.board().flatMap(Board::undo).isPresent());
        redo.setEnabled(state.board().flatMap(Board::redo).isPresent());
        undo.setToolTipText(state.board()
                .flatMap(Board::undo)
                .map(name -> "Take back (Ctrl+Z): " + name)
                .orElse("Nothing to take back"));
        redo.setToolTipText(state.board()
                .flatMap(Board::redo)
                .map(name -> "Do again (Ctrl+Y): " + name)
                .orElse("Nothing to do again"));
        save.setEnabled(state.board().filter(Board::changed).isPresent());
        save.setToolTipText(
                state.isArriving()
                        ? "All that came, as one version with what you decided"
                        : "This plate, as a version");
    }

    /** Offers one answer for all that is open, and for each kind where there are several. */
    void offerRest() {
        if (!rest.isEnabled()) {
            return;
        }
        JPopupMenu menu = new JPopupMenu();
        menu.setName("join-rest-menu");
        Map<Clash.What, Integer> kinds = ears.openKinds();
        int all = kinds.values().stream().mapToInt(n -> n).sum();
        addThree(menu, java.util.Optional.empty(), all + " open");
        if (kinds.size() > 1) {
            kinds.forEach((kind, n) -> {
                menu.addSeparator();
                addThree(menu, java.util.Optional.of(kind), words(kind) + " (" + n + ")");
            });
        }
        menu.show(rest, 0, rest.getHeight());
    }

    private void addThree(JPopupMenu menu, java.util.Optional<Clash.What> kind, String what) {
        List.of(Bulk.Whose.MINE, Bulk.Whose.THEIRS, Bulk.Whose.BEFORE).forEach(whose -> {
            String who =
                    switch (whose) {
                        case MINE -> "Yours";
                        case THEIRS -> upper(ears.partnerName());
                        case BEFORE -> "Before";
                    };
            String name = "join-rest-" + whose.name().toLowerCase(java.util.Locale.ROOT)
                    + kind.map(k -> "-" + k.word()).orElse("");
            menu.add(Widgets.item(name, who + " · " + what, "", () -> ears.bulk(new Bulk(whose, kind))));
        });
    }

    private static String upper(String words) {
        return words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    private static String words(Clash.What kind) {
        return switch (kind) {
            case ROW -> "rows taken out or changed";
            case ROWS -> "new rows";
            case TWINS -> "rows that look alike";
            case ORDER -> "places of rows";
            case PLEATS -> "ends of the chart";
            case FIELD -> "entries";
            case COLOUR -> "colours";
            case CABLES -> "cables";
            default -> kind.word() + "s";
        };
    }
}
