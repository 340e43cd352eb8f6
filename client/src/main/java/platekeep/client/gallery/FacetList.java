package platekeep.client.gallery;

import java.util.List;
import java.util.function.Consumer;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Widgets;

/** A group of things to narrow the gallery down by, each with its count. */
final class FacetList extends JPanel {
    private static final long serialVersionUID = 1L;

    private final String group;
    private final transient Consumer<String> turn;
    private transient List<Facet> shown = List.of();

    FacetList(String group, Consumer<String> turn) {
        super(new MigLayout("insets 0, gap 2, fillx, hidemode 3", "[grow, fill]4[]"));
        this.group = group;
        this.turn = turn;
        setName("facets-" + group);
        setOpaque(false);
    }

    void show(List<Facet> facets) {
        setVisible(!facets.isEmpty());
        if (facets.equals(shown)) {
            return;
        }
        boolean sameWords = words(facets).equals(words(shown));
        shown = facets;
        if (sameWords) {
            refresh();
        } else {
            rebuild();
        }
    }

    private static List<String> words(List<Facet> facets) {
        return facets.stream().map(Facet::word).toList();
    }

    private void refresh() {
        for (int i = 0; i < shown.size(); i++) {
            JCheckBox box = (JCheckBox) getComponent(1 + 2 * i);
            box.setSelected(shown.get(i).chosen());
            ((JLabel) getComponent(2 + 2 * i))
                    .setText(Integer.toString(shown.get(i).count()));
        }
    }

    private void rebuild() {
        String focused = "";
        for (var component : getComponents()) {
            focused = component.isFocusOwner() ? component.getName() : focused;
        }
        removeAll();
        add(Widgets.heading(group), "span 2, wrap, gapbottom 2");
        for (Facet facet : shown) {
            JCheckBox box = new JCheckBox(facet.word(), facet.chosen());
            box.setName("facet-" + group + "-" + facet.word());
            box.setOpaque(false);
            box.addActionListener(e -> turn.accept(facet.word()));
            add(box, "wmin 0");
            add(Widgets.faint("count-" + group + "-" + facet.word(), Integer.toString(facet.count())), "wrap");
            if (box.getName().equals(focused)) {
                box.requestFocusInWindow();
            }
        }
        revalidate();
        repaint();
    }
}
