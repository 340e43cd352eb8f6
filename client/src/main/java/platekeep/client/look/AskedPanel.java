package platekeep.client.look;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javax.swing.ButtonGroup;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import javax.swing.JTextField;
import javax.swing.Timer;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.PlateSource;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;
import platekeep.model.look.Wanted;

/** What is searched for, and how. */
final class AskedPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int WIDTH = 222;
    private static final int PAUSE = 250;
    private static final List<String> GAPS = List.of("other colours or none", "nothing", "anything");
    private static final List<Wanted.Gaps> GAP_ORDER = List.of(Wanted.Gaps.APART, Wanted.Gaps.OPEN, Wanted.Gaps.ANY);

    private final transient Supplier<LookPresenter> presenter;
    private final Map<LookState.Way, JRadioButton> ways = new EnumMap<>(LookState.Way.class);
    private final PlatePicture picture = new PlatePicture("look-asked-picture");
    private final JLabel title = Widgets.label("look-asked-title", "");
    private final JTextField words = new JTextField();
    private final Timer pause = new Timer(PAUSE, e -> ask());
    private final JCheckBox once = new JCheckBox("In old versions too");
    private final JCheckBox sameColours = new JCheckBox("In the same colours");
    private final JCheckBox mirrored = new JCheckBox("Mirrored too");
    private final JCheckBox sameKinds = new JCheckBox("Up and down alike");
    private final JLabel gapsTitle = Widgets.heading("In its gaps");
    private final JComboBox<String> gaps = new JComboBox<>(GAPS.toArray(String[]::new));
    private transient Wanted wanted = Wanted.USUAL;
    private boolean isShowing;

    /**
     * @param toHits puts the focus on what was found
     */
    AskedPanel(Pictures pictures, Supplier<LookPresenter> presenter, Runnable toHits) {
        super(new BorderLayout());
        this.presenter = presenter;
        setName("look-asked");
        setPreferredSize(new Dimension(WIDTH, 10));
        setBorder(Widgets.edge(0, 0, 0, 1));
        picture.pictures(pictures);
        pause.setRepeats(false);
        JPanel column = new JPanel(new MigLayout("insets 14, fillx, hidemode 3, gap 4", "[grow, fill, 0:0:]"));
        column.add(Widgets.heading("Search for plates"), "wrap, gapbottom 2");
        ButtonGroup group = new ButtonGroup();
        for (LookState.Way way : LookState.Way.values()) {
            JRadioButton button = new JRadioButton(way.word());
            button.setName("look-way-" + way.name().toLowerCase(java.util.Locale.ROOT));
            button.addActionListener(e -> presenter.get().take(way));
            group.add(button);
            ways.put(way, button);
            column.add(button, way == LookState.Way.ONCE ? "wrap, gapbottom 10" : "wrap");
        }
        column.add(words, "wrap");
        column.add(picture, "h 146!, wrap");
        column.add(title, "wmin 0, wrap, gapbottom 6");
        addOptions(column);
        setUpWords(toHits);
        add(Widgets.scroll("look-asked-scroll", column), BorderLayout.CENTER);
    }

    private void addOptions(JPanel column) {
        option(
                column,
                "look-once",
                once,
                () -> presenter.get().times(once.isSelected() ? Options.Times.ONCE_TOO : Options.Times.NOW));
        option(
                column,
                "look-mirrored",
                mirrored,
                () -> wanted(w -> new Wanted(
                        w.colours(),
                        w.gaps(),
                        mirrored.isSelected() ? Wanted.Mirrors.ALL : Wanted.Mirrors.NONE,
                        w.kinds())));
        option(
                column,
                "look-same-colours",
                sameColours,
                () -> wanted(w -> new Wanted(
                        sameColours.isSelected() ? Wanted.Colours.SAME : Wanted.Colours.ANY,
                        w.gaps(),
                        w.mirrors(),
                        w.kinds())));
        option(
                column,
                "look-same-kinds",
                sameKinds,
                () -> wanted(w -> new Wanted(
                        w.colours(),
                        w.gaps(),
                        w.mirrors(),
                        sameKinds.isSelected() ? Wanted.Kind.SAME : Wanted.Kind.ANY)));
        column.add(gapsTitle, "wrap, gaptop 6");
        gaps.setName("look-gaps");
        gaps.getAccessibleContext().setAccessibleName("What may lie in the motif's gaps");
        gaps.addActionListener(e -> {
            if (!isShowing) {
                wanted(w -> new Wanted(w.colours(), GAP_ORDER.get(gaps.getSelectedIndex()), w.mirrors(), w.kinds()));
            }
        });
        column.add(gaps, "wmin 0, wrap");
    }

    private static void option(JPanel column, String name, JCheckBox box, Runnable turn) {
        box.setName(name);
        box.setOpaque(false);
        box.addActionListener(e -> turn.run());
        column.add(box, "wrap");
    }

    private void wanted(UnaryOperator<Wanted> change) {
        presenter.get().wanted(change.apply(wanted));
    }

    private void setUpWords(Runnable toHits) {
        words.setName("look-words");
        words.putClientProperty("JTextField.placeholderText", "Words it once had");
        words.putClientProperty("JTextField.leadingIcon", Sign.SEARCH.icon(16));
        words.getAccessibleContext().setAccessibleName("Words in old versions");
        Widgets.onOwnKey(words, "ENTER", toHits);
        Widgets.onOwnKey(words, "DOWN", toHits);
        words.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                typed();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                typed();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // the style of plain text does not change
            }
        });
    }

    private void typed() {
        if (!isShowing) {
            pause.restart();
        }
    }

    private void ask() {
        presenter.get().words(words.getText());
    }

    boolean takesWords() {
        return words.isVisible();
    }

    boolean isTyping() {
        return words.isFocusOwner();
    }

    /** Puts the focus on the words, or on the way that is taken. */
    void enter() {
        if (words.isVisible()) {
            words.requestFocusInWindow();
        } else {
            ways.values().stream()
                    .filter(JRadioButton::isSelected)
                    .findFirst()
                    .ifPresent(JRadioButton::requestFocusInWindow);
        }
    }

    void show(LookState state) {
        isShowing = true;
        ways.get(state.way()).setSelected(true);
        boolean isOnce = state.way() == LookState.Way.ONCE;
        boolean isMotif = state.way() == LookState.Way.MOTIF;
        boolean becomesVisible = isOnce && !words.isVisible();
        words.setVisible(isOnce);
        if (!words.isFocusOwner() && !words.getText().equals(state.words())) {
            words.setText(state.words());
        }
        picture.show(state.asked()
                .map(plate -> new PlateSource(
                        "asked " + state.askedTitle() + state.asked().hashCode(), plate)));
        title.setText(state.askedTitle());
        title.setVisible(state.asked().isPresent());
        wanted = state.options().motif();
        once.setSelected(state.options().times() == Options.Times.ONCE_TOO);
        once.setVisible(state.way() == LookState.Way.LIKE || isMotif);
        mirrored.setSelected(wanted.mirrors() == Wanted.Mirrors.ALL);
        sameColours.setSelected(wanted.colours() == Wanted.Colours.SAME);
        sameKinds.setSelected(wanted.kinds() == Wanted.Kind.SAME);
        gaps.setSelectedIndex(GAP_ORDER.indexOf(wanted.gaps()));
        for (var part : List.of(mirrored, sameColours, sameKinds, gapsTitle, gaps)) {
            part.setVisible(isMotif);
        }
        if (becomesVisible && isShowing()) {
            words.requestFocusInWindow();
        }
        isShowing = false;
        revalidate();
    }
}
