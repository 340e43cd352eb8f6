package platekeep.client.gui;

import java.awt.Point;
import java.awt.Rectangle;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.io.File;
import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.JWindow;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/** Another program on the display from which files are dragged, as from a window of a file manager. */
final class FileManager implements AutoCloseable {
    private final JWindow window;
    private final JList<String> list;

    /**
     * @param place where it lies on the display
     */
    FileManager(Rectangle place, List<Path> files) throws InterruptedException, InvocationTargetException {
        JWindow[] made = new JWindow[1];
        this.list = new JList<>(
                files.stream().map(file -> String.valueOf(file.getFileName())).toArray(String[]::new));
        SwingUtilities.invokeAndWait(() -> {
            list.setDragEnabled(true);
            list.setTransferHandler(new Files(files));
            list.setSelectionInterval(0, files.size() - 1);
            made[0] = new JWindow();
            made[0].add(list);
            made[0].setBounds(place);
            made[0].setAlwaysOnTop(true);
            made[0].setVisible(true);
        });
        this.window = made[0];
    }

    /** On the first of its files, all of which are chosen. */
    Point files() {
        Point at = list.getLocationOnScreen();
        return new Point(at.x + 20, at.y + 8);
    }

    @Override
    public void close() {
        SwingUtilities.invokeLater(window::dispose);
    }

    /** Gives all files away. */
    private static final class Files extends TransferHandler {
        private static final long serialVersionUID = 1L;

        private final transient List<Path> files;

        Files(List<Path> files) {
            this.files = files;
        }

        @Override
        public int getSourceActions(JComponent c) {
            return COPY;
        }

        @Override
        protected Transferable createTransferable(JComponent c) {
            return new Load(files.stream().map(Path::toFile).toList());
        }
    }

    /** A list of files as programs hand it to each other. */
    private record Load(List<File> files) implements Transferable {
        @Override
        public DataFlavor[] getTransferDataFlavors() {
            return new DataFlavor[] {DataFlavor.javaFileListFlavor};
        }

        @Override
        public boolean isDataFlavorSupported(DataFlavor flavor) {
            return flavor.equals(DataFlavor.javaFileListFlavor);
        }

        @Override
        public Object getTransferData(DataFlavor flavor) {
            return files;
        }
    }
}
