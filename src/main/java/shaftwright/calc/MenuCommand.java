package shaftwright.calc;

import java.io.IOException;
import java.util.Optional;

/** The menu's commands. */
enum MenuCommand {
    FILL("fill", "Fill this workbook"),
    CHECK("check", "Check this workbook"),
    LEVERS("levers", "Levers of this workbook"),
    TAKE("take", "Take a variant from another workbook…"),
    SHEETS("sheets", "Show and hide sheets…"),
    COMPARE("compare", "Compare workbooks…"),
    RENEW("renew", "Renew this workbook…"),
    NEW_INCH("new-inch", "New sizing workbook, inches"),
    NEW_MM("new-mm", "New sizing workbook, millimetres");

    private static final Answer NONE_OPEN = Answer.refused("Open a sizing workbook first.");

    private final String path;
    private final String title;

    MenuCommand(String path, String title) {
        this.path = path;
        this.title = title;
    }

    String url() {
        return Menu.PROTOCOL + path;
    }

    String title() {
        return title;
    }

    static Optional<MenuCommand> ofPath(String url) {
        for (MenuCommand command : values()) {
            if (command.url().equals(url)) {
                return Optional.of(command);
            }
        }
        return Optional.empty();
    }

    /** Whether it has to do with the workbook in the window. */
    private boolean needsDocument() {
        return switch (this) {
            case COMPARE, NEW_INCH, NEW_MM -> false;
            default -> true;
        };
    }

    Answer run(Desk desk) throws IOException, com.sun.star.uno.Exception {
        if (needsDocument() && desk.document().isEmpty()) {
            return NONE_OPEN;
        }
        return switch (this) {
            case FILL -> FillItem.run(desk);
            case CHECK -> CheckItem.run(desk);
            case LEVERS -> LeversItem.run(desk);
            case TAKE -> TakeItem.run(desk);
            case SHEETS -> SheetsItem.run(desk);
            case COMPARE -> CompareItem.run(desk);
            case RENEW -> RenewItem.run(desk);
            case NEW_INCH -> create(desk, "blank-inch.xlsx");
            case NEW_MM -> create(desk, "blank-mm.xlsx");
        };
    }

    private static Answer create(Desk desk, String workbook) throws com.sun.star.uno.Exception {
        desk.journal().step("Opening a new workbook");
        desk.openPackedAsNew(workbook);
        return Answer.done("A new workbook is open; save it where you like.");
    }
}
