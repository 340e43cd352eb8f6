package platekeep.client.window;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.ButtonGroup;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import net.miginfocom.swing.MigLayout;
import platekeep.client.room.Screen;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.PleatedCloth;
import platekeep.client.ui.Widgets;

/** The rail at the left: a button for each screen, and below them a strip of pleated cloth. */
final class Rail extends JPanel {
    private static final long serialVersionUID = 1L;

    static final int WIDTH = 84;

    private final List<JToggleButton> buttons = new ArrayList<>();
    private transient BufferedImage cloth;

    Rail(List<Screen> screens, Consumer<Screen> choose) {
        super(new MigLayout("insets 10 6 10 6, gap 4, fillx", "[grow, fill]"));
        setName("rail");
        setPreferredSize(new Dimension(WIDTH, 10));
        setBorder(Widgets.edge(0, 0, 0, 1));
        ButtonGroup group = new ButtonGroup();
        for (int i = 0; i < screens.size(); i++) {
            Screen screen = screens.get(i);
            RailButton button = new RailButton(screen, i + 1);
            button.addActionListener(e -> choose.accept(screen));
            group.add(button);
            buttons.add(button);
            add(button, "wrap, h 46:62:62");
        }
    }

    /** Marks the screen that is in front. */
    void inFront(int screen) {
        buttons.get(screen).setSelected(true);
    }

    @Override
    protected void paintComponent(Graphics g) {
        super.paintComponent(g);
        int height = 64;
        int width = getWidth() - 1;
        if (cloth == null || cloth.getWidth() != width || isOld()) {
            cloth = PleatedCloth.picture(width, height, 7, new Color(Look.cloth()));
        }
        int top = getHeight() - height;
        JToggleButton last = buttons.get(buttons.size() - 1);
        if (top < last.getY() + last.getHeight()) {
            // no room for it below the screens
            return;
        }
        g.drawImage(cloth, 0, top, null);
        paintStitches((Graphics2D) g.create(), width, top + height / 2);
    }

    private boolean isOld() {
        return (cloth.getRGB(3, 3) & 0xFFFFFF) != sample();
    }

    private static int sample() {
        return PleatedCloth.picture(8, 4, 7, new Color(Look.cloth())).getRGB(3, 3) & 0xFFFFFF;
    }

    /** A row of cables in four thread colours. */
    private static void paintStitches(Graphics2D g, int width, int middle) {
        PlatePainter.smooth(g);
        int[] threads = {0xA63C2B, 0xE9B83C, 0x2C5F86, 0x4F7A3A};
        for (int i = 0; i * 7 < width; i++) {
            int y = middle + (i % 2 == 0 ? -6 : 1);
            g.setColor(new Color(threads[i / 3 % threads.length]));
            g.fill(new RoundRectangle2D.Double(i * 7 - 7, y, 14, 6, 6, 6));
        }
        g.dispose();
    }

    /** A sign over a word; the one in front stands on a ground of its own. */
    private static final class RailButton extends JToggleButton {
        private static final long serialVersionUID = 1L;

        private final transient Screen screen;

        RailButton(Screen screen, int number) {
            this.screen = screen;
            setName("rail-" + screen.word().toLowerCase(java.util.Locale.ROOT));
            setToolTipText(screen.word() + " (Ctrl+" + number + ")");
            getAccessibleContext().setAccessibleName(screen.word());
            setOpaque(false);
            setContentAreaFilled(false);
            setBorderPainted(false);
            setRolloverEnabled(true);
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D g = (Graphics2D) graphics.create();
            PlatePainter.smooth(g);
            RoundRectangle2D ground = new RoundRectangle2D.Double(1, 1, getWidth() - 2, getHeight() - 2, 12, 12);
            if (isSelected()) {
                g.setColor(Look.chosen());
                g.fill(ground);
            } else if (getModel().isRollover()) {
                g.setColor(Look.card());
                g.fill(ground);
            }
            if (isFocusOwner()) {
                g.setColor(Look.accent());
                g.setStroke(new BasicStroke(1.5f));
                g.draw(ground);
            }
            Color ink = isSelected() ? Look.accent() : Look.faintInk();
            setForeground(ink);
            screen.icon().paintIcon(this, g, (getWidth() - screen.icon().getIconWidth()) / 2, 10);
            g.setFont(getFont()
                    .deriveFont(isSelected() ? Font.BOLD : Font.PLAIN, getFont().getSize2D() - 1f));
            FontMetrics metrics = g.getFontMetrics();
            g.setColor(ink);
            g.drawString(screen.word(), (getWidth() - metrics.stringWidth(screen.word())) / 2, getHeight() - 12);
            g.dispose();
        }
    }
}
