package shaftwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.calc.AddInText;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;
import shaftwright.functions.Parameter;
import shaftwright.office.CalcWithExtension;
import shaftwright.workbook.FirstVersion;
import shaftwright.xlsx.XlsxBook;

/** The extension's menu, driven in a LibreOffice without windows. */
class MenuInCalcTest {
    private static final String OTHER =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" office:version="1.3" office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
            <office:body><office:spreadsheet><table:table table:name="Other"><table:table-row><table:table-cell/></table:table-row></table:table></office:spreadsheet></office:body></office:document>
            """;
    private static final String SCRIPT = "menu_in_calc.py";
    private static final String WIDER = "hub_shift[2]=1.25";

    /** A quarter inch more than the older demo has. */
    private static final String TALLER = "height_left[2]=13 5/8";

    private static final String SPOILT = "distance_first_left[2]=25 3/0";

    @TempDir private static Path folder;

    private static Path file;
    private static Path mine;
    private static Path theirs;
    private static Path small;
    private static Path renewed;
    private static byte[] untouched;
    private static String said;

    /** One start of the program for all; each takes long. */
    @BeforeAll
    static void giveCommands() throws IOException {
        file = Demo.inches(folder);
        untouched = Files.readAllBytes(file);
        Path other = folder.resolve("other.fods");
        Files.writeString(other, OTHER);
        try (CalcWithExtension calc = CalcWithExtension.installed()) {
            List<String> commands = new ArrayList<>(List.of(file.toString(), WIDER));
            commands.addAll(List.of(save("wider"), "fill", "check", "fill", save("filled")));
            commands.addAll(List.of("undo", save("undone")));
            commands.addAll(List.of("=SHAFT.MILLIMETRES(2)", "fill", save("noted")));
            commands.addAll(List.of(SPOILT, save("spoilt"), "fill", save("refused")));
            commands.addAll(List.of("new-mm", "new-inch", "windows"));
            commands.addAll(List.of("show", "unit[0]=mm", "show"));
            commands.addAll(List.of("undo", "show", "unit[0]=cm", "show"));
            commands.add("wizard:SHAFT.DISTANCE");
            commands.addAll(List.of("next", other.toString(), "fill", "check"));
            Path older = FirstVersion.copyTo(folder.resolve("older.xlsx"));
            commands.addAll(List.of("next", older.toString(), TALLER, save("older-typed")));
            commands.addAll(List.of("fill", save("older-filled")));
            commands.addAll(onFiles());
            said = calc.script(SCRIPT, commands.toArray(String[]::new));
        }
    }

    /** Commands that bring or need other files, their answers given with them. */
    private static List<String> onFiles() throws IOException {
        mine = Demo.inches(Files.createDirectory(folder.resolve("mine")));
        theirs = Demo.millimetres(folder);
        small = folder.resolve("small.xlsx");
        Run.of("new", "--scenarios", "1", "--set", "scenario_name[A]=Mine", small);
        renewed = FirstVersion.copyTo(folder.resolve("renewed.xlsx"));
        List<String> commands = new ArrayList<>(List.of("next", mine.toString(), "levers"));
        commands.add("take?From=" + theirs + "&Scenario=B&As=D&Agree=true");
        commands.addAll(List.of(save("taken"), "undo", save("untaken")));
        commands.addAll(List.of("sheets?Show=Strength\\Doubt&Hide=Guide", "seen", "undo", "seen"));
        commands.addAll(List.of("check?Row=1", "where", "hide:Measure", SPOILT));
        commands.addAll(List.of("fill?Row=0", "where", "seen", "compare?Files=" + mine));
        commands.add("compare?Files=" + small + "\\" + small);
        commands.add("save-other:" + saved("compared"));
        commands.addAll(List.of("next", renewed.toString(), "renew?Agree=true", save("current")));
        return commands;
    }

    private static String save(String name) {
        return "save:" + saved(name);
    }

    private static Path saved(String name) {
        return folder.resolve(name + ".xlsx");
    }

    @Test
    void fillingInCalcGivesWhatFillingTheFileGives() {
        Path filled = folder.resolve("by-command.xlsx");
        assertThat(Run.of("fill", "--set", "hub_shift[C]=1.25", "--out", filled, file).code())
                .isZero();

        assertThat(said).contains("fill|SUCCESS|Filled: ").contains("Nothing is saved yet.");
        assertThat(differences(filled, saved("filled"))).isEmpty();
    }

    @Test
    void secondFillingChangesNothing() {
        assertThat(said).contains("fill|SUCCESS|Filled: no figure changed.");
    }

    @Test
    void checkFindsNothingInAFilledWorkbook() {
        // Wider hubs make the demo's finished shafts too short, which is a warning.
        assertThat(said)
                .contains("check|SUCCESS|Checked: no errors, ")
                .contains(", no overwritten or edited formulas.");
    }

    @Test
    void oneUndoTakesAFillBack() {
        assertThat(differences(saved("wider"), saved("filled"))).isNotEmpty();
        assertThat(differences(saved("wider"), saved("undone"))).isEmpty();
        // What is left to undo is what was typed before.
        assertThat(said).contains("undo|SUCCESS|Input\n");
    }

    @Test
    void spoiltWorkbookIsLeftAsItIs() {
        assertThat(said)
                .contains("fill|FAILURE|Not filled, nothing was changed.")
                .contains("25 3/0");
        assertThat(differences(saved("spoilt"), saved("refused"))).isEmpty();
    }

    /** Its own formulas stay and compute as its version did; a fill writes figures without one. */
    @Test
    void olderWorkbookIsFilledAndToldWhatItLacks() {
        String filled = said.substring(said.lastIndexOf("fill|"));

        assertThat(filled)
                .startsWith("fill|SUCCESS|Filled: ")
                .containsOnlyOnce("found contract version 1, which lacks ");
        assertThat(differences(saved("older-typed"), saved("older-filled"))).isNotEmpty();
    }

    @Test
    void newWorkbooksOpenBesideTheOpenOne() throws IOException {
        assertThat(said).contains("windows|SUCCESS|3");
        assertThat(Files.readAllBytes(file)).isEqualTo(untouched);
    }

    @Test
    void fillingNotesCellsThatNeedThePack() {
        XlsxBook book = XlsxBook.open(saved("noted"));
        Area note = book.names().get("pack_note");

        assertThat(book.read(List.of(note)).at(note.place(0)).value().toString())
                .contains("1 cell uses SHAFT functions (sheet \"Own\", cell A1)");
    }

    /** Nothing in the formula names the cell that says the unit. */
    @Test
    void functionsFollowTheUnitOfTheDocument() {
        assertThat(said.lines().filter(line -> line.startsWith("show|")))
                .containsExactly(
                        "show|SUCCESS|50.8",
                        "show|SUCCESS|2",
                        "show|SUCCESS|50.8",
                        "show|SUCCESS|#VALUE!");
    }

    /** Not for the document, which Calc gives by itself; errors are explained above. */
    @Test
    void wizardAsksForTheArgumentsOfTheFunction() {
        CellFunction function = Catalogue.find("DISTANCE").orElseThrow();
        StringBuilder told = new StringBuilder(AddInText.description(function));
        for (Parameter parameter : function.parameters()) {
            told.append(" / ").append(parameter.name()).append(": ");
            told.append(AddInText.asked(parameter));
        }
        assertThat(said).contains("wizard:SHAFT.DISTANCE|SUCCESS|" + told);
    }

    @Test
    void leversAreThoseOfTheCommand() {
        String lines = Run.of("levers", mine).out().strip().replace("\n", " / ");

        assertThat(said).contains("levers|SUCCESS|").contains(lines);
    }

    @Test
    void takingInCalcGivesWhatTakingInTheFileGives() {
        Path taken = folder.resolve("taken-by-command.xlsx");
        Run run = Run.of("take", theirs, "B", "--as", "D", "--yes", "--out", taken, mine);

        assertThat(run.code()).isZero();
        assertThat(differences(taken, saved("taken"))).isEmpty();
        assertThat(said).contains("in place of \"As C, transaxle raised for belly room\"");
    }

    @Test
    void oneUndoTakesATakingBack() {
        assertThat(differences(mine, saved("untaken"))).isEmpty();
    }

    @Test
    void sheetsAreThoseOfTheCommandAndOneUndoTakesThemBack() {
        Path turned = folder.resolve("turned.xlsx");
        Run.of("sheets", mine, "--out", turned, "--show", "Strength", "Doubt", "--hide", "Guide");

        assertThat(said.lines().filter(line -> line.startsWith("seen|")))
                .startsWith("seen|SUCCESS|" + seen(turned), "seen|SUCCESS|" + seen(mine));
    }

    private static String seen(Path file) {
        Map<String, Boolean> sheets = XlsxBook.open(file).seenSheets();
        return String.join(", ", sheets.keySet().stream().filter(sheets::get).toList());
    }

    @Test
    void comparisonIsThatOfTheCommand() {
        Path compared = folder.resolve("compared-by-command.xlsx");

        assertThat(Run.of("compare", small, small, "--out", compared).code()).isZero();
        assertThat(differences(compared, saved("compared"))).isEmpty();
    }

    @Test
    void renewalIsThatOfTheCommandAndIsOpen() throws IOException {
        Path current = folder.resolve("renewed-by-command.xlsx");
        Path older = FirstVersion.copyTo(folder.resolve("as-it-was.xlsx"));

        assertThat(Run.of("renew", "--out", current, older).code()).isZero();
        assertThat(differences(current, renewed)).isEmpty();
        assertThat(differences(current, saved("current"))).isEmpty();
        assertThat(folder.resolve("renewed.backup.xlsx")).hasSameBinaryContentAs(older);
    }

    /** The second finding is on a right side, whose verdict stands on Scenarios. */
    @Test
    void choosingAFindingGoesToItsVerdict() {
        CellPlace verdict = XlsxBook.open(mine).names().get("result_verdict_right").place(1);

        assertThat(said.lines().filter(line -> line.startsWith("where|")))
                .first()
                .isEqualTo("where|SUCCESS|" + selected(verdict));
    }

    @Test
    void choosingAProblemGoesToItsCellAndShowsItsSheet() {
        CellPlace spoilt = XlsxBook.open(mine).names().get("distance_first_left").place(2);

        assertThat(said)
                .containsSubsequence(
                        "fill?Row=0|FAILURE|",
                        "where|SUCCESS|" + selected(spoilt),
                        "seen|SUCCESS|Start, Guide, Measure, ");
    }

    /** As Calc names a cell. */
    private static String selected(CellPlace place) {
        return "$"
                + place.sheet()
                + ".$"
                + CellPlace.columnLetters(place.column())
                + "$"
                + (place.row() + 1);
    }

    @Test
    void oneWorkbookIsNotCompared() {
        assertThat(said).contains("Nothing was compared. Choose two or more workbooks");
    }

    @Test
    void otherSpreadsheetIsRefused() {
        assertThat(said).contains("check|FAILURE|").contains("a sizing workbook");
    }

    /** All named cells whose values differ, in words. */
    private static List<String> differences(Path expected, Path actual) {
        Map<CellPlace, CellContent> wanted = cells(expected);
        Map<CellPlace, CellContent> found = cells(actual);
        List<String> differences = new ArrayList<>();
        for (Map.Entry<CellPlace, CellContent> cell : wanted.entrySet()) {
            CellValue value = found.getOrDefault(cell.getKey(), CellContent.EMPTY).value();
            if (!agree(cell.getValue().value(), value)) {
                differences.add(cell.getKey() + ": " + value + ", not " + cell.getValue().value());
            }
        }
        assertThat(wanted).hasSizeGreaterThan(10_000);
        return differences;
    }

    private static Map<CellPlace, CellContent> cells(Path file) {
        XlsxBook book = XlsxBook.open(file);
        return book.read(book.names().values()).filled();
    }

    private static boolean agree(CellValue a, CellValue b) {
        if (a instanceof CellValue.Numeric x && b instanceof CellValue.Numeric y) {
            double largest = Math.max(Math.abs(x.value()), Math.abs(y.value()));
            return Math.abs(x.value() - y.value()) <= 1e-9 * largest + 1e-9;
        }
        return (isNothing(a) && isNothing(b)) || a.equals(b);
    }

    private static boolean isNothing(CellValue value) {
        return value instanceof CellValue.Blank
                || (value instanceof CellValue.Text text && text.value().isEmpty());
    }
}
