package shaftwright.live;

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
        set.shown("band_travel", "Travel, card's scenario")
                .is(
                        Card.across("table_travel"),
                        (result, index) -> result.fitted().get(index.row()).travel());
        set.shown("band_longest", "Bottoms above")
                .is(
                        LENGTH + "+" + Card.across("table_slack_in"),
                        (result, index) ->
                                result.length().endToEnd()
                                        + result.fitted().get(index.row()).slackIn());
        set.shown("band_chosen", "Chosen shaft, E")
                .is(LENGTH, result -> result.length().endToEnd());
        set.shown("band_shortest", "Pulls out below")
                .is(
                        LENGTH + "-" + Card.across("table_slack_out"),
                        (result, index) ->
                                result.length().endToEnd()
                                        - result.fitted().get(index.row()).slackOut());
    }
}
