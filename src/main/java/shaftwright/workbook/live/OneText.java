package shaftwright.workbook.live;

import shaftwright.workbook.Index;

/**
 * A formula with the same text in every row, put together when it is first asked for: filling never
 * asks, checking asks for every cell.
 */
final class OneText implements LiveLine.Formula {
    /** Puts the text together. */
    interface Maker {
        String make();
    }

    private final Maker maker;
    private String text;

    OneText(Maker maker) {
        this.maker = maker;
    }

    @Override
    public String at(Index index) {
        if (text == null) {
            text = maker.make();
        }
        return text;
    }
}
