package shaftwright.live;

import static shaftwright.live.Quantity.SHOWN_LENGTH;

import shaftwright.contract.Grid;
import shaftwright.shaft.SideResult;

/**
 * The band of lengths that each position of the shop card's scenario allows, and the chosen shaft
 * inside it, end to end; margins and doubt are not taken off.
 */
final class BandLines {
    private static final String LENGTH = "{shop_e}/tape_mm";

    private BandLines() {}

    static void declare(LiveLines lines) {
        LineSet<SideResult> set =
                LineSet.in(lines, Section.CHART_LIMITS, Grid.CHART_POINT)
                        .revised(2)
                        .only(Card.SHAFT, Lacking.NOT_AVAILABLE);
        set.number(
                "band_travel",
                "Travel, card's scenario",
                SHOWN_LENGTH,
                Card.across("table_travel"),
                (result, index) -> result.fitted().get(index.row()).travel());
        set.number(
                "band_longest",
                "Bottoms above",
                SHOWN_LENGTH,
                LENGTH + "+" + Card.across("table_slack_in"),
                (result, index) ->
                        result.length().endToEnd() + result.fitted().get(index.row()).slackIn());
        set.number(
                "band_chosen",
                "Chosen shaft, E",
                SHOWN_LENGTH,
                LENGTH,
                result -> result.length().endToEnd());
        set.number(
                "band_shortest",
                "Pulls out below",
                SHOWN_LENGTH,
                LENGTH + "-" + Card.across("table_slack_out"),
                (result, index) ->
                        result.length().endToEnd() - result.fitted().get(index.row()).slackOut());
    }
}
