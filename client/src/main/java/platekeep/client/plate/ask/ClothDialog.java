package platekeep.client.plate.ask;

import java.awt.Component;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javax.swing.JPanel;
import javax.swing.JSpinner;
import javax.swing.JTextField;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Cloth;
import platekeep.model.plate.GatheringRow;

/** Asks on what cloth a plate is to be worked; what is left empty, or at nought, stays unsaid. */
public final class ClothDialog {
    private static final String DECIMAL = "[0-9]{1,6}(\\.[0-9]{1,4})?";

    private final Cloth before;
    private final JSpinner rows;
    private final JSpinner stacked;
    private final JTextField spacing;
    private final JTextField fullness;
    private final JTextField holding;

    public ClothDialog(Cloth before) {
        this.before = before;
        this.rows = Widgets.number("cloth-rows", before.gatheringRows().orElse(0), 0, 9999);
        this.stacked = Widgets.number("cloth-stacked", before.stackedRows().orElse(0), 0, 100);
        this.spacing = Forms.field(
                "cloth-spacing",
                before.spacingMm().map(BigDecimal::toPlainString).orElse(""));
        this.fullness = Forms.field(
                "cloth-fullness",
                before.fullness().map(BigDecimal::toPlainString).orElse(""));
        this.holding = Forms.field("cloth-holding", String.join(", ", before.holding()));
    }

    public Optional<Cloth> ask(Component over) {
        JPanel form = Forms.form();
        Forms.row(form, "Gathering rows in all", rows);
        form.add(Widgets.faint("cloth-rows-hint", "The lowest row of the picture lies on the last one."), "skip, wrap");
        Forms.row(form, "Stacked rows to a space", stacked);
        form.add(Widgets.faint("cloth-stacked-hint", "Nought: unsaid; five are drawn then."), "skip, wrap");
        Forms.row(form, "Spacing in mm, such as 9.5", spacing);
        Forms.row(form, "Fullness, such as 4", fullness);
        Forms.row(form, "Holding rows, with commas between", holding);
        return Ask.ask(over, "Cloth and gathering rows", form, "Take it", this::wrong) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new Cloth(
                        said(rows), decimal(spacing), said(stacked), decimal(fullness), held(), before.unknown()));
    }

    private Optional<String> wrong() {
        for (JTextField field : List.of(spacing, fullness)) {
            String text = field.getText().strip();
            if (!text.isEmpty() && !text.matches(DECIMAL)) {
                return Optional.of("\"" + text + "\" is no number such as 9.5.");
            }
        }
        return held().stream()
                .filter(row -> !GatheringRow.isGatheringRow(row))
                .findFirst()
                .map(row -> "\"" + row + "\" is no gathering row. Write 2 or 2 1/2.");
    }

    private List<String> held() {
        return Arrays.stream(holding.getText().split(","))
                .map(String::strip)
                .filter(row -> !row.isEmpty())
                .toList();
    }

    private static Optional<Integer> said(JSpinner spinner) {
        return Optional.of((Integer) spinner.getValue()).filter(n -> n > 0);
    }

    private static Optional<BigDecimal> decimal(JTextField field) {
        return Optional.of(field.getText().strip()).filter(t -> !t.isEmpty()).map(BigDecimal::new);
    }
}
