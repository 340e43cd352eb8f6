package platekeep.client.plate.begin;

import java.awt.Component;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.SpinnerNumberModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Colour;
import platekeep.model.plate.Palette;
import platekeep.model.plate.Plate;
import platekeep.model.plate.Pleats;
import platekeep.model.plate.Row;
import platekeep.model.plate.RowId;
import platekeep.model.stitch.RowIds;

/**
 * An empty chart for a plate that is only a scan yet; the plate stays the same one.
 *
 * @param pleats how many it covers, 2 to 2001
 * @param rows how many it has, 1 to 2000
 */
public record BlankChart(int pleats, int rows) {
    private static final int FIRST_PLEATS = 60;
    private static final int FIRST_ROWS = 30;

    /** A few colours that stand well beside each other, to begin with. */
    public static final Palette FIRST_COLOURS = Palette.EMPTY
            .with('b', new Colour("brick", "#A63C2B", 4))
            .with('c', new Colour("chalk", "#F4F1E8", 4))
            .with('l', new Colour("leaf", "#4F7A3A", 4))
            .with('s', new Colour("slate", "#3B4A59", 4));

    /** Asks how large it is to be; empty when she gave it up. */
    public static Optional<BlankChart> ask(Component over) {
        JSpinner pleats = number("blank-pleats", FIRST_PLEATS, 2, Pleats.MOST_POSITIONS + 1);
        JSpinner rows = number("blank-rows", FIRST_ROWS, 1, Plate.MOST_ROWS);
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]8[]"));
        form.add(
                Widgets.prose(
                        "blank-prose",
                        "The plate gets an empty chart to draw on; the scan stays beside it. Both sizes can be changed"
                                + " later."),
                "span 2, growx, wmin 380, wrap, gapbottom 6");
        form.add(new JLabel("Pleats"));
        form.add(pleats, "wrap");
        form.add(new JLabel("Rows"));
        form.add(rows, "wrap");
        return Ask.ask(over, "Begin the chart", form, "Begin drawing", Optional::empty) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new BlankChart((Integer) pleats.getValue(), (Integer) rows.getValue()));
    }

    private static JSpinner number(String name, int value, int least, int most) {
        JSpinner spinner = new JSpinner(new SpinnerNumberModel(value, least, most, 1));
        spinner.setName(name);
        return spinner;
    }

    /** The plate with the chart; one that has a chart stays as it is. */
    public Plate on(Plate plate, RandomGenerator random) {
        if (!plate.rows().isEmpty()) {
            return plate;
        }
        Set<RowId> taken = new HashSet<>();
        List<Row> empty = new ArrayList<>();
        Pleats covered = new Pleats(1, pleats);
        for (int i = 0; i < rows; i++) {
            RowId id = RowIds.fresh(taken, random);
            taken.add(id);
            empty.add(new Row(Optional.of(id), String.valueOf(Row.EMPTY).repeat(covered.positions())));
        }
        return plate.edit()
                .palette(plate.palette().entries().isEmpty() ? FIRST_COLOURS : plate.palette())
                .pleats(Optional.of(covered))
                .rows(empty)
                .build();
    }
}
