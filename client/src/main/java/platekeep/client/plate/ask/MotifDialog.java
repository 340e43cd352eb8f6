package platekeep.client.plate.ask;

import java.awt.Component;
import java.awt.Dimension;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.DefaultListCellRenderer;
import javax.swing.ImageIcon;
import javax.swing.JCheckBox;
import javax.swing.JLabel;
import javax.swing.JList;
import javax.swing.JPanel;
import javax.swing.ListSelectionModel;
import net.miginfocom.swing.MigLayout;
import platekeep.client.plate.work.PlateView;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Thumbnails;
import platekeep.client.ui.Widgets;
import platekeep.model.plate.Plate;

/** Shows the kept motifs as pictures, one of them to be put in. */
public final class MotifDialog {
    private static final Dimension PICTURE = new Dimension(150, 110);

    private MotifDialog() {}

    public static Optional<PlateView.MotifAnswer> ask(Component over, List<Plate> motifs) {
        JList<Plate> list = new JList<>(motifs.toArray(new Plate[0]));
        list.setName("motif-list");
        list.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
        list.setLayoutOrientation(JList.HORIZONTAL_WRAP);
        list.setVisibleRowCount(-1);
        list.setCellRenderer(new Cell());
        list.setFixedCellWidth(PICTURE.width + 16);
        list.setFixedCellHeight(PICTURE.height + 32);
        list.setSelectedIndex(0);
        list.getAccessibleContext().setAccessibleName("Motifs");
        JCheckBox forget = new JCheckBox("Keep the chosen one no longer");
        forget.setName("motif-forget");
        JPanel form = new JPanel(new MigLayout("insets 0, fill, wrap 1", "[grow, fill]", "[grow, fill][]"));
        form.add(Widgets.scroll("motif-scroll", list), "w 540!, h 320!");
        form.add(forget);
        Ask.Answer answer = Ask.ask(
                over,
                "Put a motif in",
                form,
                "Go on",
                () -> list.getSelectedIndex() < 0 ? Optional.of("Choose a motif first.") : Optional.empty());
        return answer == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new PlateView.MotifAnswer(
                        list.getSelectedIndex(),
                        forget.isSelected() ? PlateView.MotifAnswer.What.FORGET : PlateView.MotifAnswer.What.PUT));
    }

    private static final class Cell extends DefaultListCellRenderer {
        private static final long serialVersionUID = 1L;

        private final transient Map<String, ImageIcon> pictures = new HashMap<>();

        @Override
        public Component getListCellRendererComponent(
                JList<?> list, Object value, int index, boolean isSelected, boolean hasFocus) {
            Plate motif = (Plate) value;
            super.getListCellRendererComponent(list, motif.title(), index, isSelected, hasFocus);
            setIcon(pictures.computeIfAbsent(motif.id(), id -> new ImageIcon(Thumbnails.draw(motif, PICTURE))));
            setHorizontalTextPosition(JLabel.CENTER);
            setVerticalTextPosition(JLabel.BOTTOM);
            setHorizontalAlignment(JLabel.CENTER);
            return this;
        }
    }
}
