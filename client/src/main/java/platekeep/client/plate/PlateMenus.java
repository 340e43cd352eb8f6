package platekeep.client.plate;

import java.util.List;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import platekeep.client.plate.begin.BeginItems;
import platekeep.client.plate.edit.Tool;
import platekeep.client.plate.picture.PictureItem;
import platekeep.client.plate.work.ChartPresenter;
import platekeep.client.plate.work.ChoicePresenter;
import platekeep.client.plate.work.DrawPresenter;
import platekeep.client.plate.work.HistoryPresenter;
import platekeep.client.plate.work.PalettePresenter;
import platekeep.client.plate.work.PlatePresenter;
import platekeep.client.ui.Widgets;

/** The menus of the Plate screen, and the bare keys that work while the chart has the focus. */
final class PlateMenus {
    private final PlatePanel panel;
    private final BeginItems begin;
    private final PictureItem picture;
    private final PlatePresenter plates;
    private final DrawPresenter draw;
    private final ChoicePresenter choice;
    private final ChartPresenter chart;
    private final PalettePresenter palette;
    private final HistoryPresenter versions;
    private final JMenuItem undo;
    private final JMenuItem redo;

    PlateMenus(PlatePanel panel, PlatePresenter plates, BeginItems begin, PictureItem picture) {
        this.panel = panel;
        this.begin = begin;
        this.picture = picture;
        this.plates = plates;
        this.draw = plates.draw();
        this.choice = plates.choice();
        this.chart = plates.chart();
        this.palette = plates.palette();
        this.versions = plates.history();
        this.undo = Widgets.item("menu-undo", "Undo", "ctrl Z", draw::undo);
        this.redo = Widgets.item("menu-redo", "Redo", "ctrl shift Z", draw::redo);
        panel.onShow(this::nameSteps);
        for (Tool tool : Tool.values()) {
            Widgets.onOwnKey(panel.chart(), String.valueOf(tool.key()), () -> draw.take(tool));
        }
        for (int i = 1; i <= 9; i++) {
            int n = i - 1;
            Widgets.onOwnKey(panel.chart(), String.valueOf(i), () -> draw.chooseNth(n));
        }
        for (String key : List.of("ctrl PLUS", "ctrl shift EQUALS", "ctrl ADD")) {
            Widgets.onKey(panel, key, () -> panel.header().zoomBy(1));
        }
        Widgets.onKey(panel, "ctrl SUBTRACT", () -> panel.header().zoomBy(-1));
        Widgets.onKey(panel, "ctrl Y", draw::redo);
        Widgets.onOwnKey(panel.chart(), "ESCAPE", this::letGo);
        Widgets.onOwnKey(panel.chart(), "M", choice::mirrorAboutCentre);
        Widgets.onOwnKey(panel.chart(), "shift M", choice::mirrorAboutCursor);
    }

    /** Says in the menu which step is taken back or done again. */
    private void nameSteps() {
        undo.setText(panel.shown().undo().map(name -> "Undo: " + name).orElse("Undo"));
        redo.setText(panel.shown().redo().map(name -> "Redo: " + name).orElse("Redo"));
    }

    private void letGo() {
        if (!choice.letGo()) {
            versions.lookAtNow();
        }
    }

    List<JMenu> all() {
        return List.of(plate(), edit(), chosen(), chart(), view());
    }

    private JMenu chosen() {
        JMenu menu = menu("menu-chosen", "Chosen", 'O');
        menu.add(Widgets.item("menu-copy", "Copy", "ctrl C", choice::copy));
        menu.add(Widgets.item("menu-cut", "Cut out", "ctrl X", choice::cut));
        menu.add(Widgets.item("menu-paste", "Put in", "ctrl V", choice::paste));
        menu.add(Widgets.item("menu-keep-motif", "Keep as a motif…", "ctrl shift K", plates.motifs()::keep));
        menu.add(Widgets.item("menu-put-motif", "Put a motif in…", "ctrl K", plates.motifs()::put));
        menu.add(Widgets.item("menu-find-motif", "Find plates with it", "ctrl shift F", plates.motifs()::find));
        menu.add(Widgets.item("menu-next-place", "Next place of the motif found", "F3", plates.found()::next));
        menu.add(Widgets.item("menu-choose-all", "Choose everything", "ctrl A", choice::chooseAll));
        menu.addSeparator();
        menu.add(Widgets.item("menu-across", "Mirror left to right", "ctrl M", choice::mirrorLeftRight));
        menu.add(Widgets.item("menu-over", "Mirror top to bottom", "ctrl alt M", choice::mirrorTopBottom));
        menu.add(Widgets.item("menu-recolour", "Recolour…", "ctrl L", choice::recolour));
        menu.add(Widgets.item("menu-repeat", "Repeat across…", "ctrl E", choice::repeat));
        menu.addSeparator();
        menu.add(Widgets.item(
                "menu-mirror-centre", "Draw on both sides of the centre  (M)", "", choice::mirrorAboutCentre));
        menu.add(Widgets.item(
                "menu-mirror-cursor", "Draw on both sides of the cursor  (Shift+M)", "", choice::mirrorAboutCursor));
        return menu;
    }

    private JMenu plate() {
        JMenu menu = menu("menu-plate", "Plate", 'P');
        menu.add(Widgets.item("menu-save", "Save version…", "ctrl S", this::save));
        menu.add(Widgets.item("menu-give-up", "Give the draft up…", "ctrl alt G", plates::giveUp));
        menu.addSeparator();
        menu.add(
                Widgets.item("menu-bring-version-back", "Bring this version back…", "ctrl alt B", versions::bringBack));
        menu.add(Widgets.item(
                "menu-name-version",
                "Name the version…",
                "ctrl shift M",
                () -> panel.history().nameChosen()));
        menu.add(Widgets.item(
                "menu-compare-versions",
                "Compare versions",
                "ctrl D",
                () -> panel.history().compareChosen()));
        menu.addSeparator();
        begin.addTo(menu);
        menu.addSeparator();
        menu.add(Widgets.item("menu-like-plate", "Plates like this one", "ctrl shift Y", plates::findLike));
        menu.add(picture.item(plates::withDrawing));
        menu.add(Widgets.item(
                "menu-open-origin", "Open the plate it was started from", "ctrl alt O", plates::openOrigin));
        menu.add(Widgets.item("menu-settle", "Settle open clashes", "ctrl alt J", plates::settle));
        menu.addSeparator();
        menu.add(Widgets.item("menu-put-plate-away", "Put away…", "ctrl shift DELETE", versions::putAway));
        return menu;
    }

    private void save() {
        panel.takeTyped();
        versions.save();
    }

    private JMenu edit() {
        JMenu menu = menu("menu-edit", "Edit", 'E');
        menu.add(undo);
        menu.add(redo);
        menu.addSeparator();
        for (Tool tool : Tool.values()) {
            menu.add(Widgets.item(
                    "menu-tool-" + tool.name().toLowerCase(java.util.Locale.ROOT),
                    tool.word() + "  (" + tool.key() + ")",
                    "",
                    () -> draw.take(tool)));
        }
        menu.addSeparator();
        menu.add(Widgets.item("menu-add-colour", "Add a colour…", "ctrl shift A", palette::add));
        menu.add(Widgets.item(
                "menu-change-colour",
                "Change the colour…",
                "",
                () -> draw.colour().ifPresent(palette::change)));
        return menu;
    }

    private JMenu chart() {
        JMenu menu = menu("menu-chart", "Chart", 'C');
        menu.add(Widgets.item("menu-row-above", "Insert a row above", "ctrl I", chart::insertAbove));
        menu.add(Widgets.item("menu-row-below", "Insert a row below", "ctrl shift I", chart::insertBelow));
        menu.add(Widgets.item("menu-row-again", "Duplicate the row", "ctrl R", chart::duplicateRow));
        menu.add(Widgets.item("menu-row-away", "Delete the row", "ctrl DELETE", chart::deleteRow));
        menu.add(Widgets.item("menu-row-up", "Move the row up", "alt UP", () -> chart.moveRow(-1)));
        menu.add(Widgets.item("menu-row-down", "Move the row down", "alt DOWN", () -> chart.moveRow(1)));
        menu.add(Widgets.item("menu-row-left", "Shift the row to the left", "ctrl alt LEFT", () -> chart.shiftRow(-1)));
        menu.add(Widgets.item(
                "menu-row-right", "Shift the row to the right", "ctrl alt RIGHT", () -> chart.shiftRow(1)));
        menu.addSeparator();
        menu.add(Widgets.item(
                "menu-shift-left", "Shift the picture to the left", "alt shift LEFT", () -> chart.shift(-1)));
        menu.add(Widgets.item(
                "menu-shift-right", "Shift the picture to the right", "alt shift RIGHT", () -> chart.shift(1)));
        menu.addSeparator();
        menu.add(Widgets.item("menu-widen-left", "Widen at the left", "", () -> chart.widen(1, 0)));
        menu.add(Widgets.item("menu-widen-right", "Widen at the right", "", () -> chart.widen(0, 1)));
        menu.add(Widgets.item("menu-widen-both", "Widen at both sides", "ctrl W", () -> chart.widen(1, 1)));
        menu.add(Widgets.item("menu-narrow-left", "Narrow at the left", "", () -> chart.widen(-1, 0)));
        menu.add(Widgets.item("menu-narrow-right", "Narrow at the right", "", () -> chart.widen(0, -1)));
        menu.add(Widgets.item("menu-narrow-both", "Narrow at both sides", "ctrl shift W", () -> chart.widen(-1, -1)));
        menu.addSeparator();
        menu.add(Widgets.item("menu-remark", "Remark on this place…", "ctrl shift R", plates.remarks()::say));
        menu.add(Widgets.item("menu-add-line", "Add a geometric line…", "", plates.lines()::addLine));
        menu.add(Widgets.item("menu-cloth", "Cloth and gathering rows…", "", plates.extras()::cloth));
        menu.add(Widgets.item("menu-add-notion", "Add a notion…", "", plates.extras()::addNotion));
        menu.addSeparator();
        menu.add(Widgets.item("menu-strip", "Repeats of the chart…", "", chart::repeat));
        menu.add(Widgets.item("menu-work-out", "Turn the repeats into cables", "", chart::workOutRepeats));
        return menu;
    }

    private JMenu view() {
        JMenu menu = menu("menu-view", "View", 'V');
        menu.add(Widgets.item(
                "menu-turn-way",
                "Chart or cloth",
                "ctrl T",
                () -> panel.header().turnWay()));
        menu.add(Widgets.item(
                "menu-letters",
                "Letters of the colours on the cables",
                "ctrl shift L",
                () -> panel.chart().turnLetters()));
        menu.addSeparator();
        menu.add(Widgets.item(
                "menu-zoom-in", "Zoom in", "ctrl EQUALS", () -> panel.header().zoomBy(1)));
        menu.add(Widgets.item(
                "menu-zoom-out", "Zoom out", "ctrl MINUS", () -> panel.header().zoomBy(-1)));
        menu.add(Widgets.item(
                "menu-zoom-fit",
                "See the whole plate",
                "ctrl 0",
                () -> panel.header().fit()));
        menu.addSeparator();
        menu.add(Widgets.item(
                "menu-to-chart", "To the chart", "F6", () -> panel.chart().requestFocusInWindow()));
        menu.add(Widgets.item("menu-to-colours", "To the colours", "F7", () -> panel.side(0)));
        menu.add(Widgets.item("menu-to-facts", "To the facts", "F8", () -> panel.side(1)));
        menu.add(Widgets.item("menu-to-check", "To the check", "F9", () -> panel.side(2)));
        menu.add(Widgets.item("menu-to-remarks", "To the remarks", "shift F7", () -> panel.side(3)));
        menu.add(Widgets.item("menu-to-extras", "To the stitches and notions", "shift F8", () -> panel.side(4)));
        menu.add(Widgets.item(
                "menu-to-history",
                "To the history",
                "shift F9",
                () -> panel.history().enter()));
        menu.add(Widgets.item("menu-turn-history", "Show or hide the history", "ctrl H", panel::turnHistory));
        return menu;
    }

    private static JMenu menu(String name, String text, char mnemonic) {
        JMenu menu = new JMenu(text);
        menu.setName(name);
        menu.setMnemonic(mnemonic);
        return menu;
    }
}
