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
        return SlotKind.LENGTH;
    }

    @Override
    public List<String> words() {
        return List.of();
    }

    String text(ShaftFacts left, ShaftFacts right, LengthUnit unit) {
        return kind().text(
                        switch (this) {
                            case LEFT_END_TO_END -> left.endToEnd();
                            case RIGHT_END_TO_END -> right.endToEnd();
                            case LEAST_SLACK_IN ->
                                    Math.min(left.slackIn().value(), right.slackIn().value());
                            case LEAST_SLACK_OUT ->
                                    Math.min(left.slackOut().value(), right.slackOut().value());
                        },
                        unit);
    }
}
