package platekeep.client.join;

import java.awt.BasicStroke;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.event.MouseAdapter;
import java.awt.event.MouseEvent;
import java.awt.geom.RoundRectangle2D;
import javax.swing.JButton;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Look;
import platekeep.client.ui.PlatePainter;
import platekeep.client.ui.Sign;
import platekeep.client.ui.ThreadSwatch;
import platekeep.client.ui.Widgets;

/** One answer: whose and of which day, the spot as it would be, and what it is in words. A click anywhere takes it. */
final class AnswerCard extends JPanel {
    private static final long serialVersionUID = 1L;

    private final JLabel who;
    private final JLabel detail;
    private final SpotPicture picture;
    private final ThreadSwatch shade = new ThreadSwatch(0);
    private final JTextArea words;
    private final JButton take;
    private boolean stands;

    AnswerCard(int number, Runnable press) {
        super(new MigLayout("insets 8 10 9 10, fillx, wrap 1, gapy 4, hidemode 3", "[grow, fill]"));
        setName("join-answer-" + number);
        setOpaque(false);
        who = Widgets.styled(Widgets.label("join-who-" + number, ""), "font: bold");
        detail = Widgets.faint("join-detail-" + number, "");
        picture = new SpotPicture("join-spot-" + number);
        words = Widgets.prose("join-value-" + number, "");
        take = Widgets.button("join-take-" + number, "Take (" + number + ")", press);
        Widgets.styled(take, "margin: 2,8,2,8; font: -1");
        JPanel head = Widgets.clear(new MigLayout("insets 0, fillx, gap 6 0", "[grow, fill][]", "[]2[]"));
        head.add(who, "wmin 0");
        head.add(take, "wrap");
        head.add(detail, "spanx 2, wmin 0");
        add(head, "wmin 0");
        add(picture, "wmin 0");
        add(shade, "h 34!");
        add(words, "wmin 0");
        MouseAdapter click = new MouseAdapter() {
            @Override
            public void mouseClicked(MouseEvent e) {
                press.run();
            }
        };
        addMouseListener(click);
        picture.addMouseListener(click);
        shade.addMouseListener(click);
        words.addMouseListener(click);
        Widgets.clickable(this);
    }

    void show(Board.Answer answer) {
        stands = answer.stands();
        who.setText(answer.who());
        who.setIcon(stands ? Sign.TICK.icon(16, Look.accent()) : null);
        detail.setText(answer.detail());
        picture.show(answer.spot());
        shade.setVisible(answer.shade().isPresent());
        answer.shade().ifPresent(shade::show);
        words.setText(answer.words());
        take.setVisible(!stands);
        take.getAccessibleContext().setAccessibleName("Take " + answer.who() + ": " + answer.words());
        getAccessibleContext()
                .setAccessibleName(answer.who() + ", " + answer.detail() + ": " + answer.words()
                        + (stands ? "; this is what stands" : ""));
        repaint();
    }

    /** Leaves the card's spot what is left of a height in pixels. */
    void fit(int height) {
        int spot = picture.isVisible() ? picture.getPreferredSize().height : 0;
        picture.fit(height - getPreferredSize().height + spot);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D g = (Graphics2D) graphics.create();
        PlatePainter.smooth(g);
        RoundRectangle2D.Double ground = new RoundRectangle2D.Double(1, 1, getWidth() - 2.0, getHeight() - 2.0, 12, 12);
        g.setColor(stands ? Look.chosen() : Look.card());
        g.fill(ground);
        g.setStroke(new BasicStroke(stands ? 1.8f : 1f));
        g.setColor(stands ? Look.accent() : Look.edge());
        g.draw(ground);
        g.dispose();
    }
}
