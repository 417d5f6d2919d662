package shaftwright.calc;

import com.sun.star.awt.ActionEvent;
import com.sun.star.awt.PushButtonType;
import com.sun.star.awt.XActionListener;
import com.sun.star.awt.XButton;
import com.sun.star.awt.XCheckBox;
import com.sun.star.awt.XListBox;
import com.sun.star.awt.XWindow;
import com.sun.star.lang.EventObject;
import com.sun.star.ui.dialogs.FilePicker;
import com.sun.star.ui.dialogs.TemplateDescription;
import com.sun.star.ui.dialogs.XFilePicker3;
import com.sun.star.uno.XComponentContext;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Questions as small dialogs before a window. */
final class Dialogs implements Questions {
    private static final int WIDTH = 260;
    private static final int PAGE_WIDTH = 400;
    private static final int PAGE_HEIGHT = 200;
    private static final int FILES_HEIGHT = 70;
    private static final int TICK_ROWS = 16;
    private static final int TICK_WIDTH = 110;
    private static final short PICKED = 1;

    private final XComponentContext context;
    private final XWindow parent;
    private final Optional<Path> folder;

    /** With the folder in which files are looked for first. */
    Dialogs(XComponentContext context, XWindow parent, Optional<Path> folder) {
        this.context = context;
        this.parent = parent;
        this.folder = folder;
    }

    /** Buttons as they stand from the right. */
    private static Map<String, PushButtonType> buttons(String agree) {
        Map<String, PushButtonType> buttons = new LinkedHashMap<>();
        buttons.put("Cancel", PushButtonType.CANCEL);
        buttons.put(agree, PushButtonType.OK);
        return buttons;
    }

    @Override
    public Optional<Path> workbook() {
        return picked("Take a variant from", false).stream().findFirst();
    }

    private List<Path> picked(String title, boolean several) {
        XFilePicker3 picker =
                FilePicker.createWithMode(context, TemplateDescription.FILEOPEN_SIMPLE);
        try {
            picker.setTitle(title);
            picker.appendFilter("Workbooks (*.xlsx, *.xlsm)", "*.xlsx;*.xlsm");
            picker.setMultiSelectionMode(several);
            if (folder.isPresent()) {
                picker.setDisplayDirectory(DocumentFile.url(folder.get()));
            }
            List<Path> files = new ArrayList<>();
            if (picker.execute() == PICKED) {
                for (String url : picker.getSelectedFiles()) {
                    DocumentFile.path(url).ifPresent(files::add);
                }
            }
            return files;
        } catch (com.sun.star.lang.IllegalArgumentException e) {
            throw new IllegalStateException("no filter, or no such folder", e);
        } finally {
            picker.dispose();
        }
    }

    @Override
    public Optional<List<Path>> workbooks(List<Path> first) {
        return asked(
                "Compare workbooks",
                WIDTH,
                form -> {
                    List<Path> files = new ArrayList<>(first);
                    form.label("files_label", "~Workbooks to lay side by side, two or more:");
                    XListBox list = form.list("files", names(files), FILES_HEIGHT);
                    Map<String, PushButtonType> buttons = buttons("C~ompare");
                    buttons.put("~Remove", PushButtonType.STANDARD);
                    buttons.put("~Add…", PushButtonType.STANDARD);
                    form.buttons(buttons);
                    onPress(form, "Add…", () -> add(files, list));
                    onPress(form, "Remove", () -> remove(files, list));
                    return () -> List.copyOf(files);
                });
    }

    private static List<String> names(List<Path> files) {
        return files.stream().map(file -> file.getFileName().toString()).toList();
    }

    private void add(List<Path> files, XListBox list) {
        for (Path file : picked("Add workbooks", true)) {
            if (!files.contains(file)) {
                files.add(file);
                list.addItem(file.getFileName().toString(), list.getItemCount());
            }
        }
    }

    private static void remove(List<Path> files, XListBox list) {
        short chosen = list.getSelectedItemPos();
        if (chosen >= 0) {
            files.remove(chosen);
            list.removeItems(chosen, (short) 1);
        }
    }

    @Override
    public Optional<Choice> taking(List<Offer> variants, List<String> columns, int free) {
        return asked(
                "Take a variant",
                WIDTH,
                form -> {
                    form.label("variant_label", "~Variant:");
                    XListBox variant =
                            form.choice("variant", variants.stream().map(Offer::title).toList(), 0);
                    form.label("column_label", "~Into this workbook's column:");
                    XListBox column = form.choice("column", columns, free);
                    form.buttons(buttons("~Preview"));
                    return () ->
                            new Choice(
                                    variants.get(variant.getSelectedItemPos()).scenario(),
                                    column.getSelectedItemPos());
                });
    }

    @Override
    public Optional<Set<String>> sheets(Map<String, Boolean> seen) {
        int columns = (seen.size() + TICK_ROWS - 1) / TICK_ROWS;
        return asked(
                "Sheets",
                Math.max(WIDTH, columns * TICK_WIDTH),
                form -> {
                    form.text("sheets_label", "Ticked sheets are seen as tabs:");
                    List<XCheckBox> ticks = form.ticks(seen, TICK_ROWS);
                    form.buttons(buttons("OK"));
                    return () -> {
                        Set<String> wanted = new LinkedHashSet<>();
                        int at = 0;
                        for (String name : seen.keySet()) {
                            if (ticks.get(at++).getState() == 1) {
                                wanted.add(name);
                            }
                        }
                        return wanted;
                    };
                });
    }

    @Override
    public boolean agrees(String question, List<String> page) {
        return asked(
                        Desk.TITLE,
                        page.isEmpty() ? WIDTH : PAGE_WIDTH,
                        form -> {
                            if (!page.isEmpty()) {
                                form.page(
                                        "page",
                                        Answer.spaced(page),
                                        PAGE_HEIGHT,
                                        Answer.Face.SENTENCES);
                            }
                            form.text("question", question);
                            form.buttons(buttons("OK"));
                            return () -> question;
                        })
                .isPresent();
    }

    /** Shows a page until it is read. */
    void read(Answer answer) {
        asked(
                Desk.TITLE,
                PAGE_WIDTH,
                form -> {
                    form.text("answer", answer.text());
                    form.page("page", answer.shownPage(), PAGE_HEIGHT, answer.face());
                    form.buttons(Map.of("~Close", PushButtonType.CANCEL));
                    return () -> answer;
                });
    }

    private interface Layout<T> {
        /** Lays out; what it gives back is asked while the dialog still stands. */
        Chosen<T> on(Form form) throws com.sun.star.uno.Exception;
    }

    private interface Chosen<T> {
        T now();
    }

    private <T> Optional<T> asked(String title, int width, Layout<T> layout) {
        try {
            Form form = new Form(context, title, width);
            try {
                Chosen<T> chosen = layout.on(form);
                return form.isAgreed(parent) ? Optional.of(chosen.now()) : Optional.empty();
            } finally {
                form.close();
            }
        } catch (com.sun.star.uno.Exception e) {
            throw new IllegalStateException("the dialog could not be shown: " + title, e);
        }
    }

    private static void onPress(Form form, String button, Runnable then) {
        form.control(XButton.class, button)
                .addActionListener(
                        new XActionListener() {
                            @Override
                            public void actionPerformed(ActionEvent event) {
                                then.run();
                            }

                            @Override
                            public void disposing(EventObject event) {
                                // It goes with the dialog.
                            }
                        });
    }
}
