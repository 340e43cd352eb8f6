package platekeep.client.ui;

import java.awt.Color;
import java.awt.Cursor;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Point;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.event.MouseWheelEvent;
import java.awt.image.BufferedImage;
import java.util.Optional;
import javax.accessibility.AccessibleContext;
import javax.accessibility.AccessibleRole;
import javax.swing.JComponent;

/**
 * One picture, as large as there is room; it can be looked at closer with the wheel or with plus and minus, and pushed
 * about with the mouse or the arrow keys.
 */
public final class BigPicture extends JComponent {
    private static final long serialVersionUID = 1L;

    private static final Dimension FINEST = new Dimension(2400, 2400);
    private static final double[] CLOSER = {1, 1.5, 2, 3, 4, 6};
    private static final int PUSH = 60;
    private static final int STEP = 100;

    private final transient Pictures pictures;
    private transient Optional<PictureSource> shown = Optional.empty();
    private String otherwise = "";
    private int closer;
    private double x;
    private double y;

    /**
     * @param name of the component
     * @param pictures reads it in the background and repaints when it is there
     */
    public BigPicture(String name, Pictures pictures) {
        this.pictures = pictures;
        setName(name);
        setFocusable(true);
        setMinimumSize(new Dimension(120, 120));
        for (String key : new String[] {"PLUS", "ADD", "EQUALS", "shift EQUALS"}) {
            Widgets.onOwnKey(this, key, () -> closer(1));
        }
        for (String key : new String[] {"MINUS", "SUBTRACT"}) {
            Widgets.onOwnKey(this, key, () -> closer(-1));
        }
        Widgets.onOwnKey(this, "0", () -> closer(-CLOSER.length));
        Widgets.onOwnKey(this, "LEFT", () -> push(PUSH, 0));
        Widgets.onOwnKey(this, "RIGHT", () -> push(-PUSH, 0));
        Widgets.onOwnKey(this, "UP", () -> push(0, PUSH));
        Widgets.onOwnKey(this, "DOWN", () -> push(0, -PUSH));
        Hand hand = new Hand();
        addMouseListener(hand);
        addMouseMotionListener(hand);
        addMouseWheelListener(hand);
    }

    /**
     * Shows a picture.
     *
     * @param words for those who cannot see it
     * @param instead what is said where there is none
     */
    public void show(Optional<PictureSource> source, String words, String instead) {
        if (!source.equals(shown)) {
            closer = 0;
            x = 0;
            y = 0;
        }
        shown = source;
        otherwise = instead;
        getAccessibleContext().setAccessibleName(words);
        repaint();
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;

                @Override
                public AccessibleRole getAccessibleRole() {
                    return AccessibleRole.ICON;
                }
            };
        }
        return accessibleContext;
    }

    /** Goes nearer, or further away with a number below 0. */
    public void closer(int steps) {
        closer = Math.max(0, Math.min(CLOSER.length - 1, closer + steps));
        push(0, 0);
        setCursor(Cursor.getPredefinedCursor(closer > 0 ? Cursor.MOVE_CURSOR : Cursor.DEFAULT_CURSOR));
    }

    private void push(double right, double down) {
        double most = CLOSER[closer] - 1;
        x = Math.max(-most * getWidth() / 2, Math.min(most * getWidth() / 2, x + right));
        y = Math.max(-most * getHeight() / 2, Math.min(most * getHeight() / 2, y + down));
        repaint();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        Optional<BufferedImage> image = shown.flatMap(source -> pictures.fitted(source, wanted()));
        if (image.isPresent()) {
            paint(g, image.get());
        } else {
            g.setColor(Look.faintInk());
            String words = shown.isPresent() ? "Reading the picture …" : otherwise;
            int width = g.getFontMetrics().stringWidth(words);
            g.drawString(words, (getWidth() - width) / 2, getHeight() / 2);
        }
        if (isFocusOwner()) {
            g.setColor(Look.accent());
            g.drawRect(1, 1, getWidth() - 3, getHeight() - 3);
        }
        g.dispose();
    }

    /** Seen as a whole it is read in about its size on the screen, which looks best; closer, as fine as it is. */
    private Dimension wanted() {
        double dots = getGraphicsConfiguration() == null
                ? 1
                : getGraphicsConfiguration().getDefaultTransform().getScaleX();
        int width = (int) Math.ceil(getWidth() * dots / STEP) * STEP;
        int height = (int) Math.ceil(getHeight() * dots / STEP) * STEP;
        return closer > 0 ? FINEST : new Dimension(Math.max(STEP, width), Math.max(STEP, height));
    }

    private void paint(Graphics2D g, BufferedImage image) {
        double air = 16;
        double zoom = Math.min((getWidth() - 2 * air) / image.getWidth(), (getHeight() - 2 * air) / image.getHeight())
                * CLOSER[closer];
        int width = (int) Math.round(image.getWidth() * zoom);
        int height = (int) Math.round(image.getHeight() * zoom);
        int left = (int) Math.round((getWidth() - width) / 2.0 + x);
        int top = (int) Math.round((getHeight() - height) / 2.0 + y);
        g.setColor(new Color(0, 0, 0, 50));
        g.fillRect(left + 3, top + 3, width, height);
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BICUBIC);
        g.drawImage(image, left, top, width, height, null);
    }

    /** The mouse on the picture. */
    private final class Hand extends MouseAdapter {
        private Point last = new Point();

        @Override
        public void mousePressed(MouseEvent e) {
            last = e.getPoint();
            requestFocusInWindow();
        }

        @Override
        public void mouseDragged(MouseEvent e) {
            push(e.getX() - last.getX(), e.getY() - last.getY());
            last = e.getPoint();
        }

        @Override
        public void mouseWheelMoved(MouseWheelEvent e) {
            closer(e.getWheelRotation() < 0 ? 1 : -1);
        }
    }
}
