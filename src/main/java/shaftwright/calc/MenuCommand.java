package shaftwright.calc;

import com.sun.star.sheet.XSpreadsheetDocument;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shaftwright.book.Problem;
import shaftwright.filling.Filling;
import shaftwright.reading.ScenarioFinding;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.reading.Sizing;
import shaftwright.study.Cautions;

/** The menu's commands. */
enum MenuCommand {
    FILL("fill", "Fill this workbook"),
    CHECK("check", "Check this workbook"),
    NEW_INCH("new-inch", "New sizing workbook, inches"),
    NEW_MM("new-mm", "New sizing workbook, millimetres");

    /** More lines than this do not fit on a screen. */
    private static final int MOST_LINES = 20;

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

    Answer run(Desk desk) throws com.sun.star.uno.Exception {
        return switch (this) {
            case FILL -> fill(desk);
            case CHECK -> check(desk);
            case NEW_INCH -> create(desk, "blank-inch.xlsx");
            case NEW_MM -> create(desk, "blank-mm.xlsx");
        };
    }

    private static Answer create(Desk desk, String workbook) throws com.sun.star.uno.Exception {
        desk.openAsNew(workbook);
        return Answer.done("A new workbook is open; save it where you like.");
    }

    private static Answer fill(Desk desk) throws com.sun.star.uno.Exception {
        Optional<XSpreadsheetDocument> document = desk.document();
        if (document.isEmpty()) {
            return Answer.refused("Open a sizing workbook first.");
        }
        CalcBook book = CalcBook.toFill(document.get(), desk.title());
        Filling.Report report = Filling.fill(book);
        if (report.hasErrors()) {
            return Answer.refused("Not filled, nothing was changed.\n" + lines(report.problems()));
        }
        int changed = book.apply();
        return Answer.done(
                "Filled: "
                        + (changed == 0 ? "no figure" : counted(changed, "figure"))
                        + " changed. Nothing is saved yet.\n"
                        + verdicts(report)
                        + lines(report.problems())
                        + "\n\n"
                        + Cautions.LINE);
    }

    private static Answer check(Desk desk) throws com.sun.star.uno.Exception {
        Optional<XSpreadsheetDocument> document = desk.document();
        if (document.isEmpty()) {
            return Answer.refused("Open a sizing workbook first.");
        }
        Filling.Report report = Filling.check(CalcBook.toCheck(document.get(), desk.title()));
        int errors = 0;
        for (Problem problem : report.problems()) {
            errors += problem.isError() ? 1 : 0;
        }
        String text =
                "Checked: "
                        + counted(errors, "error")
                        + ", "
                        + counted(report.problems().size() - errors, "warning")
                        + ", "
                        + counted(report.strayed(), "overwritten or edited formula")
                        + ".\n"
                        + findings(report)
                        + lines(report.problems());
        return errors == 0 ? Answer.done(text) : Answer.refused(text);
    }

    private static String verdicts(Filling.Report report) {
        List<String> verdicts = new ArrayList<>();
        Sizing sizing = report.sizing().orElseThrow();
        for (ScenarioOutcome scenario : sizing.scenarios()) {
            sizing.verdict(scenario.number())
                    .map(verdict -> verdict.text(sizing.unit()))
                    .ifPresent(text -> verdicts.add(scenario.letter() + ": " + text));
        }
        return lines(verdicts);
    }

    private static String findings(Filling.Report report) {
        return lines(report.sizing().map(ScenarioFinding::of).orElse(List.of()));
    }

    /** A line each, as many as a box has room for. */
    private static String lines(List<?> things) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < things.size() && i < MOST_LINES; i++) {
            text.append('\n').append(things.get(i));
        }
        if (things.size() > MOST_LINES) {
            text.append("\n… and ").append(things.size() - MOST_LINES).append(" more.");
        }
        return text.toString();
    }

    private static String counted(int count, String what) {
        return (count == 0 ? "no" : String.valueOf(count)) + " " + what + (count == 1 ? "" : "s");
    }
}
