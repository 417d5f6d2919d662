package shaftwright.window;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.TransferHandler;

/** Takes files that are dropped or pasted. */
final class FileDrop extends TransferHandler {
    private static final long serialVersionUID = 1L;

    private final transient Consumer<List<Path>> files;

    FileDrop(Consumer<List<Path>> files) {
        this.files = files;
    }

    @Override
    public boolean canImport(TransferSupport support) {
        return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
    }

    @Override
    public boolean importData(TransferSupport support) {
        if (!canImport(support)) {
            return false;
        }
        try {
            List<Path> dropped = paths(support.getTransferable());
            if (!dropped.isEmpty()) {
                files.accept(dropped);
            }
            return !dropped.isEmpty();
        } catch (UnsupportedFlavorException | IOException e) {
            return false;
        }
    }

    private static List<Path> paths(Transferable transferable)
            throws UnsupportedFlavorException, IOException {
        List<Path> paths = new ArrayList<>();
        Object data = transferable.getTransferData(DataFlavor.javaFileListFlavor);
        if (data instanceof List<?> list) {
            for (Object each : list) {
                if (each instanceof File file) {
                    paths.add(file.toPath());
                }
            }
        }
        return paths;
    }
}
