package platekeep.client.series;

import java.awt.datatransfer.StringSelection;
import java.awt.datatransfer.Transferable;
import java.util.List;
import java.util.function.BiConsumer;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.TransferHandler;

/** Lets the plates of a series be dragged to another place of it. */
final class OrderDrag extends TransferHandler {
    private static final long serialVersionUID = 1L;

    private final JList<SeriesState.Card> list;
    private final transient BiConsumer<List<Integer>, Integer> move;
    private transient List<Integer> dragged = List.of();

    /**
     * @param move hears which places go to before which place
     */
    OrderDrag(JList<SeriesState.Card> list, BiConsumer<List<Integer>, Integer> move) {
        this.list = list;
        this.move = move;
    }

    @Override
    public int getSourceActions(JComponent c) {
        return MOVE;
    }

    @Override
    protected Transferable createTransferable(JComponent c) {
        dragged = SeriesDialogs.places(list.getSelectedIndices());
        return new StringSelection("");
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDrop() && !dragged.isEmpty();
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) {
            return false;
        }
        move.accept(dragged, ((JList.DropLocation) support.getDropLocation()).getIndex());
        return true;
    }

    @Override
    protected void exportDone(JComponent source, Transferable data, int action) {
        dragged = List.of();
    }
}
