package platekeep.client.plate;

import java.awt.Component;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import javax.swing.ButtonGroup;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import platekeep.client.plate.edit.Tool;
import platekeep.client.ui.Sign;
import platekeep.client.ui.Widgets;

/** The tools beside the chart: what a press does, back and forth, rows and shifting. */
final class ToolBar extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int SIGN = 20;
    private static final String APART = "gaptop 10";

    private final Map<Tool, JToggleButton> tools = new EnumMap<>(Tool.class);
    private final JButton undo;
    private final JButton redo;

    ToolBar(PlateEars ears) {
        super(new MigLayout("insets 8 6 8 6, gap 2, flowy", "[grow, fill]"));
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
            add(button);
        }
        undo = tool("undo", Sign.UNDO, "Undo", APART, () -> ears.draw().undo());
        redo = tool("redo", Sign.REDO, "Redo", "", () -> ears.draw().redo());
        addRowTools(ears);
    }

    private void addRowTools(PlateEars ears) {
        tool(
                "row-above",
                Sign.ROW_ABOVE,
                "Insert a row above (Ctrl+I)",
                APART,
                () -> ears.draw().insertAbove());
        tool(
                "row-below",
                Sign.ROW_BELOW,
                "Insert a row below (Ctrl+Shift+I)",
                "",
                () -> ears.draw().insertBelow());
        tool(
                "row-again",
                Sign.ROW_AGAIN,
                "Duplicate the row (Ctrl+R)",
                "",
                () -> ears.draw().duplicateRow());
        tool(
                "row-away",
                Sign.ROW_AWAY,
                "Delete the row (Ctrl+Delete)",
                "",
                () -> ears.draw().deleteRow());
        tool(
                "shift-left",
                Sign.LEFT,
                "Shift the picture to the left",
                APART,
                () -> ears.draw().shift(-1));
        tool(
                "shift-right",
                Sign.RIGHT,
                "Shift the picture to the right",
                "",
                () -> ears.draw().shift(1));
    }

    private static Sign sign(Tool tool) {
        return switch (tool) {
            case PAINT -> Sign.PAINT;
            case FILL -> Sign.FILL;
            case ERASE -> Sign.ERASE;
            case PICK -> Sign.PICK;
            case POINT -> Sign.POINT;
        };
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
        undo.setEnabled(state.canDraw() && state.undo().isPresent());
        redo.setEnabled(state.canDraw() && state.redo().isPresent());
        undo.setToolTipText(state.undo().map(name -> "Undo: " + name).orElse("Nothing to undo"));
        redo.setToolTipText(state.redo().map(name -> "Redo: " + name).orElse("Nothing to redo"));
    }
}
