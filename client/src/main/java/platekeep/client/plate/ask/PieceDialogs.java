package platekeep.client.plate.ask;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import javax.swing.JCheckBox;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import platekeep.client.plate.edit.ExtraEdits;
import platekeep.client.plate.work.PlateView;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Notion;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Repeat;
import platekeep.model.plate.Unknown;

/** The questions about a chosen part, repeats, merging colours and notions. */
public final class PieceDialogs {
    private PieceDialogs() {}

    public static Optional<PlateView.Recolouring> recolour(
            Component over, Palette palette, Set<Character> there, Optional<Character> now) {
        List<Character> from = new ArrayList<>(there);
        List<Character> to = new ArrayList<>(palette.entries().keySet());
        JComboBox<String> fromBox = box("recolour-from", List.of("all colours"), from, palette);
        JComboBox<String> toBox = box("recolour-to", List.of(), to, palette);
        now.map(to::indexOf).filter(i -> i >= 0).ifPresent(toBox::setSelectedIndex);
        JPanel form = Forms.form();
        Forms.row(form, "Chosen cables in", fromBox);
        Forms.row(form, "become", toBox);
        return Ask.ask(over, "Recolour", form, "Recolour", Optional::empty) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new PlateView.Recolouring(
                        fromBox.getSelectedIndex() == 0
                                ? Optional.empty()
                                : Optional.of(from.get(fromBox.getSelectedIndex() - 1)),
                        to.get(toBox.getSelectedIndex())));
    }

    public static Optional<Character> merge(Component over, Palette palette, char gone) {
        List<Character> into =
                palette.entries().keySet().stream().filter(key -> key != gone).toList();
        JComboBox<String> box = box("merge-into", List.of(), into, palette);
        JPanel form = Forms.form();
        String name = palette.get(gone).map(c -> c.name()).orElse("");
        form.add(
                Widgets.prose(
                        "merge-text",
                        "Whatever is worked in " + name + " is worked in the other colour then, and " + name
                                + " leaves the palette."),
                "span 2, growx, wmin 380, wrap, gapbottom 8");
        Forms.row(form, "Turn " + name + " into", box);
        return Ask.ask(over, "Turn one colour into another", form, "Turn", Optional::empty) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(into.get(box.getSelectedIndex()));
    }

    public static Optional<Notion> notion(Component over, Notion before) {
        JComboBox<String> kind = new JComboBox<>(ExtraEdits.NOTIONS.toArray(new String[0]));
        kind.setName("notion-kind");
        kind.setEditable(true);
        kind.setSelectedItem(before.kind());
        JTextField size = Forms.field("notion-size", before.size().orElse(""));
        JSpinner count = Widgets.number("notion-count", before.count(), 1, 1000);
        JPanel form = Forms.form();
        Forms.row(form, "What is sewn on", kind);
        Forms.row(form, "Size, such as 9 mm", size);
        Forms.row(form, "How many", count);
        form.add(
                Widgets.prose(
                        "notion-caution",
                        "Under 36 months use nothing that can come off: what fits wholly into a cylinder of 31.7 mm"
                                + " across and 25.4 to 57.1 mm deep is a choking hazard (16 CFR 1501). Work French knots"
                                + " or bullions instead. Follow the rules where you live; this is no legal advice."),
                "span 2, growx, wmin 380, gaptop 6, wrap");
        Ask.Answer answer = Ask.ask(
                over,
                "Notion",
                form,
                "Take it",
                () -> word(kind).isEmpty() ? Optional.of("Say what is sewn on.") : Optional.empty());
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new Notion(
                        word(kind),
                        Optional.of(size.getText().strip()).filter(t -> !t.isEmpty()),
                        value(count),
                        before.unknown()));
    }

    private static String word(JComboBox<String> box) {
        return String.valueOf(box.getSelectedItem()).strip();
    }

    /**
     * A box of colours, each with its shade.
     *
     * @param first what stands above them
     */
    static JComboBox<String> box(String name, List<String> first, List<Character> keys, Palette palette) {
        List<String> words = new ArrayList<>(first);
        keys.forEach(key -> words.add(palette.get(key).map(c -> c.name()).orElse(String.valueOf(key))));
        JComboBox<String> box = new JComboBox<>(words.toArray(new String[0]));
        box.setName(name);
        Shade.beside(box, at -> at < first.size() ? Optional.empty() : shade(palette, keys.get(at - first.size())));
        return box;
    }

    private static Optional<Integer> shade(Palette palette, char key) {
        return palette.get(key).map(Colour::rgb);
    }

    public static Optional<PlateView.Repeating> repeat(Component over, int pleats, IntUnaryOperator room) {
        JSpinner gap = Widgets.number("repeat-gap", 2, 0, Pleats.MOST_POSITIONS);
        JSpinner times = Widgets.number("repeat-times", room.applyAsInt(2), 1, Pleats.MOST_POSITIONS);
        JLabel words = Widgets.faint("repeat-words", " ");
        Runnable tell = () -> words.setText("One every " + (pleats + value(gap)) + " pleats; there is room for "
                + room.applyAsInt(value(gap)) + ".");
        gap.addChangeListener(e -> {
            times.setValue(room.applyAsInt(value(gap)));
            tell.run();
        });
        tell.run();
        JPanel form = Forms.form();
        Forms.row(form, "Pleats between two", gap);
        Forms.row(form, "How many in all", times);
        form.add(words, "skip, wrap");
        Ask.Answer answer = Ask.ask(over, "Repeat across", form, "Repeat", () -> {
            int most = room.applyAsInt(value(gap));
            return value(times) > most
                    ? Optional.of("There is room for " + most
                            + " to the right end of the chart. Take fewer, or widen it first.")
                    : Optional.empty();
        });
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new PlateView.Repeating(value(gap), value(times)));
    }

    public static Optional<PlateView.Strip> strip(Component over, int pleats, Optional<Repeat> before) {
        JCheckBox is = new JCheckBox("This chart is one repeat of a longer strip", true);
        is.setName("strip-is");
        JSpinner every = Widgets.number("strip-every", before.map(Repeat::every).orElse(pleats), 1, Pleats.FARTHEST);
        JSpinner times = Widgets.number("strip-times", before.map(Repeat::times).orElse(3), 2, 1000);
        is.addActionListener(e -> {
            every.setEnabled(is.isSelected());
            times.setEnabled(is.isSelected());
        });
        JPanel form = Forms.form();
        form.add(is, "span 2, wrap");
        Forms.row(form, "Comes again every so many pleats", every);
        Forms.row(form, "How often in all", times);
        form.add(Widgets.faint("strip-hint", "Its copies are shown faintly beside the chart."), "skip, wrap");
        if (Ask.ask(over, "Repeats of the chart", form, "Take it", Optional::empty) == Ask.Answer.GIVEN_UP) {
            return Optional.empty();
        }
        return Optional.of(new PlateView.Strip(
                is.isSelected()
                        ? Optional.of(new Repeat(value(every), value(times), Unknown.NONE))
                        : Optional.empty()));
    }

    private static int value(JSpinner spinner) {
        return (Integer) spinner.getValue();
    }
}
