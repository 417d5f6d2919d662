package shaftwright.live;

import static shaftwright.live.Quantity.SHOWN_LENGTH;

import shaftwright.book.CellValue;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.FittedPosition;
import shaftwright.shaft.SideResult;

/**
 * The band of lengths that each position of the shop card's scenario allows, and the chosen shaft
 * inside it, end to end; margins and doubt are not taken off.
 */
enum BandLines implements LiveLine.Formula, LiveLine.Core {
    TRAVEL("band_travel", "Travel, card's scenario"),
    LONGEST("band_longest", "Bottoms above"),
    CHOSEN("band_chosen", "Chosen shaft, E"),
    SHORTEST("band_shortest", "Pulls out below");

    private final String name;
    private final String label;

    BandLines(String name, String label) {
        this.name = name;
        this.label = label;
    }

    static void declare(LiveLines lines) {
        for (BandLines line : values()) {
            lines.add(
                    new LiveLine(
                            line.name,
                            Section.CHART_LIMITS,
                            Grid.CHART_POINT,
                            line.label,
                            SHOWN_LENGTH,
                            line,
                            line));
        }
    }

    @Override
    public int revised() {
        return 2;
    }

    @Override
    public String at(Index index) {
        String length = "{shop_e}/tape_mm";
        String value =
                switch (this) {
                    case TRAVEL -> chosen("table_travel");
                    case LONGEST -> length + "+" + chosen("table_slack_in");
                    case CHOSEN -> length;
                    case SHORTEST -> length + "-" + chosen("table_slack_out");
                };
        return "IF(ISNUMBER({shop_e})," + value + ",NA())";
    }

    private static String chosen(String table) {
        return CardWordLines.chosen("{" + table + ":across}", CardWordLines.WORKING_COLUMN);
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        SideResult result = CardWordLines.resultOrNull(sizing, index);
        return result == null
                ? CellValue.NOT_AVAILABLE
                : CellValue.of(core(result, index.row()) / sizing.unit().mm());
    }

    /** In mm. */
    private double core(SideResult result, int row) {
        FittedPosition position = result.fitted().get(row);
        double length = result.length().endToEnd();
        return switch (this) {
            case TRAVEL -> position.travel();
            case LONGEST -> length + position.slackIn();
            case CHOSEN -> length;
            case SHORTEST -> length - position.slackOut();
        };
    }
}
