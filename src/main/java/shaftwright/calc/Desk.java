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
import com.sun.star.frame.XTitle;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XMultiComponentFactory;
import com.sun.star.sheet.XSpreadsheetDocument;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.Optional;

/** The window that a menu command was given in, and the program around it. */
final class Desk {
    private static final int OK_BUTTON = 1;

    private final XComponentContext context;
    private final XFrame frame;

    /** With no window at hand, commands find no document. */
    Desk(XComponentContext context, XFrame frameOrNull) {
        this.context = context;
        this.frame = frameOrNull;
    }

    /** The spreadsheet in the window. */
    Optional<XSpreadsheetDocument> document() {
        XController controller = frame == null ? null : frame.getController();
        if (controller == null) {
            return Optional.empty();
        }
        return Optional.ofNullable(
                UnoRuntime.queryInterface(XSpreadsheetDocument.class, controller.getModel()));
    }

    /** What the window's document is called. */
    String title() {
        XTitle title =
                frame == null || frame.getController() == null
                        ? null
                        : UnoRuntime.queryInterface(XTitle.class, frame.getController().getModel());
        return title == null ? "this workbook" : title.getTitle();
    }

    /** Opens a workbook that came with the extension as a new one without a name. */
    void openAsNew(String workbook) throws com.sun.star.uno.Exception {
        XPackageInformationProvider packages =
                UnoRuntime.queryInterface(
                        XPackageInformationProvider.class,
                        context.getValueByName(
                                "/singletons/com.sun.star.deployment.PackageInformationProvider"));
        String url = packages.getPackageLocation(ExtensionFile.IDENTIFIER) + "/" + workbook;
        XComponentLoader loader =
                UnoRuntime.queryInterface(
                        XComponentLoader.class, service("com.sun.star.frame.Desktop"));
        PropertyValue[] options = {property("AsTemplate", true), property("Hidden", isHidden())};
        XComponent opened = loader.loadComponentFromURL(url, "_blank", 0, options);
        if (opened == null) {
            throw new com.sun.star.uno.Exception("the workbook could not be opened: " + url);
        }
    }

    private Object service(String name) throws com.sun.star.uno.Exception {
        XMultiComponentFactory services = context.getServiceManager();
        return services.createInstanceWithContext(name, context);
    }

    static PropertyValue property(String name, Object value) {
        PropertyValue property = new PropertyValue();
        property.Name = name;
        property.Value = value;
        return property;
    }

    private boolean isHidden() {
        XWindow2 window =
                frame == null
                        ? null
                        : UnoRuntime.queryInterface(XWindow2.class, frame.getContainerWindow());
        return window == null || !window.isVisible();
    }

    /** Shows an answer where somebody looks; scripts with a hidden window get it returned. */
    void show(Answer answer) {
        if (isHidden()) {
            return;
        }
        try {
            XMessageBoxFactory boxes =
                    UnoRuntime.queryInterface(
                            XMessageBoxFactory.class, service("com.sun.star.awt.Toolkit"));
            XWindowPeer parent =
                    UnoRuntime.queryInterface(XWindowPeer.class, frame.getContainerWindow());
            boxes.createMessageBox(
                            parent,
                            answer.isDone() ? MessageBoxType.INFOBOX : MessageBoxType.WARNINGBOX,
                            OK_BUTTON,
                            "Shaftwright",
                            answer.text())
                    .execute();
        } catch (com.sun.star.uno.Exception e) {
            // The command is carried out; that it cannot be said does not undo it.
            return;
        }
    }
}
