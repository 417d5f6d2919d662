package shaftwright.mockup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import shaftwright.joint.MountedJoint;
import shaftwright.shaft.Position;
import shaftwright.shaft.SideSetup;
import shaftwright.shaft.WindowCorrection;

/**
 * A mock-up's readings beside what the joints' figures say at each height, and the correction of
 * the length window that follows from the differences.
 *
 * @param mockUp what was read
 * @param comparisons of each reading within the known path, ends fully in first
 * @param correction straight lines through the differences
 */
public record MockUpCheck(
        MockUp mockUp, List<StickComparison> comparisons, WindowCorrection correction) {
    public MockUpCheck {
        comparisons = List.copyOf(comparisons);
    }

    /**
     * Compares.
     *
     * @param built the side as the mock-up was built; a correction that it has does not count
     * @param tapeDeviation standard uncertainty of a reading by tape, mm
     * @throws shaftwright.suspension.NoLateralReachException if the hub path has none there
     */
    public static MockUpCheck of(MockUp mockUp, SideSetup built, double tapeDeviation) {
        SideSetup plain = built.with(WindowCorrection.NONE);
        Comparing inward = new Comparing(mockUp, plain, WindowEnd.IN, tapeDeviation);
        Comparing outward = new Comparing(mockUp, plain, WindowEnd.OUT, tapeDeviation);
        List<StickComparison> all = new ArrayList<>(inward.corrected());
        all.addAll(outward.corrected());
        return new MockUpCheck(
                mockUp,
                all,
                new WindowCorrection(
                        inward.line().map(DifferenceLine::line),
                        outward.line().map(DifferenceLine::line),
                        Math.max(inward.doubt(), outward.doubt())));
    }

    /** The comparison of an end at a reading; empty when it was not read, or can't be compared. */
    public Optional<StickComparison> at(int row, WindowEnd end) {
        return comparisons.stream()
                .filter(each -> each.end() == end && each.reading().row() == row)
                .findFirst();
    }

    /** Number of readings that contradict, with the correction made or without. */
    public int contradicting(boolean corrected) {
        return (int) comparisons.stream().filter(each -> each.contradicts(corrected)).count();
    }

    /**
     * The reading that contradicts most, beyond its doubt; empty when none does.
     *
     * @param corrected whether the correction is made
     */
    public Optional<StickComparison> worst(boolean corrected) {
        return comparisons.stream()
                .filter(each -> each.contradicts(corrected))
                .reduce((a, b) -> b.excess(corrected) > a.excess(corrected) ? b : a);
    }

    /** What may be wrong where readings contradict. */
    public Suspicion suspicion(boolean corrected) {
        Optional<StickComparison> in = worst(WindowEnd.IN, corrected);
        Optional<StickComparison> out = worst(WindowEnd.OUT, corrected);
        if (in.isPresent() && out.isPresent()) {
            return in.get().sooner(corrected) == out.get().sooner(corrected)
                    ? Suspicion.PLUNGE
                    : Suspicion.PLACES;
        }
        return in.isPresent() ? Suspicion.BOTTOMS : Suspicion.PULL_OUTS;
    }

    private Optional<StickComparison> worst(WindowEnd end, boolean corrected) {
        return comparisons.stream()
                .filter(each -> each.end() == end && each.contradicts(corrected))
                .max(Comparator.comparingDouble(each -> each.excess(corrected)));
    }

    /** One end of the window at all heights. */
    private record Comparing(MockUp mockUp, SideSetup built, WindowEnd end, double tape) {
        /** What is compared; a reading outside the known path can't be. */
        List<StickComparison> all() {
            List<StickComparison> all = new ArrayList<>();
            for (StickReading reading : mockUp.readings()) {
                OptionalDouble holes = reading.holes(end);
                boolean known =
                        reading.travel() >= built.path().tMin()
                                && reading.travel() <= built.path().tMax();
                if (holes.isPresent() && known && (end == WindowEnd.OUT || pushes())) {
                    all.add(compared(reading, holes.getAsDouble()));
                }
            }
            return all;
        }

        private boolean pushes() {
            return mockUp.stick().pushes();
        }

        private StickComparison compared(StickReading reading, double holes) {
            Stick stick = mockUp.stick();
            Position position = stood(reading.travel());
            double spacing =
                    end == WindowEnd.IN
                            ? position.inward().spacing()
                            : position.outward().spacing();
            double expected = stick.holes(end, spacing, built.inner(), built.outer());
            double difference = holes - expected;
            return new StickComparison(
                    end,
                    reading,
                    expected,
                    difference,
                    difference,
                    StickComparison.allowed(position.hub().doubt(), tape));
        }

        /** The side with the stick in, its races where this end of the window puts them. */
        private Position stood(double travel) {
            Stick stick = mockUp.stick();
            MountedJoint inner = built.inner();
            MountedJoint outer = built.outer();
            SideSetup with =
                    end == WindowEnd.IN
                            ? built.with(stick.inner().pushed(inner), stick.outer().pushed(outer))
                            : built.with(stick.inner().pulled(inner), stick.outer().pulled(outer));
            return Position.of(with, travel);
        }

        Optional<DifferenceLine> line() {
            return DifferenceLine.through(all());
        }

        double doubt() {
            return line().map(found -> found.doubt(all(), tape)).orElse(0.0);
        }

        List<StickComparison> corrected() {
            Optional<DifferenceLine> line = line();
            return line.isEmpty() ? List.of() : line.get().left(all());
        }
    }

    /** What a builder looks at first. */
    public enum Suspicion {
        /** Both ends are off the same way: something stands elsewhere. */
        PLACES("the datum offsets and the tape readings"),
        /** Both are off in opposite ways. */
        PLUNGE("the joints' plunge and bench tables"),
        BOTTOMS("the cup bottoms, the inward plunge and the datum offsets"),
        PULL_OUTS("the outward plunge, the boots and the datum offsets");

        private final String words;

        Suspicion(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }
}
