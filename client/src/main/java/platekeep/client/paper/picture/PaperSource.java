package platekeep.client.paper.picture;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;
import platekeep.client.library.Library;
import platekeep.client.library.LibraryException;
import platekeep.client.library.Picture;
import platekeep.client.ui.Look;
import platekeep.client.ui.PictureSource;
import platekeep.client.ui.Sign;

/** A picture of a library as it is seen. */
public record PaperSource(Library library, Picture picture) implements PictureSource {
    private static final Logger LOG = Logger.getLogger(PaperSource.class.getName());
    private static final Dimension NOTHING = new Dimension(120, 90);

    /** What stands for a plate that has no chart yet: its first scan, else its first photo. */
    public static Optional<PaperSource> standingFor(Library library, List<Picture> ofPlate) {
        return ofPlate.stream()
                .min(Comparator.comparing(Picture::kind).thenComparing(Picture::path))
                .map(picture -> new PaperSource(library, picture));
    }

    @Override
    public String key() {
        return picture.content();
    }

    @Override
    public BufferedImage fitted(Dimension into) {
        try {
            String name = picture.path().substring(picture.path().lastIndexOf('/') + 1);
            return Dots.fitted(name, PictureFile.of(name, library.bytes(picture)), into);
        } catch (LibraryException e) {
            LOG.log(Level.WARNING, "a picture could not be shown", e);
            return cannotBeShown();
        }
    }

    private static BufferedImage cannotBeShown() {
        BufferedImage image = new BufferedImage(NOTHING.width, NOTHING.height, BufferedImage.TYPE_INT_ARGB);
        Graphics2D g = image.createGraphics();
        Sign.TROUBLE.icon(48, Look.trouble()).paintIcon(new javax.swing.JLabel(), g, 36, 21);
        g.dispose();
        return image;
    }
}
