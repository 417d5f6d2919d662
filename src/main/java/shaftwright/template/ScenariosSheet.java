package shaftwright.template;

import java.util.List;
import java.util.Map;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.contract.InputSheet;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Section;
import shaftwright.template.Run.Direction;
import shaftwright.units.LengthUnit;

/** Scenario inputs in columns, the verdict on top, results below. */
final class ScenariosSheet {
    static final String NAME = InputSheet.SCENARIOS.title();

    /** First scenario column, on this and the working sheets. */
    static final int FIRST = 1;

    /** Room for a part's name over two lines, points. */
    private static final int TWO_LINES = 26;

    static final int SENTENCE = 56;
    static final int VERDICT = 146;

    /** Room for several findings. */
    static final int SIDE_VERDICT = 290;

    /** Lines of the results that stand right below the verdict. */
    private static final List<String> WEAKEST = List.of("result_weakest", "result_factor");

    private static final Map<String, String> HEADINGS =
            Map.of(
                    "tyre_size", "Tyre, wheel and track",
                    "transaxle_forward", "Transaxle",
                    "all_states", "All states",
                    "joint_inner", "Joints and boots",
                    "stub_inner", "Shaft",
                    "bump_rule", "Travel",
                    "margin_inward", "Margins and choice",
                    "first_gear", "Gearing",
                    "shaft_pair_price", "Prices");

    private ScenariosSheet() {}

    static void lay(Draft draft) {
        XSSFSheet sheet = draft.sheet(NAME);
        int columns = FIRST + draft.scenarios();
        sheet.setColumnWidth(0, 38 * 256);
        for (int column = FIRST; column < columns; column++) {
            sheet.setColumnWidth(column, 24 * 256);
        }
        draft.title(sheet, "Scenarios");
        GuideSheet.note(
                draft, sheet, 0, "guide_note_scenarios", Side.LEFT, Math.min(4, columns - 1));
        Page.letters(draft, sheet, 1, columns, "Scenario");
        draft.constants("scenario_letter", sheet, 1, FIRST, 1, draft.scenarios());
        input(draft, sheet, 2, Contract.input("scenario_name"));
        sheet.getRow(2).setHeightInPoints(28);
        LiveLine verdict = LiveLines.all().line("verdict");
        draft.text(sheet, 3, 0, verdict.label(), draft.look().topLabel());
        draft.live(verdict, Side.LEFT, sheet, 3, FIRST, Direction.ACROSS, draft.look().verdict());
        sheet.getRow(3).setHeightInPoints(VERDICT);
        Highlights.verdicts(sheet, new CellRangeAddress(3, 3, FIRST, columns - 1));
        int row = inputs(draft, sheet, 4 + weakest(draft, sheet, 4), columns);
        sheet.setRowBreak(row - 1);
        results(draft, sheet, row, columns);
        sheet.createFreezePane(FIRST, 4);
        sheet.setRepeatingRows(new CellRangeAddress(1, 3, -1, -1));
        draft.printout(sheet).byBreaks(true, columns);
        draft.printout(sheet).wholePages(true);
    }

    /** The weakest part right below the verdict; returns the rows that it takes. */
    private static int weakest(Draft draft, XSSFSheet sheet, int top) {
        for (int at = 0; at < WEAKEST.size(); at++) {
            result(draft, sheet, top + at, LiveLines.all().line(WEAKEST.get(at)), Side.LEFT);
        }
        sheet.getRow(top).setHeightInPoints(TWO_LINES);
        return WEAKEST.size();
    }

    private static int inputs(Draft draft, XSSFSheet sheet, int top, int columns) {
        int row = top;
        for (Input input : Contract.inputs(Grid.SCENARIO)) {
            if (HEADINGS.containsKey(input.name())) {
                Page.heading(draft, sheet, row++, columns, HEADINGS.get(input.name()));
            }
            if (!input.name().equals("scenario_name")) {
                input(draft, sheet, row++, input);
            }
        }
        return row;
    }

    /** The last row of inputs, below which the results stand. */
    static int lastTyped(Draft draft) {
        return Contract.inputs(Grid.SCENARIO).stream()
                .mapToInt(input -> draft.places().run(input.name(), Side.LEFT).row())
                .max()
                .orElseThrow();
    }

    private static void input(Draft draft, XSSFSheet sheet, int row, Input input) {
        draft.text(sheet, row, 0, Page.label(input, draft.unit()), draft.look().label());
        draft.input(input, Side.LEFT, sheet, row, FIRST, Direction.ACROSS);
        if (input.kind() == InputKind.TEXT || input.kind() == InputKind.PICK) {
            sheet.getRow(row).setHeightInPoints(TWO_LINES);
        }
    }

    private static void results(Draft draft, XSSFSheet sheet, int top, int columns) {
        int row = top;
        for (Side side : Side.values()) {
            if (side == Side.RIGHT) {
                sheet.setRowBreak(row - 1);
            }
            Page.heading(draft, sheet, row++, columns, "Results, " + side.word() + " side");
            for (LiveLine line : LiveLines.all().in(Section.SCENARIO_RESULTS)) {
                if (line.grid() == Grid.SCENARIO_SIDE) {
                    result(draft, sheet, row, line, side);
                    if (line.name().equals("result_verdict")) {
                        Highlights.verdicts(
                                sheet, new CellRangeAddress(row, row, FIRST, columns - 1));
                    }
                    row++;
                    row = fraction(draft, sheet, row, line, side);
                }
            }
            row =
                    block(
                            draft,
                            sheet,
                            row,
                            columns,
                            "Travel this shaft allows, " + side.word() + " side",
                            Section.TRAVEL_BLOCK,
                            side);
            row =
                    block(
                            draft,
                            sheet,
                            row,
                            columns,
                            "Own pick-up points, " + side.word() + " side",
                            Section.OWN_BLOCK,
                            side);
        }
        sheet.setRowBreak(row - 1);
        Page.heading(draft, sheet, row++, columns, "Wheel, width and cost");
        for (LiveLine line : LiveLines.all().in(Section.SCENARIO_RESULTS)) {
            if (line.grid() == Grid.SCENARIO
                    && !line.name().equals("verdict")
                    && !WEAKEST.contains(line.name())) {
                result(draft, sheet, row++, line, Side.LEFT);
            }
        }
        row =
                blocks(
                        draft,
                        sheet,
                        row,
                        columns,
                        "Longest travel that a shaft from any blank allows, margins kept, %s side",
                        Section.LONGEST_BLOCK);
        sheet.setRowBreak(row - 1);
        row =
                blocks(
                        draft,
                        sheet,
                        row,
                        columns,
                        "All states at once, %s side",
                        Section.STATES_BLOCK);
        sheet.setRowBreak(row - 1);
        blocks(
                draft,
                sheet,
                row,
                columns,
                "Where each thing would end the travel from ride, were it the only one, %s side"
                        + " (not met: not as far as the path is known)",
                Section.ALONE_BLOCK);
    }

    /**
     * Figures of a fill of both sides below each other; returns the row below.
     *
     * @param title with {@code %s} for the side's word
     */
    private static int blocks(
            Draft draft, XSSFSheet sheet, int top, int columns, String title, Section section) {
        int row = top;
        for (Side side : Side.values()) {
            row = block(draft, sheet, row, columns, title.formatted(side.word()), section, side);
        }
        return row;
    }

    /** The same as a fraction, where builders read those; returns the row below. */
    private static int fraction(Draft draft, XSSFSheet sheet, int row, LiveLine line, Side side) {
        String name = line.name() + "_fraction";
        if (draft.unit() != LengthUnit.INCH || !LiveLines.all().has(name)) {
            return row;
        }
        LiveLine fraction = LiveLines.all().line(name);
        draft.text(sheet, row, 0, fraction.label(), draft.look().label());
        draft.live(fraction, side, sheet, row, FIRST, Direction.ACROSS, draft.look().fraction());
        return row + 1;
    }

    /** An engine block of one side, its stamp first; returns the row below it. */
    private static int block(
            Draft draft,
            XSSFSheet sheet,
            int top,
            int columns,
            String title,
            Section section,
            Side side) {
        int row = top;
        Page.heading(draft, sheet, row++, columns, title);
        Highlights.stamps(sheet, new CellRangeAddress(row, row, FIRST, columns - 1));
        for (LiveLine line : LiveLines.all().in(section)) {
            result(draft, sheet, row++, line, side);
        }
        return row;
    }

    private static void result(Draft draft, XSSFSheet sheet, int row, LiveLine line, Side side) {
        draft.text(sheet, row, 0, Page.label(line, draft.unit()), draft.look().label());
        boolean verdict = line.name().equals("result_verdict");
        draft.live(
                line,
                side,
                sheet,
                row,
                FIRST,
                Direction.ACROSS,
                verdict ? draft.look().verdict() : draft.look().of(line));
        switch (line.name()) {
            case "result_verdict" -> sheet.getRow(row).setHeightInPoints(SIDE_VERDICT);
            case "result_put_in", "own_status" -> sheet.getRow(row).setHeightInPoints(SENTENCE);
            case "states_s_min_at",
                    "states_s_max_at",
                    "states_shaft_angle_in_at",
                    "states_shaft_angle_out_at",
                    "result_blank",
                    "longest_blank",
                    "cost_total" ->
                    sheet.getRow(row).setHeightInPoints(TWO_LINES);
            default -> {
                // One line does.
            }
        }
    }
}
