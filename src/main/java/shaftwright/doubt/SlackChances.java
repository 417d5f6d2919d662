package shaftwright.doubt;

/**
 * How likely a shaft runs out of travel, counted over trials. Each chance is itself uncertain by
 * about {@code √(p (1 - p)/n)}.
 *
 * @param trials how many were made
 * @param bottoming chance that it bottoms anywhere in the travel
 * @param bottomingAtBump chance that it bottoms with the wheel fully up
 * @param bottomingAtDroop chance that it bottoms with the wheel hanging
 * @param pullOut chance that it pulls out anywhere in the travel
 * @param pullOutAtBump chance that it pulls out with the wheel fully up
 * @param pullOutAtDroop chance that it pulls out with the wheel hanging
 * @param windowMean mean over the trials of least inward plus least outward slack, mm
 * @param windowSpread standard deviation of that sum, mm
 */
public record SlackChances(
        int trials,
        double bottoming,
        double bottomingAtBump,
        double bottomingAtDroop,
        double pullOut,
        double pullOutAtBump,
        double pullOutAtDroop,
        double windowMean,
        double windowSpread) {}
