package shaftwright.template;

import java.util.List;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.live.Section;
import shaftwright.study.Cautions;
import shaftwright.template.Run.Direction;
import shaftwright.units.LengthUnit;

/** What one shaft needs at the lathe and the bench, on one printed page. */
final class CardSheet {
    private static final int COLUMNS = 5;

    /** Whether to cut at all, and what stands against it. */
    private static final List<String> ON_TOP = List.of("card_cut", "card_verdict", "card_readings");

    private static final List<String> CHECKS =
            List.of(
                    "Blank measured end to end before the first cut",
                    "Mock-up stick tried at full bump, ride and full droop, both plunges free",
                    "Both ends cut and chamfered (carbide or a grinding wheel on hardened steel)",
                    "Grooves cut: the ring bears on the outer wall; land outside at least three depths",
                    "Race stopped inboard: shoulder, second ring or spline run-out",
                    "Cup edges that the ring or the shaft end could catch on are chamfered",
                    "Boot: length range, clamp seats and angle held at full droop",
                    "Rings seated, joints greased, boot clamps tight",
                    "Bolts torqued; torque checked again after the first run");

    /** A length as it is written out, with what its line's name ends with. */
    private enum Form {
        MILLIMETRES("mm", "", 15),
        DECIMAL("decimal inch", "_inch", 19),
        SIXTY_FOURTHS("nearest 1/64 in", "_64", 20);

        final String head;
        final String suffix;

        /** Characters of its column. */
        final int width;

        Form(String head, String suffix, int width) {
            this.head = head;
            this.suffix = suffix;
            this.width = width;
        }

        /** In a workbook of this unit, the builder's own first. */
        static Form[] of(LengthUnit unit) {
            return unit == LengthUnit.INCH
                    ? new Form[] {DECIMAL, SIXTY_FOURTHS, MILLIMETRES}
                    : new Form[] {MILLIMETRES, DECIMAL, SIXTY_FOURTHS};
        }
    }

    private CardSheet() {}

    static String name(Side side) {
        return "Card " + side.word();
    }

    static void lay(Draft draft, Side side) {
        XSSFSheet sheet = draft.sheet(name(side));
        Look look = draft.look();
        Form[] forms = Form.of(draft.unit());
        Page.widths(sheet, 36, forms[0].width, forms[1].width, forms[2].width, 16);
        draft.title(sheet, "Shop card, " + side.word() + " shaft");
        int row = 2;
        draft.text(sheet, row, 0, Contract.input("shop_scenario").label(), look.label());
        if (side == Side.LEFT) {
            draft.input(Contract.input("shop_scenario"), side, sheet, row, 1, Direction.DOWN);
        } else {
            draft.text(sheet, row, 1, "as on the left card", look.note());
        }
        row++;
        for (String name : ON_TOP) {
            row = words(draft, sheet, side, row, LiveLines.all().line(name));
        }
        Highlights.filled(
                sheet, new CellRangeAddress(row - ON_TOP.size(), row - ON_TOP.size(), 1, 4));
        for (LiveLine line : LiveLines.all().in(Section.SHOP_CARD)) {
            if (!isLength(line) && !isLengthText(line) && !ON_TOP.contains(line.name())) {
                row = words(draft, sheet, side, row, line);
            }
        }
        Page.heading(draft, sheet, row + 1, COLUMNS, "To scale, inner end on the left");
        row = new ShaftPicture(draft, sheet, side).lay(row + 2, COLUMNS);
        row = lengths(draft, sheet, side, row + 1);
        row = checks(draft, sheet, row + 1);
        draft.text(sheet, row + 1, 0, Cautions.BENCH, look.prose());
        sheet.addMergedRegion(new CellRangeAddress(row + 1, row + 1, 0, 4));
        sheet.getRow(row + 1).setHeightInPoints(44);
        draft.printout(sheet).onOnePage();
        draft.printArea(sheet, COLUMNS - 1, row + 1);
    }

    private static int words(Draft draft, XSSFSheet sheet, Side side, int row, LiveLine line) {
        Look look = draft.look();
        draft.text(sheet, row, 0, line.label(), look.label());
        draft.live(line, side, sheet, row, 1, Direction.DOWN, look.result(Quantity.TEXT));
        sheet.addMergedRegion(new CellRangeAddress(row, row, 1, 4));
        sheet.getRow(row).setHeightInPoints(height(line.name()));
        return row + 1;
    }

    private static float height(String line) {
        return switch (line) {
            case "card_verdict" -> 112;
            case "card_readings", "card_put_in", "card_correction" -> 30;
            default -> 16;
        };
    }

    private static boolean isLength(LiveLine line) {
        return LiveLines.all().has(line.name() + "_inch");
    }

    private static boolean isLengthText(LiveLine line) {
        return line.name().endsWith("_inch") || line.name().endsWith("_64");
    }

    private static int lengths(Draft draft, XSSFSheet sheet, Side side, int top) {
        Look look = draft.look();
        Page.heading(draft, sheet, top, COLUMNS, "Lengths");
        Form[] forms = Form.of(draft.unit());
        for (int column = 0; column < forms.length; column++) {
            draft.text(sheet, top + 1, 1 + column, forms[column].head, look.columnHead());
        }
        draft.text(sheet, top + 1, 1 + forms.length, "as cut, write here", look.columnHead());
        int row = top + 2;
        for (LiveLine line : LiveLines.all().in(Section.SHOP_CARD)) {
            if (isLength(line)) {
                draft.text(sheet, row, 0, line.label(), look.label());
                for (int column = 0; column < forms.length; column++) {
                    LiveLine shown = LiveLines.all().line(line.name() + forms[column].suffix);
                    draft.live(
                            shown,
                            side,
                            sheet,
                            row,
                            1 + column,
                            Direction.DOWN,
                            look.result(quantity(shown)));
                }
                Draft.cell(sheet, row, 1 + forms.length).setCellStyle(look.blankBox());
                sheet.getRow(row).setHeightInPoints(18);
                row++;
            }
        }
        return row;
    }

    /** Walls make a pair, and a ring is a tight fit between them. */
    private static Quantity quantity(LiveLine line) {
        return line.quantity() == Quantity.MILLIMETRE && line.name().startsWith("card_wall")
                ? Quantity.FACTOR
                : line.quantity();
    }

    private static int checks(Draft draft, XSSFSheet sheet, int top) {
        Page.heading(draft, sheet, top, COLUMNS, "Tick when done");
        int row = top + 1;
        for (String check : CHECKS) {
            draft.text(sheet, row, 0, check, draft.look().label());
            sheet.addMergedRegion(new CellRangeAddress(row, row, 0, 3));
            Draft.cell(sheet, row, 4).setCellStyle(draft.look().blankBox());
            sheet.getRow(row).setHeightInPoints(20);
            row++;
        }
        return row;
    }
}
