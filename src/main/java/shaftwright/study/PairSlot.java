package shaftwright.study;

import java.util.List;
import shaftwright.units.LengthUnit;

/** What the sentence on two sides that both fit is filled with, mm. */
public enum PairSlot implements Slot {
    LEFT_END_TO_END,
    RIGHT_END_TO_END,
    LEAST_SLACK_IN,
    LEAST_SLACK_OUT;

    @Override
    public SlotKind kind() {
        return switch (this) {
            case LEFT_END_TO_END, RIGHT_END_TO_END -> SlotKind.SHOP_LENGTH;
            case LEAST_SLACK_IN, LEAST_SLACK_OUT -> SlotKind.LENGTH;
        };
    }

    @Override
    public List<String> words() {
        return List.of();
    }

    String text(ShaftFacts left, ShaftFacts right, LengthUnit unit) {
        return switch (this) {
            case LEFT_END_TO_END -> endToEnd(left, unit);
            case RIGHT_END_TO_END -> endToEnd(right, unit);
            case LEAST_SLACK_IN ->
                    Wording.length(Math.min(left.slackIn().value(), right.slackIn().value()), unit);
            case LEAST_SLACK_OUT ->
                    Wording.length(
                            Math.min(left.slackOut().value(), right.slackOut().value()), unit);
        };
    }

    private static String endToEnd(ShaftFacts shaft, LengthUnit unit) {
        return Wording.shopLength(shaft.endToEnd(), shaft.window().increment(), unit);
    }
}
