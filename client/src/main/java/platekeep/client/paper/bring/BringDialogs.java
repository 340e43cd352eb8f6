package platekeep.client.paper.bring;

import java.awt.Component;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.swing.ButtonGroup;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JRadioButton;
import net.miginfocom.swing.MigLayout;
import platekeep.client.library.Picture;
import platekeep.client.ui.Ask;
import platekeep.client.ui.Widgets;

/** The questions as dialogs. */
public final class BringDialogs implements BringView {
    private static final String WHAT_GOES = "What the camera wrote beside the picture, such as where and when it was"
            + " taken, is left out. The files themselves stay as they are.";

    private final Component over;

    /**
     * @param over where the questions are asked
     */
    public BringDialogs(Component over) {
        this.over = over;
    }

    @Override
    public Optional<Scans> askScans(List<String> libraries, List<Path> dropped) {
        FilesField files = new FilesField();
        files.put(dropped);
        JComboBox<String> library = new JComboBox<>(libraries.toArray(new String[0]));
        library.setName("paper-library");
        JPanel form = form("Each picture becomes a plate that is only a scan yet. " + WHAT_GOES);
        row(form, "Pictures or folder", files);
        if (libraries.size() > 1) {
            row(form, "Into the library", library);
        }
        return Ask.ask(over, "Bring scans in", form, "Bring in", files::wrong) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new Scans(files.files(), library.getSelectedIndex()));
    }

    @Override
    public Optional<Pictures> askPictures(String title) {
        FilesField files = new FilesField();
        JRadioButton photo = new JRadioButton("photos of the finished work", true);
        JRadioButton scan = new JRadioButton("scans of the paper");
        photo.setName("paper-photo");
        scan.setName("paper-scan");
        ButtonGroup group = new ButtonGroup();
        group.add(photo);
        group.add(scan);
        JPanel form = form("They are kept beside \"" + title + "\". " + WHAT_GOES);
        row(form, "Pictures", files);
        row(form, "They are", photo);
        form.add(scan, "skip, wrap");
        return Ask.ask(over, "Add pictures", form, "Add", files::wrong) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(new Pictures(files.files(), photo.isSelected() ? Picture.Kind.PHOTO : Picture.Kind.SCAN));
    }

    @Override
    public Optional<Size> askSize(Sizes sizes) {
        JRadioButton smaller = new JRadioButton("made smaller:  " + megabytes(sizes.after()) + " altogether", true);
        JRadioButton asTheyAre = new JRadioButton("as they are:  " + megabytes(sizes.before()) + " altogether");
        smaller.setName("paper-smaller");
        asTheyAre.setName("paper-as-they-are");
        ButtonGroup group = new ButtonGroup();
        group.add(smaller);
        group.add(asTheyAre);
        String count =
                sizes.pictures() == 1 ? "The picture is" : sizes.large() + " of " + sizes.pictures() + " pictures are";
        JPanel form = form(count + " larger than a chart needs. Made smaller, the longer side has " + sizes.longest()
                + " dots, enough to print a sheet of A4 in full; a library with small pictures is quicker to send.");
        row(form, "Keep them", smaller);
        form.add(asTheyAre, "skip, wrap");
        return Ask.ask(over, "How large", form, "Bring in", Optional::empty) == Ask.Answer.GIVEN_UP
                ? Optional.empty()
                : Optional.of(smaller.isSelected() ? Size.SMALLER : Size.AS_THEY_ARE);
    }

    /** 1.4 MB. */
    static String megabytes(long bytes) {
        double mega = bytes / 1e6;
        return mega < 0.1
                ? Math.max(1, bytes / 1000) + " kB"
                : String.format(Locale.ENGLISH, mega < 10 ? "%.1f MB" : "%.0f MB", mega);
    }

    private static JPanel form(String prose) {
        JPanel form = new JPanel(new MigLayout("insets 0, fillx", "[right]10[grow, fill]", "[]8[]"));
        form.add(Widgets.prose("paper-prose", prose), "span 2, growx, wmin 460, wrap, gapbottom 8");
        return form;
    }

    private static void row(JPanel form, String word, javax.swing.JComponent part) {
        JLabel label = new JLabel(word);
        label.setLabelFor(part instanceof FilesField files ? files.text() : part);
        form.add(label);
        form.add(part, "wrap");
    }
}
