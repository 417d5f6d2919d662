package shaftwright.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shaftwright.book.Area;
import shaftwright.book.CellContent;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;
import shaftwright.book.Cells;
import shaftwright.book.MissingNames;
import shaftwright.book.Problem;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.reading.InputValues.Entry;
import shaftwright.tyre.TyreSize;
import shaftwright.tyre.UnreadableTyreSizeException;
import shaftwright.units.Length;
import shaftwright.units.LengthUnit;
import shaftwright.units.PlainNumber;
import shaftwright.units.UnreadableLengthException;
import shaftwright.units.UnreadableNumberException;

/** Reads every typed cell by its defined name and says all that is wrong with them at once. */
public final class InputReader {

    private final Map<String, Area> names;
    private final Cells cells;
    private final List<Problem> problems;
    private final int version;
    private LengthUnit unit = LengthUnit.INCH;

    /** What each cell with a formula is, in a builder's words. */
    private final Map<CellPlace, String> formulas = new LinkedHashMap<>();

    /** Tables in which rows were inserted or deleted where none may be. */
    private final Set<String> misplaced = new HashSet<>();

    /**
     * A reader of one workbook.
     *
     * @param version contract version by which the workbook was made
     */
    public InputReader(Map<String, Area> names, Cells cells, List<Problem> problems, int version) {
        this.names = names;
        this.cells = cells;
        this.problems = problems;
        this.version = version;
    }

    /** Name of the row of letters above the scenario columns. */
    public static final String LETTERS = "scenario_letter";

    /** Areas of all inputs that the workbook has. */
    public static List<Area> areas(Map<String, Area> names) {
        List<Area> areas = new ArrayList<>();
        for (Input input : Contract.inputs()) {
            for (Side side : sides(input)) {
                Area area = names.get(input.definedName(side));
                if (area != null) {
                    areas.add(area);
                }
            }
        }
        if (names.containsKey(LETTERS)) {
            areas.add(names.get(LETTERS));
        }
        return areas;
    }

    public InputValues read() {
        readUnit();
        List<CellPlace> letters = letters();
        Map<String, Entry[]> entries = new HashMap<>();
        MissingNames missing = new MissingNames();
        for (Input input : Contract.inputs()) {
            for (Side side : sides(input)) {
                Area area = names.get(input.definedName(side));
                if (area == null && input.since() > version) {
                    entries.put(input.definedName(side), empty(input, side, letters.size()));
                } else if (area == null) {
                    missing.add(input.definedName(side), input.label());
                } else if (input.grid() == Grid.SCENARIO) {
                    entries.put(input.definedName(side), row(input, area, letters));
                } else {
                    entries.put(input.definedName(side), column(input, side, area));
                }
            }
        }
        missing.sayTo(problems);
        return new InputValues(unit, letters.size(), entries);
    }

    /** What each typed cell is that holds a formula, once all were read. */
    public Map<CellPlace, String> formulas() {
        return formulas;
    }

    private static Side[] sides(Input input) {
        return input.grid().sided() ? Side.values() : new Side[] {Side.LEFT};
    }

    private void readUnit() {
        Area area = names.get("unit");
        if (area != null
                && cells.at(area.place(0)).value() instanceof CellValue.Text t
                && t.value().equalsIgnoreCase("mm")) {
            unit = LengthUnit.MILLIMETRE;
        }
    }

    private List<CellPlace> letters() {
        if (names.get(LETTERS) == null) {
            problems.add(
                    Problem.error(
                            "the defined name " + LETTERS,
                            "no cells of that name",
                            "the row of scenario letters; bring the name back, or start from a new"
                                    + " workbook"));
        }
        return letters(names, cells);
    }

    /** Cells of the scenarios' letters; columns without a letter are the builder's own. */
    public static List<CellPlace> letters(Map<String, Area> names, Cells cells) {
        List<CellPlace> places = new ArrayList<>();
        Area area = names.get(LETTERS);
        int size = area == null ? 0 : area.size();
        for (int offset = 0; offset < size; offset++) {
            CellPlace place = area.place(offset);
            if (cells.at(place).value() instanceof CellValue.Text letter
                    && !letter.value().isBlank()) {
                places.add(place);
            }
        }
        return places;
    }

    /** Of an input that came after this workbook was made: as if its cells were left empty. */
    private Entry[] empty(Input input, Side side, int scenarios) {
        Entry[] entries = new Entry[input.grid().perScenario() ? scenarios : rows(input, side)];
        Arrays.fill(entries, new Entry(Optional.empty(), CellValue.BLANK, whenEmpty(input), ""));
        return entries;
    }

    /** As many as its neighbours in the table have. */
    private int rows(Input input, Side side) {
        for (Input neighbour : Contract.inputs(input.grid())) {
            Area area = names.get(neighbour.definedName(side));
            if (area != null && input.grid().rows() > 1) {
                return area.size();
            }
        }
        return input.grid().rows();
    }

    private Entry[] row(Input input, Area area, List<CellPlace> letters) {
        Entry[] row = new Entry[letters.size()];
        for (int scenario = 0; scenario < row.length; scenario++) {
            CellPlace place =
                    new CellPlace(area.sheet(), area.firstRow(), letters.get(scenario).column());
            row[scenario] = entry(input, place, "scenario " + ScenarioOutcome.letter(scenario));
        }
        return row;
    }

    private Entry[] column(Input input, Side side, Area area) {
        if (input.grid().placed() && area.size() != input.grid().rows()) {
            misplaced(input, side, area);
        }
        Entry[] column = new Entry[area.size()];
        for (int row = 0; row < column.length; row++) {
            StringBuilder which = new StringBuilder();
            if (input.grid().sided()) {
                which.append(side.word());
            }
            if (input.grid().rows() > 1) {
                which.append(which.length() > 0 ? ", " : "").append("row ").append(row + 1);
            }
            column[row] = entry(input, area.place(row), which.toString());
        }
        return column;
    }

    /** Said once a table: what is typed in it would be taken for something else. */
    private void misplaced(Input input, Side side, Area area) {
        if (misplaced.add(area.sheet() + "!" + area.firstRow())) {
            error(
                    area.place(0),
                    input.label() + ", " + side.word(),
                    area.size() + " rows",
                    input.grid().rows()
                            + " rows, each of which stands for something of its own: delete a row"
                            + " that was inserted, or start from a new workbook where one is gone");
        }
    }

    private Entry entry(Input input, CellPlace place, String which) {
        CellContent content = cells.at(place);
        CellValue raw = content.value();
        String subject = which.isEmpty() ? input.label() : input.label() + ", " + which;
        if (content.hasFormula()) {
            formulas.put(place, subject);
        }
        if (raw instanceof CellValue.Fault fault) {
            error(place, subject, fault.code(), expected(input));
            return new Entry(Optional.of(place), raw, Double.NaN, "");
        }
        if (raw instanceof CellValue.Truth truth) {
            error(place, subject, truth.value() ? "TRUE" : "FALSE", expected(input));
            return new Entry(Optional.of(place), raw, Double.NaN, "");
        }
        if (isEmpty(raw)) {
            if (input.name().equals("unit")) {
                error(place, subject, "nothing", expected(input));
            }
            return new Entry(Optional.of(place), raw, whenEmpty(input), "");
        }
        return input.kind().numeric()
                ? number(input, place, raw, subject)
                : words(input, place, raw, subject);
    }

    public static boolean isEmpty(CellValue raw) {
        return raw instanceof CellValue.Blank
                || (raw instanceof CellValue.Text text && text.value().isEmpty());
    }

    private static double whenEmpty(Input input) {
        return input.kind() == InputKind.ANGLE
                ? Math.toRadians(input.whenEmpty())
                : input.whenEmpty();
    }

    private Entry number(Input input, CellPlace place, CellValue raw, String subject) {
        double number;
        try {
            double typed = typed(input, raw, unit);
            number = input.kind() == InputKind.LENGTH ? typed : typed * input.kind().factor(unit);
        } catch (UnreadableLengthException | UnreadableNumberException e) {
            String reason =
                    e instanceof UnreadableLengthException length
                            ? length.reason()
                            : ((UnreadableNumberException) e).reason();
            String why = reason.isEmpty() ? "" : " (" + reason + ")";
            error(place, subject, shown(raw) + why, expected(input));
            return new Entry(Optional.of(place), raw, Double.NaN, "");
        }
        if (!allowed(input, place, raw, subject, number)) {
            return new Entry(Optional.of(place), raw, Double.NaN, "");
        }
        double handed = input.kind() == InputKind.ANGLE ? Math.toRadians(number) : number;
        return new Entry(Optional.of(place), raw, handed, shownText(raw));
    }

    /**
     * What a number or text stands for: mm for a length, for others the number itself.
     *
     * @throws UnreadableLengthException if a text is no length
     * @throws UnreadableNumberException if a text is no number
     */
    static double typed(Input input, CellValue raw, LengthUnit unit) {
        boolean length = input.kind() == InputKind.LENGTH;
        if (raw instanceof CellValue.Numeric number) {
            return length ? number.value() * unit.mm() : number.value();
        }
        String text = ((CellValue.Text) raw).value();
        return length ? Length.parse(text, unit).mm() : PlainNumber.parse(text);
    }

    /** A number out of range is not handed on: what would follow from it is noise. */
    private boolean allowed(
            Input input, CellPlace place, CellValue raw, String subject, double number) {
        if (input.kind() == InputKind.COUNT && number != Math.rint(number)) {
            error(place, subject, shown(raw), "a whole number");
            return false;
        }
        if (!input.allowed().contains(number)) {
            error(
                    place,
                    subject,
                    shown(raw) + converted(input, raw, number),
                    between(input, input.allowed())
                            + (input.outside().isEmpty() ? "" : ". " + input.outside()));
            return false;
        }
        if (!input.usual().contains(number)) {
            problems.add(
                    Problem.warning(
                            place,
                            subject,
                            shown(raw) + converted(input, raw, number),
                            between(input, input.usual()) + " as a rule; is the unit right?"));
        }
        return true;
    }

    private String converted(Input input, CellValue raw, double number) {
        boolean bare = raw instanceof CellValue.Numeric;
        if (input.kind() == InputKind.LENGTH) {
            return unit == LengthUnit.INCH || !bare ? " (" + plain(number) + " mm)" : "";
        }
        return input.kind().factor(unit) == 1
                ? ""
                : " (" + plain(number) + " " + input.kind().unit() + ")";
    }

    private Entry words(Input input, CellPlace place, CellValue raw, String subject) {
        String text = shownText(raw);
        if (text.isBlank()) {
            error(place, subject, "blanks only", "a text, or an empty cell: clear it");
            return new Entry(Optional.of(place), raw, Double.NaN, "");
        }
        if (input.kind() == InputKind.CHOICE && !choice(input, text)) {
            error(place, subject, shown(raw), expected(input));
        }
        if (input.kind() == InputKind.TYRE) {
            try {
                TyreSize.parse(text);
            } catch (UnreadableTyreSizeException e) {
                error(place, subject, shown(raw), expected(input));
            }
        }
        if (isPartName(input)
                && (text.indexOf('*') >= 0 || text.indexOf('?') >= 0 || text.indexOf('~') >= 0)) {
            error(
                    place,
                    subject,
                    shown(raw),
                    "a name without * ? ~, which spreadsheets take for wild cards");
        }
        return new Entry(Optional.of(place), raw, Double.NaN, text);
    }

    private static boolean isPartName(Input input) {
        return input.kind() == InputKind.PICK
                || (input.kind() == InputKind.TEXT && input.grid().rows() > 1);
    }

    private static boolean choice(Input input, String text) {
        for (String choice : input.choices()) {
            if (choice.equalsIgnoreCase(text)) {
                return true;
            }
        }
        return false;
    }

    private String expected(Input input) {
        return switch (input.kind()) {
            case LENGTH -> UnreadableLengthException.EXPECTED;
            case ANGLE -> "a number of degrees";
            case COUNT -> "a whole number";
            case NUMBER, MONEY -> "a number";
            case TORQUE, LOAD, STRESS, SPEED, DENSITY -> "a number of " + input.kind().symbol(unit);
            case CHOICE -> "one of: " + String.join(", ", input.choices());
            case TYRE -> UnreadableTyreSizeException.EXPECTED;
            default -> "a text";
        };
    }

    private static String between(Input input, Input.Range range) {
        String suffix = input.kind().unit().isEmpty() ? "" : " " + input.kind().unit();
        if (Double.isInfinite(range.most())) {
            return plain(range.least()) + suffix + " or more";
        }
        return plain(range.least()) + " to " + plain(range.most()) + suffix;
    }

    private static String plain(double number) {
        double rounded = Math.rint(number * 1e4) / 1e4;
        return rounded == Math.rint(rounded) && Math.abs(rounded) < 1e15
                ? Long.toString((long) rounded)
                : Double.toString(rounded);
    }

    public static String shown(CellValue raw) {
        return raw instanceof CellValue.Text ? "\"" + shownText(raw) + "\"" : shownText(raw);
    }

    private static String shownText(CellValue raw) {
        if (raw instanceof CellValue.Text text) {
            return text.value();
        }
        return raw instanceof CellValue.Numeric number
                ? plain(number.value()).toLowerCase(Locale.ROOT)
                : "";
    }

    private void error(CellPlace place, String subject, String found, String expected) {
        problems.add(Problem.error(place, subject, found, expected));
    }
}
