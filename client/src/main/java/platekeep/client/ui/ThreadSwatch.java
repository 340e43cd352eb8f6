package platekeep.client.ui;

import java.awt.Color;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.image.BufferedImage;
import javax.swing.JComponent;

/** A shade as it will look: one cable of it on the cloth. */
public final class ThreadSwatch extends JComponent {
    private static final long serialVersionUID = 1L;

    private int rgb;

    public ThreadSwatch(int rgb) {
        this.rgb = rgb;
        setPreferredSize(new Dimension(60, 30));
    }

    /** Shows another shade. */
    public void show(int newRgb) {
        rgb = newRgb;
        repaint();
    }

    @Override
    protected void paintComponent(Graphics g) {
        int width = getWidth();
        int height = getHeight();
        int[] pixels = new int[width * height];
        double pleat = width / 3.0;
        PleatedCloth.fill(pixels, width, 0, pleat, Look.cloth());
        ThreadMask mask = new ThreadMask(2 * pleat, height * 0.55, 0, 0);
        int x = (int) (pleat / 2);
        int y = (int) (height * 0.22);
        mask.shade(pixels, width, height, x, y);
        mask.lay(pixels, width, height, x, y, rgb);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        image.getRaster().setDataElements(0, 0, width, height, pixels);
        g.drawImage(image, 0, 0, null);
        g.setColor(new Color(0, 0, 0, 60));
        g.drawRect(0, 0, width - 1, height - 1);
    }
}
