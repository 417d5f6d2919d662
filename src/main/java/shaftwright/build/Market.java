package shaftwright.build;

import java.util.List;
import shaftwright.joint.Boot;

/**
 * What a builder can have in place of what a scenario has, and what that costs.
 *
 * @param joints that may stand at either end
 * @param boots that may sit on either joint
 * @param work by the piece
 * @param spares to be carried
 */
public record Market(List<RatedJoint> joints, List<Boot> boots, WorkPrices work, Spares spares) {
    /** There is nothing else, and no price is known. */
    public static final Market NONE =
            new Market(List.of(), List.of(), WorkPrices.UNKNOWN, Spares.NONE);

    public Market {
        joints = List.copyOf(joints);
        boots = List.copyOf(boots);
    }
}
