package platekeep.client.join;

import java.awt.Dimension;
import java.awt.Rectangle;
import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import javax.swing.JPanel;
import javax.swing.JTextArea;
import javax.swing.Scrollable;
import net.miginfocom.swing.MigLayout;
import platekeep.client.ui.Widgets;

/** The answers to what is looked at, one below the other. */
final class AnswerPanel extends JPanel implements Scrollable {
    private static final long serialVersionUID = 1L;

    private static final int GAP = 6;

    private final JTextArea question = Widgets.styled(Widgets.prose("join-where", ""), "font: bold +1");
    private final JTextArea standing =
            Widgets.styled(Widgets.prose("join-standing", ""), "foreground: $Platekeep.faintInk");
    private final List<AnswerCard> cards = new ArrayList<>();
    private final transient IntConsumer take;
    private final transient ComponentAdapter refit = new ComponentAdapter() {
        @Override
        public void componentResized(ComponentEvent e) {
            fitSpots();
        }
    };
    private transient Optional<String> shown = Optional.empty();

    AnswerPanel(IntConsumer take) {
        super(new MigLayout("insets 0 0 0 4, fillx, wrap 1, gapy " + GAP + ", hidemode 3", "[grow, fill]"));
        this.take = take;
        setName("join-answers-inside");
        setOpaque(false);
        add(question, "wmin 0");
        add(standing, "wmin 0");
        addComponentListener(refit);
    }

    @Override
    public void addNotify() {
        super.addNotify();
        getParent().removeComponentListener(refit);
        getParent().addComponentListener(refit);
    }

    /** The spots are made as large as leaves room for all answers, so that they are compared without scrolling. */
    private void fitSpots() {
        List<AnswerCard> seen = cards.stream().filter(AnswerCard::isVisible).toList();
        if (!seen.isEmpty()) {
            int words = question.getPreferredSize().height
                    + (standing.isVisible() ? standing.getPreferredSize().height + GAP : 0);
            int each = (getParent().getHeight() - words) / seen.size() - GAP;
            seen.forEach(card -> card.fit(each));
        }
    }

    void show(Board board) {
        Optional<String> asked = board.matter().map(Board.Matter::words);
        boolean isOther = !asked.equals(shown);
        if (isOther) {
            shown = asked;
            scrollRectToVisible(new Rectangle(0, 0, 1, 1));
        }
        question.setText(
                board.matter().map(Board.Matter::words).map(AnswerPanel::upper).orElse(""));
        standing.setText(board.matter().map(AnswerPanel::standing).orElse(""));
        standing.setVisible(!standing.getText().isEmpty());
        if (!board.isComplete() && !isOther) {
            return;
        }
        List<Board.Answer> answers = board.answers();
        while (cards.size() < answers.size()) {
            int index = cards.size();
            AnswerCard card = new AnswerCard(index + 1, () -> take.accept(index));
            cards.add(card);
            add(card, "wmin 0");
        }
        for (int i = 0; i < cards.size(); i++) {
            cards.get(i).setVisible(i < answers.size());
            if (i < answers.size()) {
                cards.get(i).show(answers.get(i));
            }
        }
        fitSpots();
        revalidate();
        repaint();
    }

    void clear() {
        question.setText("");
        standing.setText("");
        cards.forEach(card -> card.setVisible(false));
    }

    private static String upper(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + words.substring(1);
    }

    private static String standing(Board.Matter matter) {
        return switch (matter.state()) {
            case OPEN -> "Open. " + matter.meanwhile();
            case DECIDED -> "Decided. Take another to change it, 0 leaves it open again.";
            case IN -> "Settled by itself, since only one way was possible. Take Before to take it back.";
            case PARTLY -> "Settled in part: some of it is decided elsewhere or painted over.";
            case OUT -> "Taken back: what was before stands.";
            case WHOLE ->
                "Settled by itself. It cannot be taken back alone: paint over it, or go back to before the join"
                        + " (Ctrl+Z).";
        };
    }

    @Override
    public Dimension getPreferredScrollableViewportSize() {
        return getPreferredSize();
    }

    @Override
    public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
        return 24;
    }

    @Override
    public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
        return Math.max(24, visible.height - 48);
    }

    @Override
    public boolean getScrollableTracksViewportWidth() {
        return true;
    }

    @Override
    public boolean getScrollableTracksViewportHeight() {
        return false;
    }
}
