package platekeep.client.gallery.tag;

import java.awt.Component;
import java.awt.Dimension;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextField;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Tick;
import platekeep.client.ui.Widgets;
import platekeep.model.find.Summary;
import platekeep.model.find.tag.Tagging;
import platekeep.model.find.tag.Tags;
import platekeep.model.find.tag.ThemeLine;
import platekeep.model.plate.Age;

/** Asks about tags in dialogs. */
public final class TagDialogs implements TagView {
    private static final int ACROSS = 3;
    private static final int MOST_TICKS = 24;

    private final Component over;

    public TagDialogs(Component over) {
        this.over = over;
    }

    /** Tags of one kind: ticks for those that are near at hand, and a field for more. */
    private record Kind(List<Tick> ticks, JTextField more) {
        List<String> gained() {
            List<String> gained = new ArrayList<>(
                    ticks.stream().filter(Tick::gives).map(Tick::tag).toList());
            Arrays.stream(more.getText().split(","))
                    .map(String::strip)
                    .filter(word -> !word.isEmpty())
                    .forEach(gained::add);
            return gained;
        }

        List<String> lost() {
            return ticks.stream().filter(Tick::takes).map(Tick::tag).toList();
        }
    }

    @Override
    public Optional<Answer> askTags(List<Summary> plates, List<String> suggested, List<String> known) {
        JPanel form = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow, fill]", "[]6[]"));
        Kind themes = kind(form, "Themes", "tag-theme", plates, Summary::themes, suggested, "More, parted by commas");
        Kind ages = kind(
                form,
                "Ages",
                "tag-age",
                plates,
                plate -> plate.ages().stream().map(Age::word).toList(),
                Arrays.stream(Age.values()).map(Age::word).toList(),
                "");
        Kind uses = kind(
                form,
                "What for",
                "tag-use",
                plates,
                Summary::uses,
                List.of("insert", "yoke", "bishop", "bonnet", "pillow", "quilt"),
                "Other, parted by commas");
        Kind designers = kind(form, "Designers", "tag-designer", plates, Summary::designers, List.of(), "More names");
        JTextField reason = field("tag-reason", "Reason; without one, the change in words");
        form.add(Widgets.heading("Reason"), "gaptop 4");
        form.add(reason);
        String count = plates.size() == 1 ? plates.get(0).title() : plates.size() + " plates";
        JScrollPane scroll = Widgets.scroll("tag-scroll", form);
        Dimension wanted = form.getPreferredSize();
        scroll.setPreferredSize(new Dimension(Math.max(560, wanted.width + 20), Math.min(520, wanted.height + 4)));
        Ask.Answer answer = Ask.ask(over, "Tags of " + count, scroll, "Save as one version", Optional::empty);
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new Answer(
                        new Tagging(
                                new Tags(themes.gained(), ages(ages.gained()), uses.gained(), designers.gained()),
                                new Tags(themes.lost(), ages(ages.lost()), uses.lost(), designers.lost())),
                        reason.getText()));
    }

    private static List<Age> ages(List<String> words) {
        return words.stream().flatMap(word -> Age.of(word).stream()).toList();
    }

    private static Kind kind(
            JPanel form,
            String heading,
            String name,
            List<Summary> plates,
            Function<Summary, List<String>> tags,
            List<String> offered,
            String hint) {
        Set<String> there = new LinkedHashSet<>();
        if (name.equals("tag-age")) {
            there.addAll(offered);
        }
        Map<String, Integer> counts = new TreeMap<>();
        plates.forEach(plate -> tags.apply(plate).forEach(tag -> counts.merge(tag, 1, Integer::sum)));
        counts.keySet().stream()
                .sorted(Comparator.comparing((String tag) -> -counts.get(tag)))
                .limit(Math.max(1, MOST_TICKS - offered.size()))
                .forEach(there::add);
        there.addAll(offered);
        JPanel grid = new JPanel(new MigLayout("insets 0, gap 4, fillx, wrap " + ACROSS, "[grow, sg]"));
        List<Tick> ticks = new ArrayList<>();
        for (String tag : there.stream().limit(MOST_TICKS).toList()) {
            int have = counts.getOrDefault(tag, 0);
            Tick tick = new Tick(name, tag, have, plates.size());
            if (have == 0) {
                Widgets.styled(tick, "foreground: $Platekeep.faintInk");
            }
            ticks.add(tick);
            grid.add(tick, "wmin 0");
        }
        JTextField more = field(name + "-more", hint);
        form.add(Widgets.heading(heading), "gaptop 4");
        if (!ticks.isEmpty()) {
            form.add(grid);
        }
        if (!hint.isEmpty()) {
            form.add(more);
        }
        return new Kind(ticks, more);
    }

    private static JTextField field(String name, String hint) {
        JTextField field = new JTextField(30);
        field.setName(name);
        field.putClientProperty("JTextField.placeholderText", hint);
        field.getAccessibleContext().setAccessibleName(hint);
        return field;
    }

    @Override
    public Optional<Deed> askThemes(String library, List<ThemeLine> themes) {
        return ThemesDialog.ask(over, library, themes);
    }

    @Override
    public boolean agrees(String sentence, List<String> plates) {
        JPanel form = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow, fill]"));
        form.add(Widgets.prose("theme-preview", sentence), "w 460!, wmin 0");
        if (!plates.isEmpty()) {
            JList<String> titles = new JList<>(
                    plates.stream().sorted(String.CASE_INSENSITIVE_ORDER).toArray(String[]::new));
            titles.setName("theme-preview-plates");
            form.add(new JLabel("These plates change:"), "gaptop 6");
            form.add(Widgets.scroll("theme-preview-scroll", titles), "h 200!, w 460!");
        }
        return Ask.ask(over, "What changes", form, "Save as one version", Optional::empty) == Ask.Answer.YES;
    }

    @Override
    public Optional<Integer> askTagVersion(String library, List<String> versions) {
        JList<String> list = new JList<>(versions.toArray(new String[0]));
        list.setName("tag-versions");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setSelectedIndex(0);
        JPanel form = new JPanel(new MigLayout("insets 0, fillx, wrap 1", "[grow, fill]"));
        form.add(new JLabel("Versions of " + library + " that changed tags or the list of themes:"));
        form.add(Widgets.scroll("tag-versions-scroll", list), "h 280!, w 620!");
        Ask.Answer answer = Ask.ask(over, "Take tags back", form, "See what changes", Optional::empty);
        return answer == Ask.Answer.YES ? Optional.of(list.getSelectedIndex()).filter(at -> at >= 0) : Optional.empty();
    }

    /** Words parted by commas. */
    static List<String> words(String text) {
        return Stream.of(text.split(","))
                .map(String::strip)
                .filter(word -> !word.isEmpty())
                .distinct()
                .toList();
    }
}
