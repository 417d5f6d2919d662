package shaftwright.calc;

import com.sun.star.awt.PosSize;
import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.Rectangle;
import com.sun.star.awt.XCheckBox;
import com.sun.star.awt.XControl;
import com.sun.star.awt.XControlContainer;
import com.sun.star.awt.XControlModel;
import com.sun.star.awt.XDialog;
import com.sun.star.awt.XListBox;
import com.sun.star.awt.XTextComponent;
import com.sun.star.awt.XToolkit;
import com.sun.star.awt.XWindow;
import com.sun.star.awt.XWindowPeer;
import com.sun.star.beans.XPropertySet;
import com.sun.star.container.XNameContainer;
import com.sun.star.lang.XComponent;
import com.sun.star.lang.XMultiServiceFactory;
import com.sun.star.uno.UnoRuntime;
import com.sun.star.uno.XComponentContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A dialog that is laid out from top to bottom. Lengths are in LibreOffice's unit for dialogs: a
 * quarter of a letter's width, an eighth of its height, so that it grows with the font.
 */
final class Form {
    /** Distance from the edges, and between what belongs together. */
    static final int MARGIN = 6;

    private static final int GAP = 3;
    private static final int LINE = 10;
    private static final int FIELD = 13;

    /** Of a sign in a line that breaks between words, amply. */
    private static final int UNITS_A_SIGN = 4;

    private static final int BUTTON_WIDTH = 60;
    private static final int BUTTON = 15;
    private static final String FIXED_FONT = "Liberation Mono";

    private final XComponentContext context;
    private final int width;
    private final Object model;
    private final XMultiServiceFactory models;
    private final XNameContainer parts;
    private final Object dialog;
    private int top = MARGIN;

    /** An empty one. */
    Form(XComponentContext context, String title, int width) throws com.sun.star.uno.Exception {
        this.context = context;
        this.width = width;
        model = service("com.sun.star.awt.UnoControlDialogModel");
        models = UnoRuntime.queryInterface(XMultiServiceFactory.class, model);
        parts = UnoRuntime.queryInterface(XNameContainer.class, model);
        dialog = service("com.sun.star.awt.UnoControlDialog");
        set(model, Map.of("Title", title, "Width", width, "Moveable", true, "Closeable", true));
        UnoRuntime.queryInterface(XControl.class, dialog)
                .setModel(UnoRuntime.queryInterface(XControlModel.class, model));
    }

    private Object service(String name) throws com.sun.star.uno.Exception {
        return context.getServiceManager().createInstanceWithContext(name, context);
    }

    /** A name above a field; {@code ~} before the letter that leads to it. */
    void label(String name, String text) throws com.sun.star.uno.Exception {
        add("FixedText", name, LINE, Map.of("Label", text));
        top -= GAP;
    }

    /** Sentences, with room for all their lines. */
    void text(String name, String text) throws com.sun.star.uno.Exception {
        int signs = (width - 2 * MARGIN) / UNITS_A_SIGN;
        int lines = text.lines().mapToInt(line -> 1 + line.length() / signs).sum();
        add(
                "FixedText",
                name,
                lines * LINE,
                Map.of("Label", text.replace("~", "~~"), "MultiLine", true));
    }

    /** A list to choose one from, none chosen yet. */
    XListBox list(String name, List<String> items, int height) throws com.sun.star.uno.Exception {
        add("ListBox", name, height, Map.of("StringItemList", items.toArray(String[]::new)));
        return control(XListBox.class, name);
    }

    /** A list of one line that opens. */
    XListBox choice(String name, List<String> items, int chosen) throws com.sun.star.uno.Exception {
        add(
                "ListBox",
                name,
                FIELD,
                Map.of("StringItemList", items.toArray(String[]::new), "Dropdown", true));
        // Only now there is something to choose.
        set(parts.getByName(name), Map.of("SelectedItems", new short[] {(short) chosen}));
        return control(XListBox.class, name);
    }

    /** A text to be read, which scrolls. */
    XTextComponent page(String name, String text, int height, Answer.Face face)
            throws com.sun.star.uno.Exception {
        add(
                "Edit",
                name,
                height,
                Map.of("Text", text, "MultiLine", true, "ReadOnly", true, "VScroll", true));
        if (face == Answer.Face.TABLE) {
            set(parts.getByName(name), Map.of("FontName", FIXED_FONT));
        }
        return control(XTextComponent.class, name);
    }

    /** Boxes to tick, column by column. */
    List<XCheckBox> ticks(Map<String, Boolean> boxes, int rows) throws com.sun.star.uno.Exception {
        int columns = (boxes.size() + rows - 1) / rows;
        int each = (width - 2 * MARGIN) / columns;
        int begun = top;
        List<XCheckBox> all = new ArrayList<>();
        for (Map.Entry<String, Boolean> box : boxes.entrySet()) {
            String name = "tick" + all.size();
            int row = all.size() % rows;
            add(
                    "CheckBox",
                    name,
                    MARGIN + all.size() / rows * each,
                    begun + row * FIELD,
                    each - GAP,
                    FIELD,
                    Map.of(
                            "Label",
                            box.getKey().replace("~", "~~"),
                            "State",
                            (short) (box.getValue() ? 1 : 0)));
            all.add(control(XCheckBox.class, name));
        }
        top = begun + Math.min(rows, boxes.size()) * FIELD + GAP;
        return all;
    }

    /** Buttons from the right; the dialog ends below them. */
    void buttons(Map<String, PushButtonType> labels) throws com.sun.star.uno.Exception {
        int right = width - MARGIN;
        top += GAP;
        for (Map.Entry<String, PushButtonType> label : labels.entrySet()) {
            right -= BUTTON_WIDTH;
            add(
                    "Button",
                    label.getKey().replace("~", ""),
                    right,
                    top,
                    BUTTON_WIDTH,
                    BUTTON,
                    Map.of(
                            "Label",
                            label.getKey(),
                            "PushButtonType",
                            (short) label.getValue().getValue(),
                            "DefaultButton",
                            label.getValue() == PushButtonType.OK));
            right -= GAP;
        }
        set(model, Map.of("Height", top + BUTTON + MARGIN));
    }

    private void add(String sort, String name, int height, Map<String, Object> properties)
            throws com.sun.star.uno.Exception {
        add(sort, name, MARGIN, top, width - 2 * MARGIN, height, properties);
        top += height + GAP;
    }

    private void add(
            String sort,
            String name,
            int x,
            int y,
            int wide,
            int high,
            Map<String, Object> properties)
            throws com.sun.star.uno.Exception {
        Object part = models.createInstance("com.sun.star.awt.UnoControl" + sort + "Model");
        set(
                part,
                Map.of(
                        "Name",
                        name,
                        "PositionX",
                        x,
                        "PositionY",
                        y,
                        "Width",
                        wide,
                        "Height",
                        high));
        set(part, properties);
        parts.insertByName(name, part);
    }

    private static void set(Object part, Map<String, Object> properties)
            throws com.sun.star.uno.Exception {
        XPropertySet all = UnoRuntime.queryInterface(XPropertySet.class, part);
        for (Map.Entry<String, Object> property : properties.entrySet()) {
            all.setPropertyValue(property.getKey(), property.getValue());
        }
    }

    /** A part as what it does. */
    <T> T control(Class<T> sort, String name) {
        return UnoRuntime.queryInterface(
                sort, UnoRuntime.queryInterface(XControlContainer.class, dialog).getControl(name));
    }

    /** The dialog as something that it does. */
    <T> T as(Class<T> sort) {
        return UnoRuntime.queryInterface(sort, dialog);
    }

    /** Where a dialog stands before its window. */
    enum Stand {
        MIDDLE,
        /** Where it hides least of what is read first. */
        LOWER_RIGHT
    }

    /** Puts it before its window. */
    void open(XWindow parent, Stand stand) throws com.sun.star.uno.Exception {
        UnoRuntime.queryInterface(XControl.class, dialog)
                .createPeer(
                        UnoRuntime.queryInterface(
                                XToolkit.class, service("com.sun.star.awt.Toolkit")),
                        UnoRuntime.queryInterface(XWindowPeer.class, parent));
        Rectangle around = parent.getPosSize();
        Rectangle own = as(XWindow.class).getPosSize();
        int right = Math.max(0, around.Width - own.Width);
        int down = Math.max(0, around.Height - own.Height);
        int part = stand == Stand.MIDDLE ? 2 : 1;
        as(XWindow.class).setPosSize(right / part, down / part, 0, 0, PosSize.POS);
    }

    /** Waits for an answer; whether it was OK. Read what was chosen before it is closed. */
    boolean isAgreed(XWindow parent) throws com.sun.star.uno.Exception {
        open(parent, Stand.MIDDLE);
        return as(XDialog.class).execute() == 1;
    }

    void close() {
        as(XComponent.class).dispose();
    }
}
