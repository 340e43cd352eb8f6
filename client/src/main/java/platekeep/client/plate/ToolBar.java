package platekeep.client.plate;

import java.awt.Component;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.work.ChartPresenter;
import platekeep.client.plate.work.ChoicePresenter;
import platekeep.client.plate.work.PlateState;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;

/** The tools beside the chart: what a press does, back and forth, and what is done with a choice and with rows. */
final class ToolBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int SIGN = 20;
    private static final String APART = "newline, gaptop 6";

    private final Map<Tool, JToggleButton> tools = new EnumMap<>(Tool.class);
    private final JToggleButton mirror;
    private final JButton undo;
    private final JButton redo;

    ToolBar(PlateEars ears) {
        super(new MigLayout("insets 8 6 8 6, gap 2, wrap 2", "[grow, fill][grow, fill]"));
        setName("tools");
        setBorder(Widgets.edge(0, 0, 0, 1));
        ButtonGroup group = new ButtonGroup();
        for (Tool tool : Tool.values()) {
            JToggleButton button = Widgets.iconToggle(
                    "tool-" + tool.name().toLowerCase(Locale.ROOT),
                    sign(tool).icon(SIGN),
                    tool.word() + " (" + tool.key() + ")");
            button.addActionListener(e -> ears.draw().take(tool));
            group.add(button);
            tools.put(tool, button);
            add(button, place(tool));
        }
        mirror = Widgets.iconToggle("tool-mirror", Sign.MIRROR_DRAW.icon(SIGN), "Draw on both sides of the centre (M)");
        mirror.addActionListener(e -> ears.plates().choice().mirrorAboutCentre());
        add(mirror);
        undo = tool("undo", Sign.UNDO, "Undo", APART, () -> ears.draw().undo());
        redo = tool("redo", Sign.REDO, "Redo", "gaptop 6", () -> ears.draw().redo());
        addChoiceTools(() -> ears.plates().choice());
        addRowTools(() -> ears.plates().chart());
    }

    private void addChoiceTools(Supplier<ChoicePresenter> choice) {
        tool(
                "across",
                Sign.MIRROR_ACROSS,
                "Mirror what is chosen left to right (Ctrl+M)",
                APART,
                () -> choice.get().mirrorLeftRight());
        tool(
                "over",
                Sign.MIRROR_OVER,
                "Mirror what is chosen top to bottom (Ctrl+Alt+M)",
                "gaptop 6",
                () -> choice.get().mirrorTopBottom());
        tool(
                "recolour",
                Sign.RECOLOUR,
                "Recolour what is chosen (Ctrl+L)",
                "",
                () -> choice.get().recolour());
        tool(
                "repeat",
                Sign.REPEAT,
                "Repeat what is chosen across (Ctrl+E)",
                "",
                () -> choice.get().repeat());
    }

    private void addRowTools(Supplier<ChartPresenter> chart) {
        tool(
                "row-above",
                Sign.ROW_ABOVE,
                "Insert a row above (Ctrl+I)",
                APART,
                () -> chart.get().insertAbove());
        tool(
                "row-below",
                Sign.ROW_BELOW,
                "Insert a row below (Ctrl+Shift+I)",
                "gaptop 6",
                () -> chart.get().insertBelow());
        tool(
                "row-again",
                Sign.ROW_AGAIN,
                "Duplicate the row (Ctrl+R)",
                "",
                () -> chart.get().duplicateRow());
        tool(
                "row-away",
                Sign.ROW_AWAY,
                "Delete the row (Ctrl+Delete)",
                "",
                () -> chart.get().deleteRow());
    }

    private static String place(Tool tool) {
        return switch (tool) {
            case ERASE, REGION -> "newline, gaptop 6";
            case PICK, FIGURE -> "gaptop 6";
            default -> "";
        };
    }

    private static Sign sign(Tool tool) {
        return Sign.valueOf(tool.name());
    }

    private JButton tool(String name, Sign sign, String tip, String where, Runnable press) {
        JButton button = Widgets.iconButton("tool-" + name, sign.icon(SIGN), tip, press);
        add(button, where);
        return button;
    }

    /** Shows which tool is in hand and what can be done. */
    void show(PlateState state) {
        tools.get(state.tool()).setSelected(true);
        for (Component part : getComponents()) {
            part.setEnabled(state.canDraw());
        }
        mirror.setSelected(state.hand().axis().isPresent());
        undo.setEnabled(state.canDraw() && state.undo().isPresent());
        redo.setEnabled(state.canDraw() && state.redo().isPresent());
        undo.setToolTipText(state.undo().map(name -> "Undo: " + name).orElse("Nothing to undo"));
        redo.setToolTipText(state.redo().map(name -> "Redo: " + name).orElse("Nothing to redo"));
    }
}
