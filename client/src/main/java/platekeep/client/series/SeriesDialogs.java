package platekeep.client.series;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.DefaultListModel;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JTextField;
import javax.swing.event.DocumentEvent;
import javax.swing.event.DocumentListener;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Look;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Colour;

/** The questions of the Series screen. */
final class SeriesDialogs {
    private static final Dimension SMALL = new Dimension(120, 90);

    private SeriesDialogs() {}

    static Optional<SeriesView.NewSeries> begin(Component over, List<String> libraries) {
        JTextField title = new JTextField(28);
        title.setName("series-new-title");
        JComboBox<String> library = new JComboBox<>(libraries.toArray(new String[0]));
        library.setName("series-new-library");
        JPanel form = form();
        row(form, "Title", title);
        if (libraries.size() > 1) {
            row(form, "Library", library);
        }
        return Ask.ask(over, "New series", form, "Begin", () -> blank(title, "Give the series a title."))
                        == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new SeriesView.NewSeries(
                        library.getSelectedIndex(), title.getText().strip()));
    }

    private static Optional<String> blank(JTextField field, String sentence) {
        return field.getText().isBlank() ? Optional.of(sentence) : Optional.empty();
    }

    /** A list that words narrow down; several can be chosen. */
    static List<Integer> plates(Component over, List<String> titles) {
        JTextField words = new JTextField();
        words.setName("series-find");
        words.putClientProperty("JTextField.placeholderText", "Find by title");
        DefaultListModel<Offered> model = new DefaultListModel<>();
        JList<Offered> list = new JList<>(model);
        list.setName("series-offered");
        Runnable fill = () -> {
            model.clear();
            String wanted = words.getText().strip().toLowerCase(java.util.Locale.ROOT);
            for (int i = 0; i < titles.size(); i++) {
                if (titles.get(i).toLowerCase(java.util.Locale.ROOT).contains(wanted)) {
                    model.addElement(new Offered(i, titles.get(i)));
                }
            }
            if (!model.isEmpty() && !wanted.isEmpty()) {
                list.setSelectedIndex(0);
            }
        };
        fill.run();
        words.getDocument().addDocumentListener(new DocumentListener() {
            @Override
            public void insertUpdate(DocumentEvent e) {
                fill.run();
            }

            @Override
            public void removeUpdate(DocumentEvent e) {
                fill.run();
            }

            @Override
            public void changedUpdate(DocumentEvent e) {
                // the style of plain text does not change
            }
        });
        Widgets.onOwnKey(words, "DOWN", list::requestFocusInWindow);
        JPanel form = new JPanel(new MigLayout("insets 0, fill, wrap 1", "[grow, fill]"));
        form.add(words);
        form.add(Widgets.scroll("series-offered-scroll", list), "w 420!, h 300!");
        Ask.Answer answer = Ask.ask(
                over,
                "Plates for the series",
                form,
                "Put to the series",
                () -> list.isSelectionEmpty()
                        ? Optional.of("Choose one or more plates; Ctrl or Shift chooses several.")
                        : Optional.empty());
        return answer == Ask.Answer.GIVEN_UP
                ? List.of()
                : list.getSelectedValuesList().stream().map(Offered::at).toList();
    }

    private record Offered(int at, String title) {
        @Override
        public String toString() {
            return title;
        }
    }

    static Optional<String> reason(Component over, String suggestion) {
        JTextField reason = new JTextField(suggestion, 34);
        reason.setName("series-reason");
        reason.selectAll();
        JPanel form = form();
        row(form, "Reason", reason);
        return Ask.ask(over, "Save version", form, "Save", () -> blank(reason, "Say in a few words why."))
                        == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(reason.getText().strip());
    }

    static SeriesView.Consent consent(Component over, String question, String yes) {
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[grow, fill]"));
        form.add(Widgets.prose("series-question", question), "wmin 400");
        return Ask.ask(over, yes, form, yes, Optional::empty) == Ask.Answer.YES
                ? SeriesView.Consent.YES
                : SeriesView.Consent.NO;
    }

    /** The thread is chosen above; below stand the plates that change, before and after. */
    static Optional<Integer> thread(
            Component over, List<Colour> threads, List<List<SeriesView.Preview>> previews, Pictures pictures) {
        JComboBox<String> choice = new JComboBox<>(threads.stream()
                .map(t -> t.name() + "  " + t.srgb()
                        + t.floss().map(f -> "  ·  " + f).orElse(""))
                .toArray(String[]::new));
        choice.setName("series-thread");
        JPanel changes = new JPanel(new MigLayout("insets 4, wrap 3, gap 8", "[]8[]10[grow]"));
        JLabel count = Widgets.faint("series-changes", "");
        Runnable fill = () -> {
            List<SeriesView.Preview> of = previews.get(choice.getSelectedIndex());
            changes.removeAll();
            for (SeriesView.Preview preview : of) {
                changes.add(new Small(pictures, preview.before()));
                changes.add(new Small(pictures, preview.after()));
                changes.add(new JLabel(preview.title()));
            }
            count.setText((of.size() == 1 ? "1 plate changes" : of.size() + " plates change")
                    + ", before at the left and after at the right; strands stay.");
            changes.revalidate();
            changes.repaint();
        };
        choice.addActionListener(e -> fill.run());
        fill.run();
        JPanel form = form();
        row(form, "All become", choice);
        form.add(count, "span 2, wrap");
        form.add(Widgets.scroll("series-changes-scroll", changes), "span 2, w 520!, h 320!");
        return Ask.ask(over, "Make colours the same", form, "Make them the same", Optional::empty)
                        == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(choice.getSelectedIndex());
    }

    private static JPanel form() {
        return new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]8[]"));
    }

    private static void row(JPanel form, String word, JComponent part) {
        JLabel label = new JLabel(word);
        label.setLabelFor(part);
        form.add(label);
        form.add(part, "wrap");
    }

    static List<Integer> places(int[] indices) {
        return Arrays.stream(indices).boxed().toList();
    }

    /** A small picture in a dialog. */
    private static final class Small extends JComponent {
        private static final long serialVersionUID = 1L;

        private final transient Pictures pictures;
        private final transient platekeep.client.ui.PictureSource source;

        Small(Pictures pictures, platekeep.client.ui.PictureSource source) {
            this.pictures = pictures;
            this.source = source;
            setPreferredSize(SMALL);
        }

        @Override
        protected void paintComponent(Graphics g) {
            g.setColor(new java.awt.Color(Look.cloth()));
            g.fillRect(0, 0, getWidth(), getHeight());
            pictures.of(source, SMALL).ifPresent(image -> g.drawImage(image, 0, 0, null));
        }
    }
}
