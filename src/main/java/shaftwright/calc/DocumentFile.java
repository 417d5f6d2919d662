package shaftwright.calc;

import com.sun.star.beans.PropertyValue;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XStorable;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.util.XModifiable;
import java.net.URI;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;

/**
 * The .xlsx file that a document was opened from or saved as.
 *
 * @param path where it is
 * @param model the document
 */
record DocumentFile(Path path, XModel model) {
    /** Empty where the document has no file, or one that is no workbook of ours. */
    static Optional<DocumentFile> of(XModel model) {
        return path(model.getURL())
                .filter(path -> isOurs(path))
                .map(path -> new DocumentFile(path, model));
    }

    private static boolean isOurs(Path path) {
        String name = String.valueOf(path.getFileName()).toLowerCase(Locale.ROOT);
        return name.endsWith(".xlsx") || name.endsWith(".xlsm");
    }

    /** Where a URL of the office leads on this machine. */
    static Optional<Path> path(String url) {
        try {
            return url.startsWith("file:")
                    ? Optional.of(Path.of(URI.create(url)))
                    : Optional.empty();
        } catch (IllegalArgumentException | FileSystemNotFoundException e) {
            return Optional.empty();
        }
    }

    /** As the office names it. */
    static String url(Path path) {
        return path.toUri().toString();
    }

    /** Whether the document holds what its file does not. */
    boolean isModified() {
        return UnoRuntime.queryInterface(XModifiable.class, model).isModified();
    }

    /** Saves the document as it was saved before. */
    void save() throws com.sun.star.io.IOException {
        UnoRuntime.queryInterface(XStorable.class, model).store();
    }

    static PropertyValue property(String name, Object value) {
        PropertyValue property = new PropertyValue();
        property.Name = name;
        property.Value = value;
        return property;
    }
}
