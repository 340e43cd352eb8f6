package platekeep.client.paper;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Tick;
import platekeep.client.ui.Widgets;
import platekeep.model.find.tag.Tags;
import platekeep.model.plate.Age;

/** The themes and ages of many plates as ticks: given to all, taken from all, or left as each has them. */
final class ManyTicks extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int MOST_THEMES = 40;

    private final List<Tick> themes = new ArrayList<>();
    private final List<Tick> ages = new ArrayList<>();

    ManyTicks() {
        super(new MigLayout("insets 0, gap 2, wrap 2", "[50%, fill]0[50%, fill]"));
        setName("paper-many");
    }

    void show(Shared shared) {
        removeAll();
        themes.clear();
        ages.clear();
        shared.themes().entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
                .limit(MOST_THEMES)
                .forEach(e -> themes.add(new Tick("paper-theme", e.getKey(), e.getValue(), shared.count())));
        for (Age age : Age.values()) {
            String word = (age.ordinal() + 1) + "  " + age.word();
            int have = shared.ages().getOrDefault(age, 0);
            ages.add(new Tick("paper-many-age", age.word(), word, have, Math.max(1, shared.count())));
        }
        add(Widgets.heading("Ages, Alt+1 to Alt+6"), "span 2");
        ages.forEach(tick -> add(tick, "wmin 0"));
        if (!themes.isEmpty()) {
            add(Widgets.heading("Themes that they have"), "span 2, newline, gaptop 6");
            themes.forEach(tick -> add(tick, "wmin 0"));
        }
        revalidate();
        repaint();
    }

    void press(Age age) {
        ages.get(age.ordinal()).doClick();
    }

    void onEnter(Runnable take) {
        themes.forEach(tick -> Widgets.onOwnKey(tick, "ENTER", take));
        ages.forEach(tick -> Widgets.onOwnKey(tick, "ENTER", take));
    }

    List<String> givenThemes() {
        return themes.stream().filter(Tick::gives).map(Tick::tag).toList();
    }

    Set<Age> givenAges() {
        Set<Age> given = new HashSet<>();
        ages.stream().filter(Tick::gives).forEach(tick -> given.add(age(tick)));
        return given;
    }

    Tags lost() {
        return new Tags(
                themes.stream().filter(Tick::takes).map(Tick::tag).toList(),
                ages.stream().filter(Tick::takes).map(ManyTicks::age).toList(),
                List.of(),
                List.of());
    }

    private static Age age(Tick tick) {
        return Age.of(tick.tag()).orElseThrow();
    }
}
