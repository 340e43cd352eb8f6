package platekeep.client.paper.bring;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Takes files that are dropped on a component. */
public final class FileDrop extends TransferHandler {
    private static final long serialVersionUID = 1L;

    private final transient Consumer<List<Path>> dropped;

    /**
     * @param dropped hears which files and folders
     */
    public FileDrop(Consumer<List<Path>> dropped) {
        this.dropped = dropped;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDrop() && support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        try {
            Object given = support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
            List<Path> files = new ArrayList<>();
            if (given instanceof List<?> list) {
                for (Object one : list) {
                    if (one instanceof File file) {
                        files.add(file.toPath());
                    }
                }
            }
            dropped.accept(files);
            return !files.isEmpty();
        } catch (UnsupportedFlavorException | IOException e) {
            return false; // it was let go of elsewhere meanwhile
        }
    }
}
