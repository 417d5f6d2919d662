package shaftwright.template;

import org.apache.poi.ss.usermodel.HorizontalAlignment;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.book.Area;
import shaftwright.build.Side;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Section;
import shaftwright.study.ViewPart;
import shaftwright.template.Run.Direction;

/**
 * The shaft, and below it its side from behind, from above and from outside, at full droop, ride
 * and full bump: three charts in one scale over square cells, whose edges say the lengths. The left
 * side's wheel is on the left, as one sees it from behind.
 */
final class DrawingSheet {
    private static final int SQUARES = ViewPart.SQUARES;

    /** The column between the views, which says heights and what is ahead. */
    private static final int MIDDLE = SQUARES;

    private static final int COLUMNS = 2 * SQUARES + 1;
    private static final int SHAFT = 3;
    private static final int CHARACTERS = 6;

    /** Width of such a column in points: a mean of what programs make of it, 3 % apart from it. */
    private static final float SQUARE_POINTS = 32.4f;

    private final Draft draft;
    private final XSSFSheet sheet;
    private final Side side;

    /** First rows of the views from above and from behind, and the one below the latter. */
    private final int above;

    private final int behind;
    private final int below;

    private DrawingSheet(Draft draft, Side side) {
        this.draft = draft;
        this.side = side;
        sheet = draft.sheet(name(side));
        for (int column = 0; column < COLUMNS; column++) {
            sheet.setColumnWidth(column, (column == MIDDLE ? CHARACTERS + 1 : CHARACTERS) * 256);
        }
        above = new ShaftPicture(draft, sheet, side).lay(SHAFT, COLUMNS) + 2;
        behind = above + SQUARES + 1;
        below = behind + SQUARES;
    }

    static String name(Side side) {
        return "Drawing " + side.word();
    }

    static void lay(Draft draft, Side side) {
        new DrawingSheet(draft, side).lay();
    }

    private void lay() {
        draft.title(sheet, "Drawing, " + side.word() + " side");
        for (int row = above; row < below; row++) {
            if (row != behind - 1) {
                Draft.cell(sheet, row, 0);
                sheet.getRow(row).setHeightInPoints(SQUARE_POINTS);
            }
        }
        Page.heading(draft, sheet, SHAFT - 1, COLUMNS, "The shaft to scale, inner end on the left");
        String unit = draft.unit().symbol();
        heading(above - 1, rear(), "From above, ahead upward, " + unit);
        heading(above - 1, outside(), "What is drawn");
        heading(behind - 1, rear(), "From behind, heights, " + unit);
        heading(behind - 1, outside(), "From outside, heights, " + unit);
        words();
        edges(unit);
        view(above, rear(), "view_out", "view_ahead");
        view(behind, rear(), "view_out", "view_up");
        view(behind, outside(), "view_ahead", "view_up");
        draft.printout(sheet).onOnePage();
    }

    /** First column of the views from behind and above. */
    private int rear() {
        return side == Side.LEFT ? MIDDLE + 1 : 0;
    }

    /** First column of the view from outside. */
    private int outside() {
        return side == Side.LEFT ? 0 : MIDDLE + 1;
    }

    private void heading(int row, int column, String text) {
        for (int i = 0; i < SQUARES; i++) {
            Draft.cell(sheet, row, column + i).setCellStyle(draft.look().heading());
        }
        draft.text(sheet, row, column, text, draft.look().heading());
        sheet.getRow(row).setHeightInPoints(20);
    }

    private void words() {
        int row = above;
        int label = outside();
        int value = label + SQUARES / 2;
        for (LiveLine line : LiveLines.all().in(Section.VIEW_SHOWN)) {
            boolean note = line.name().equals("view_note");
            draft.text(
                    sheet,
                    row,
                    label,
                    Page.label(line, draft.unit()),
                    note ? draft.look().prose() : draft.look().label());
            draft.live(
                    line,
                    side,
                    sheet,
                    row,
                    value,
                    Direction.DOWN,
                    note ? draft.look().prose() : draft.look().result(line.quantity()));
            int last = note ? row + 1 : row;
            merge(row, last, label, value - 1);
            merge(row, last, value, label + SQUARES - 1);
            row = last + 1;
        }
        draft.text(
                sheet,
                row,
                label,
                "Solid: ride. Heavy: shaft between joint centres. Grey: the outer datum's way. Without"
                        + " a fore-aft mark, ahead counts from the inner datum. A hub shift moves"
                        + " the hub and the outer ends of its arms.",
                draft.look().prose());
        merge(row, above + SQUARES - 1, label, label + SQUARES - 1);
    }

    private void merge(int first, int last, int left, int right) {
        sheet.addMergedRegion(new CellRangeAddress(first, last, left, right));
    }

    private void edges(String unit) {
        HorizontalAlignment toward =
                side == Side.LEFT ? HorizontalAlignment.RIGHT : HorizontalAlignment.LEFT;
        edge("view_edge_out", below, rear(), Direction.ACROSS, toward);
        edge("view_edge_ahead", below, outside(), Direction.ACROSS, toward);
        edge("view_edge_plan", above, MIDDLE, Direction.DOWN, HorizontalAlignment.CENTER);
        edge("view_edge_up", behind, MIDDLE, Direction.DOWN, HorizontalAlignment.CENTER);
        under(rear(), "Out from the vehicle's centre plane, " + unit);
        under(outside(), "Ahead of the fore-aft mark, " + unit);
    }

    private void edge(
            String name, int row, int column, Direction direction, HorizontalAlignment toward) {
        draft.live(
                LiveLines.all().line(name),
                side,
                sheet,
                row,
                column,
                direction,
                draft.look().tick(toward));
    }

    private void under(int column, String text) {
        draft.text(sheet, below + 1, column, text, draft.look().centred());
        merge(below + 1, below + 1, column, column + SQUARES - 1);
    }

    private void view(int top, int left, String across, String up) {
        XSSFDrawing drawing = sheet.createDrawingPatriarch();
        XSSFChart chart =
                drawing.createChart(
                        drawing.createAnchor(0, 0, 0, 0, left, top, left + SQUARES, top + SQUARES));
        LineDrawing lines = new LineDrawing(chart, 0, SQUARES, 0, SQUARES);
        if (side == Side.LEFT) {
            lines.across().setOrientation(AxisOrientation.MAX_MIN);
        }
        squares(lines.across());
        squares(lines.up());
        lines.line(
                points(across, ViewPart.WAY, 0),
                points(up, ViewPart.WAY, 0),
                LineDrawing.stroke(3, PresetLineDash.SOLID, PresetColor.SILVER));
        for (int stand = 0; stand < ViewPart.STANDS; stand++) {
            PresetLineDash dash = DASHES[stand];
            ViewPart tyre = tyre(across, up);
            line(lines, across, up, tyre, stand, LineDrawing.stroke(1, dash));
            line(lines, across, up, ViewPart.LINKAGE, stand, LineDrawing.stroke(1.25, dash));
            line(lines, across, up, ViewPart.CHAIN, stand, LineDrawing.stroke(1, dash));
            XDDFScatterChartData.Series shaft =
                    lines.line(
                            shaft(across, stand), shaft(up, stand), LineDrawing.stroke(2.5, dash));
            shaft.setMarkerStyle(MarkerStyle.CIRCLE);
        }
        lines.plot();
        lines.fill();
    }

    /** Lines of droop, ride and bump are told apart in black and white. */
    private static final PresetLineDash[] DASHES = {
        PresetLineDash.SYSTEM_DOT, PresetLineDash.SOLID, PresetLineDash.DASH
    };

    private static ViewPart tyre(String across, String up) {
        if (across.equals("view_ahead")) {
            return ViewPart.TYRE_SIDE;
        }
        return up.equals("view_up") ? ViewPart.TYRE_BEHIND : ViewPart.TYRE_ABOVE;
    }

    private static void squares(XDDFValueAxis axis) {
        axis.setMajorUnit(1);
        axis.getOrAddMajorGridProperties()
                .setLineProperties(
                        LineDrawing.stroke(0.5, PresetLineDash.SOLID, PresetColor.SILVER));
    }

    private void line(
            LineDrawing lines,
            String across,
            String up,
            ViewPart part,
            int stand,
            XDDFLineProperties stroke) {
        lines.line(points(across, part, stand), points(up, part, stand), stroke);
    }

    private Area points(String name, ViewPart part, int stand) {
        return rows(name, part.first(stand), part.size());
    }

    /** The part of the chain between the joint centres. */
    private Area shaft(String name, int stand) {
        return rows(name, ViewPart.CHAIN.first(stand) + 1, 2);
    }

    private Area rows(String name, int row, int count) {
        Area area = draft.places().run(name, side).area();
        int first = area.firstRow() + row;
        return new Area(
                area.sheet(), first, area.firstColumn(), first + count - 1, area.firstColumn());
    }
}
