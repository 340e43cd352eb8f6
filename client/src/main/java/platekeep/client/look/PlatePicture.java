package platekeep.client.look;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.Optional;
import javax.swing.JComponent;
import platekeep.client.ui.Look;
import platekeep.client.ui.PictureSource;
import platekeep.client.ui.Pictures;

/** A picture of a plate as wide as its room. */
final class PlatePicture extends JComponent {
    private static final long serialVersionUID = 1L;

    private transient Optional<Pictures> pictures = Optional.empty();
    private transient Optional<PictureSource> source = Optional.empty();

    PlatePicture(String name) {
        setName(name);
    }

    void pictures(Pictures drawn) {
        this.pictures = Optional.of(drawn);
    }

    void show(Optional<PictureSource> newSource) {
        this.source = newSource;
        setVisible(source.isPresent());
        repaint();
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(100, Math.max(60, getWidth() * 3 / 4));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics;
        double zoom = g.getTransform().getScaleX();
        Dimension dots = new Dimension((int) Math.ceil(getWidth() * zoom), (int) Math.ceil(getHeight() * zoom));
        g.setColor(new Color(Look.cloth()));
        g.fillRect(0, 0, getWidth(), getHeight());
        pictures.flatMap(drawn -> source.flatMap(one -> drawn.of(one, dots)))
                .ifPresent(image -> g.drawImage(image, 0, 0, getWidth(), getHeight(), null));
    }
}
