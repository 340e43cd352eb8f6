package platekeep.client.look;

import java.awt.BorderLayout;
import java.awt.Dimension;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Pictures;
import platekeep.client.ui.PlateSource;
import platekeep.client.ui.Widgets;

/** The chosen hit, larger, below what it is compared with; how the two differ, and what can be done. */
final class DetailPanel extends JPanel {
    private static final long serialVersionUID = 1L;

    private static final int WIDTH = 292;

    private final PlatePicture picture = new PlatePicture("look-detail-picture");
    private final PlatePicture beside = new PlatePicture("look-beside-picture");
    private final JLabel title = Widgets.title("look-detail-title", "");
    private final JTextArea why = Widgets.prose("look-detail-why", "");
    private final JTextArea where = Widgets.prose("look-detail-where", "");
    private final JLabel besideTitle = Widgets.heading("");
    private final JLabel differ = Widgets.heading("How they differ");
    private final JTextArea differences = Widgets.prose("look-differences", "");
    private final JButton compare;
    private final JButton bringBack;
    private final JScrollPane scroll;
    private final JPanel inside =
            new JPanel(new MigLayout("insets 14, fillx, hidemode 3, gap 6", "[grow, fill, 0:0:]"));

    /** What can be done with a hit. */
    enum Act {
        OPEN,
        COMPARE,
        LIKE,
        BRING_BACK
    }

    DetailPanel(Pictures pictures, Consumer<Act> act) {
        super(new BorderLayout());
        setName("look-detail");
        setPreferredSize(new Dimension(WIDTH, 10));
        setBorder(Widgets.edge(0, 1, 0, 0));
        picture.pictures(pictures);
        beside.pictures(pictures);
        compare = Widgets.button("look-compare", "Side by side", () -> act.accept(Act.COMPARE));
        bringBack = Widgets.button("look-bring-back", "Bring back…", () -> act.accept(Act.BRING_BACK));
        Widgets.styled(where, "foreground: $Platekeep.faintInk");
        inside.add(title, "wmin 0, wrap");
        inside.add(why, "wmin 0, wrap");
        inside.add(where, "wmin 0, wrap");
        inside.add(picture, "h 204!, wrap");
        inside.add(buttons(act), "wrap, gapbottom 8");
        inside.add(besideTitle, "wmin 0, wrap");
        inside.add(beside, "h 204!, wrap");
        inside.add(differ, "wrap, gaptop 6");
        inside.add(differences, "wmin 0, wrap");
        scroll = Widgets.scroll("look-detail-scroll", inside);
        scroll.setVisible(false);
        add(scroll, BorderLayout.CENTER);
    }

    private JPanel buttons(Consumer<Act> act) {
        JPanel buttons =
                Widgets.clear(new MigLayout("insets 0, gap 6, hidemode 3, wrap 2, fillx", "[grow, fill][grow, fill]"));
        buttons.add(Widgets.mainButton("look-open", "Open", () -> act.accept(Act.OPEN)));
        buttons.add(compare);
        buttons.add(Widgets.button("look-like", "Like this one", () -> act.accept(Act.LIKE)));
        buttons.add(bringBack);
        return buttons;
    }

    void show(Optional<LookState.Detail> more) {
        scroll.setVisible(more.isPresent());
        more.ifPresent(detail -> {
            LookCard card = detail.card();
            title.setText(card.title());
            title.setToolTipText(card.title());
            why.setText(card.why());
            where.setText(card.where());
            where.setVisible(!card.where().isEmpty());
            picture.show(Optional.of(card.picture()));
            besideTitle.setText(detail.besideTitle());
            besideTitle.setVisible(detail.beside().isPresent());
            beside.show(detail.beside()
                    .map(plate -> new PlateSource(
                            "beside " + detail.besideTitle() + detail.beside().hashCode(), plate)));
            differ.setVisible(!detail.differences().isEmpty());
            differences.setText(String.join("\n", detail.differences()));
            differences.setVisible(!detail.differences().isEmpty());
            compare.setVisible(detail.canCompare());
            bringBack.setVisible(detail.canBringBack());
        });
        revalidate();
    }
}
