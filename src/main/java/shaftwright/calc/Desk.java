package shaftwright.calc;

import com.sun.star.awt.MessageBoxType;
import com.sun.star.awt.XMessageBoxFactory;
import com.sun.star.awt.XWindow2;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.beans.PropertyValue;
import com.sun.star.deployment.XPackageInformationProvider;
import com.sun.star.frame.XComponentLoader;
import com.sun.star.frame.XController;
import com.sun.star.frame.XFrame;
import com.sun.star.frame.XModel;
import com.sun.star.frame.XTitle;
import com.sun.star.lang.DisposedException;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import com.sun.star.util.CloseVetoException;
import com.sun.star.util.XCloseable;
import java.nio.file.Path;
import java.util.Optional;

/** The window that a menu command was given in, and the program around it. */
final class Desk {
    static final String TITLE = "Shaftwright";

    private static final int OK_BUTTON = 1;

    /** Takes the place of a workbook whose file is to be written. */
    private static final String EMPTY = "private:factory/scalc";

    private final XComponentContext context;
    private final XFrame frame;
    private final PropertyValue[] arguments;
    private final StatusLine journal;

    /**
     * With no window at hand, commands find no document.
     *
     * @param arguments answers that came with the command
     */
    Desk(XComponentContext context, XFrame frameOrNull, PropertyValue[] arguments) {
        this.context = context;
        this.frame = frameOrNull;
        this.arguments = arguments.clone();
        journal = new StatusLine(context, isHidden() ? Optional.empty() : Optional.of(frame));
    }

    private Optional<XModel> model() {
        XController controller = frame == null ? null : frame.getController();
        return controller == null ? Optional.empty() : Optional.ofNullable(controller.getModel());
    }

    /** The spreadsheet in the window. */
    Optional<XSpreadsheetDocument> document() {
        return model().map(model -> UnoRuntime.queryInterface(XSpreadsheetDocument.class, model));
    }

    /** Its workbook file, if it has one. */
    Optional<DocumentFile> file() {
        return document().isEmpty() ? Optional.empty() : model().flatMap(DocumentFile::of);
    }

    /** What the window's document is called. */
    String title() {
        return model().map(model -> UnoRuntime.queryInterface(XTitle.class, model))
                .map(XTitle::getTitle)
                .orElse("this workbook");
    }

    /** The same as a file, which need not be there. */
    Path called() {
        return file().map(DocumentFile::path).orElse(Path.of("this workbook"));
    }

    /** Where work is shown and kept. */
    StatusLine journal() {
        return journal;
    }

    /** Whoever answers; the window is at rest meanwhile. */
    Questions questions() {
        journal.rest();
        Optional<Questions> dialogs =
                isHidden()
                        ? Optional.empty()
                        : Optional.of(
                                new Dialogs(
                                        context,
                                        frame.getContainerWindow(),
                                        file().map(file -> file.path().getParent())));
        return new GivenAnswers(arguments, dialogs);
    }

    /** Opens a workbook that came with the extension as a new one without a name. */
    void openPackedAsNew(String workbook) throws com.sun.star.uno.Exception {
        XPackageInformationProvider packages =
                UnoRuntime.queryInterface(
                        XPackageInformationProvider.class,
                        context.getValueByName(
                                "/singletons/com.sun.star.deployment.PackageInformationProvider"));
        openAsNew(packages.getPackageLocation(ExtensionFile.IDENTIFIER) + "/" + workbook);
    }

    /** Opens a workbook as a new one without a name, in a window of its own. */
    void openAsNew(String url) throws com.sun.star.uno.Exception {
        load(service("com.sun.star.frame.Desktop"), url, "_blank", true);
    }

    /** Takes the document out of the window and closes it, without saving it. */
    void putAway() throws com.sun.star.uno.Exception {
        journal.rest();
        Optional<XModel> before = model();
        load(frame, EMPTY, "_self", false);
        try {
            if (before.isPresent()) {
                UnoRuntime.queryInterface(XCloseable.class, before.get()).close(true);
            }
        } catch (DisposedException | CloseVetoException e) {
            // In a window that is seen it has closed itself; what else holds it keeps it.
            return;
        }
    }

    /** Opens a workbook in the window, in place of what is there. */
    void open(Path file) throws com.sun.star.uno.Exception {
        journal.rest();
        load(frame, DocumentFile.url(file), "_self", false);
    }

    private void load(Object loader, String url, String target, boolean asNew)
            throws com.sun.star.uno.Exception {
        PropertyValue[] options = {
            DocumentFile.property("AsTemplate", asNew), DocumentFile.property("Hidden", isHidden())
        };
        Object opened =
                UnoRuntime.queryInterface(XComponentLoader.class, loader)
                        .loadComponentFromURL(url, target, 0, options);
        if (opened == null) {
            throw new com.sun.star.uno.Exception("the workbook could not be opened: " + url);
        }
    }

    private Object service(String name) throws com.sun.star.uno.Exception {
        return context.getServiceManager().createInstanceWithContext(name, context);
    }

    private boolean isHidden() {
        XWindow2 window =
                frame == null
                        ? null
                        : UnoRuntime.queryInterface(XWindow2.class, frame.getContainerWindow());
        return window == null || !window.isVisible();
    }

    /**
     * Shows an answer where somebody looks. Scripts with a hidden window get it returned, and are
     * taken to the cell of the row that they ask for.
     */
    void show(Answer answer) {
        journal.rest();
        if (answer.equals(Answer.CANCELLED)) {
            return;
        }
        if (isHidden()) {
            new GivenAnswers(arguments, Optional.empty())
                    .row()
                    .filter(row -> row < answer.found().size())
                    .flatMap(row -> answer.found().get(row).place())
                    .ifPresent(place -> CellView.show(frame.getController(), place));
            return;
        }
        try {
            if (!answer.found().isEmpty()) {
                FoundList.open(context, frame, answer);
            } else if (!answer.page().isEmpty()) {
                new Dialogs(context, frame.getContainerWindow(), Optional.empty()).read(answer);
            } else {
                box(answer);
            }
        } catch (com.sun.star.uno.Exception e) {
            // The command is carried out; that it cannot be said does not undo it.
            return;
        }
    }

    private void box(Answer answer) throws com.sun.star.uno.Exception {
        XMessageBoxFactory boxes =
                UnoRuntime.queryInterface(
                        XMessageBoxFactory.class, service("com.sun.star.awt.Toolkit"));
        boxes.createMessageBox(
                        UnoRuntime.queryInterface(XWindowPeer.class, frame.getContainerWindow()),
                        answer.isDone() ? MessageBoxType.INFOBOX : MessageBoxType.WARNINGBOX,
                        OK_BUTTON,
                        TITLE,
                        answer.text())
                .execute();
    }
}
