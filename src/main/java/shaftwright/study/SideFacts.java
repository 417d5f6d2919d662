package shaftwright.study;

import java.util.Optional;

/**
 * All that a verdict on one side of a scenario is drawn from.
 *
 * @param path what it rests on
 * @param shaft the shaft, when it could be computed
 * @param strength what the parts carry
 * @param travel what else ends the travel
 * @param width overall width and the builder's limit, when both are known
 * @param mockUp a mock-up of it that contradicts
 */
public record SideFacts(
        PathFacts path,
        Optional<ShaftFacts> shaft,
        StrengthFacts strength,
        TravelFacts travel,
        Optional<Width> width,
        Optional<MockUpFacts> mockUp) {

    /** Overall width at the tyres and its limit, mm. */
    public record Width(double overall, double limit) {
        boolean tooWide() {
            return overall > limit;
        }
    }

    /** A side of which nothing but its path and perhaps a shaft is known. */
    public static SideFacts of(PathFacts path, Optional<ShaftFacts> shaft) {
        return new SideFacts(
                path,
                shaft,
                StrengthFacts.UNKNOWN,
                TravelFacts.FREE,
                Optional.empty(),
                Optional.empty());
    }

    public SideFacts with(PathFacts other) {
        return new SideFacts(other, shaft, strength, travel, width, mockUp);
    }

    public SideFacts with(ShaftFacts other) {
        return new SideFacts(path, Optional.of(other), strength, travel, width, mockUp);
    }

    public SideFacts with(StrengthFacts other) {
        return new SideFacts(path, shaft, other, travel, width, mockUp);
    }

    public SideFacts with(TravelFacts other) {
        return new SideFacts(path, shaft, strength, other, width, mockUp);
    }

    public SideFacts with(Width other) {
        return new SideFacts(path, shaft, strength, travel, Optional.of(other), mockUp);
    }

    public SideFacts with(MockUpFacts other) {
        return new SideFacts(path, shaft, strength, travel, width, Optional.of(other));
    }
}
