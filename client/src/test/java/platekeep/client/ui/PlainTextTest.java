package platekeep.client.ui;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.DefaultListCellRenderer;
import javax.swing.JButton;
import javax.swing.JCheckBox;
import javax.swing.JCheckBoxMenuItem;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JRadioButton;
import javax.swing.JRadioButtonMenuItem;
import javax.swing.JTable;
import javax.swing.JToggleButton;
import javax.swing.JToolTip;
import javax.swing.plaf.basic.BasicHTML;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.tree.DefaultTreeCellRenderer;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A title that looks like mark-up is shown letter by letter, whatever shows it. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PlainTextTest {
    private static final String TITLE = "<html><img src='http://example.invalid/x.png'>Kite";

    @BeforeEach
    void putOnATheme() {
        Theme.LIGHT.putOn();
    }

    static Stream<Map.Entry<String, Function<String, JComponent>>> everything() {
        return Map.<String, Function<String, JComponent>>ofEntries(
                Map.entry("label", JLabel::new),
                Map.entry("button", JButton::new),
                Map.entry("toggle", JToggleButton::new),
                Map.entry("check box", JCheckBox::new),
                Map.entry("radio button", JRadioButton::new),
                Map.entry("menu", JMenu::new),
                Map.entry("menu item", JMenuItem::new),
                Map.entry("ticked item", JCheckBoxMenuItem::new),
                Map.entry("radio item", JRadioButtonMenuItem::new),
                Map.entry("tool tip", PlainTextTest::toolTip),
                Map.entry("list cell", PlainTextTest::listCell),
                Map.entry("table cell", PlainTextTest::tableCell),
                Map.entry("tree cell", PlainTextTest::treeCell))
                .entrySet()
                .stream();
    }

    private static JComponent toolTip(String text) {
        JToolTip tip = new JLabel().createToolTip();
        tip.setTipText(text);
        return tip;
    }

    private static JComponent listCell(String text) {
        return (JComponent)
                new DefaultListCellRenderer().getListCellRendererComponent(new JList<>(), text, 0, false, false);
    }

    private static JComponent tableCell(String text) {
        return (JComponent) new DefaultTableCellRenderer()
                .getTableCellRendererComponent(new JTable(1, 1), text, false, false, 0, 0);
    }

    private static JComponent treeCell(String text) {
        DefaultTreeCellRenderer cell = new DefaultTreeCellRenderer();
        cell.setText(text);
        return cell;
    }

    @ParameterizedTest
    @MethodSource("everything")
    void markUpIsNeverRead(Map.Entry<String, Function<String, JComponent>> kind) {
        JComponent component = kind.getValue().apply(TITLE);
        assertThat(component.getClientProperty(BasicHTML.propertyKey))
                .as(kind.getKey())
                .isNull();
    }

    @ParameterizedTest
    @MethodSource("everything")
    void neitherAfterAChangeOfTheme(Map.Entry<String, Function<String, JComponent>> kind) {
        JComponent component = kind.getValue().apply("Kite");
        Theme.DARK.putOn();
        component.updateUI();
        JComponent again = kind.getValue().apply(TITLE);
        assertThat(again.getClientProperty(BasicHTML.propertyKey)).isNull();
    }
}
