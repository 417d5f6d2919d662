package shaftwright.template;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import shaftwright.build.Side;
import shaftwright.live.DerivationLines;
import shaftwright.live.LiveLine;
import shaftwright.live.LiveLines;
import shaftwright.live.Quantity;
import shaftwright.study.DerivationLine;
import shaftwright.study.DerivationStep;
import shaftwright.study.DerivationStep.Topic;
import shaftwright.template.Run.Direction;

/**
 * How the length on a side's card came about, from the tape to the shop's increment, on one printed
 * page: what each step is, its formula, and the figures beside it.
 */
final class DerivationSheet {
    /** Room for a verdict of four findings. */
    private static final int VERDICT_LINES = 7;

    private static final int WORDS = 0;
    private static final int FORMULA = 1;
    private static final int FIRST = 2;
    private static final int COLUMNS = FIRST + DerivationLine.PLACES;

    private static final int WORDS_WIDTH = 42;
    private static final int FORMULA_WIDTH = 43;

    /** Letters that find room in the width of a digit, on average of our texts. */
    private static final double LETTERS = 1.15;

    private static final float LINE_POINTS = 14;

    private final Draft draft;
    private final XSSFSheet sheet;
    private final Side side;

    private DerivationSheet(Draft draft, Side side) {
        this.draft = draft;
        this.side = side;
        sheet = draft.sheet(name(side));
        Page.widths(sheet, WORDS_WIDTH, FORMULA_WIDTH, 12, 12, 12, 12, 12, 12);
    }

    static String name(Side side) {
        return "How it came about " + side.word();
    }

    static void lay(Draft draft, Side side) {
        new DerivationSheet(draft, side).lay();
    }

    private void lay() {
        draft.title(sheet, "How the " + side.word() + " shaft's length came about");
        LiveLine says = LiveLines.all().line("how_says");
        draft.text(sheet, 1, WORDS, says.label(), draft.look().boldLabel());
        draft.live(
                says, side, sheet, 1, FORMULA, Direction.DOWN, draft.look().result(Quantity.TEXT));
        merge(1, FORMULA);
        draft.height(sheet, 1, VERDICT_LINES * LINE_POINTS);
        int row = 2;
        for (String symbols : DerivationStep.SYMBOLS) {
            draft.text(sheet, row, WORDS, symbols, draft.look().prose());
            merge(row, WORDS);
            draft.height(sheet, row, 2 * LINE_POINTS);
            row++;
        }
        for (Topic topic : Topic.values()) {
            row = topic(topic, row);
        }
        draft.printout(sheet).onOnePage();
    }

    private void merge(int row, int column) {
        sheet.addMergedRegion(new CellRangeAddress(row, row, column, COLUMNS - 1));
    }

    private int topic(Topic topic, int top) {
        Page.heading(draft, sheet, top, COLUMNS, topic.title());
        draft.text(sheet, top, FIRST, topic.first(), draft.look().heading());
        draft.text(
                sheet, top, FIRST + DerivationStep.FIGURES, topic.second(), draft.look().heading());
        for (int place : DerivationLines.places(topic)) {
            draft.live(
                    LiveLines.all().line(DerivationLines.name(topic, place)),
                    side,
                    sheet,
                    top + 1,
                    FIRST + place,
                    Direction.DOWN,
                    draft.look().label());
        }
        int row = top + 1;
        for (DerivationLine line : DerivationLine.of(topic)) {
            line(line, row++);
        }
        if (topic == Topic.GIVEN) {
            // Beside the last bench row, where neither words nor a formula stand.
            benchRowsLeftOut(row - 1);
        }
        return row;
    }

    private void benchRowsLeftOut(int row) {
        draft.live(
                LiveLines.all().line("how_bench_left_out"),
                side,
                sheet,
                row,
                WORDS,
                Direction.DOWN,
                draft.look().label());
        sheet.addMergedRegion(new CellRangeAddress(row, row, WORDS, FORMULA));
    }

    private void line(DerivationLine line, int row) {
        Look look = draft.look();
        if (line.row() == 0) {
            draft.text(sheet, row, WORDS, line.step().words(), look.label());
            draft.text(sheet, row, FORMULA, line.step().formula(), look.label());
        }
        for (int place = 0; place < DerivationLine.PLACES; place++) {
            int column = FIRST + place;
            line.kind(place).ifPresent(kind -> draft.style(sheet, row, column, look.step(kind)));
        }
        draft.height(sheet, row, (line.row() == 0 ? lines(line.step()) : 1) * LINE_POINTS);
    }

    private static int lines(DerivationStep step) {
        return Math.max(lines(step.words(), WORDS_WIDTH), lines(step.formula(), FORMULA_WIDTH));
    }

    private static int lines(String text, int width) {
        return Math.max(1, (int) Math.ceil(text.length() / (width * LETTERS)));
    }
}
