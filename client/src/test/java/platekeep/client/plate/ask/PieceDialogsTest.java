package platekeep.client.plate.ask;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JList;
import org.junit.jupiter.api.Test;
import platekeep.client.plate.Charted;
import platekeep.model.plate.Palette;

class PieceDialogsTest {

    @Test
    void everyColourInABoxHasItsShadeAndWhatStandsAboveThemNone() {
        Palette palette = Charted.of("abc").palette();
        JComboBox<String> box = PieceDialogs.box("colours", List.of("all colours"), List.of('a', 'c'), palette);
        List<String> seen = new ArrayList<>();
        for (int at = -1; at < box.getItemCount(); at++) {
            String word = at < 0 ? (String) box.getSelectedItem() : box.getItemAt(at);
            JLabel label =
                    (JLabel) box.getRenderer().getListCellRendererComponent(new JList<>(), word, at, false, false);
            seen.add(label.getText() + (label.getIcon() == null ? "" : " " + ((Shade) label.getIcon()).rgb()));
        }
        assertThat(seen).containsExactly("all colours", "all colours", "apple " + 0xA63C2B, "chalk " + 0xF4F1E8);
    }
}
