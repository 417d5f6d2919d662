package shaftwright.mockup;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import shaftwright.shaft.Position;
import shaftwright.shaft.SideSetup;
import shaftwright.shaft.WindowCorrection;

/**
 * A mock-up's readings beside what the joints' figures say at each height, and the correction of
 * the length window that follows from the differences.
 *
 * @param mockUp what was read
 * @param stood the side with the stick in, its races at their inboard stops, nothing corrected
 * @param tapeDeviation standard uncertainty of a reading by tape, mm
 * @param comparisons of each reading within the known path that can be used, ends fully in first
 * @param unusable readings within it that can't be used, in the order of the builder's table
 * @param correction straight lines through the differences
 */
public record MockUpCheck(
        MockUp mockUp,
        SideSetup stood,
        double tapeDeviation,
        List<StickComparison> comparisons,
        List<UnusableReading> unusable,
        WindowCorrection correction) {
    /** Travels nearer than this count as equal, mm. */
    private static final double NEAR = 5e-7;

    public MockUpCheck {
        comparisons = List.copyOf(comparisons);
        unusable = List.copyOf(unusable);
    }

    /**
     * Compares.
     *
     * @param built the side as the mock-up was built; a correction that it has does not count
     * @param tapeDeviation standard uncertainty of a reading by tape, mm
     * @throws shaftwright.suspension.NoLateralReachException if the hub path has none there
     */
    public static MockUpCheck of(MockUp mockUp, SideSetup built, double tapeDeviation) {
        Stick stick = mockUp.stick();
        // Where a race is pulled out, the stick's end is far from its cup, wherever the race is.
        SideSetup stood =
                built.with(WindowCorrection.NONE)
                        .with(stick.inner().in(built.inner()), stick.outer().in(built.outer()));
        Comparing comparing = new Comparing(mockUp, stood, tapeDeviation);
        List<StickComparison> in = comparing.all(WindowEnd.IN);
        List<StickComparison> out = comparing.all(WindowEnd.OUT);
        double whole =
                Stream.concat(in.stream(), out.stream())
                        .mapToDouble(StickComparison::allowed)
                        .max()
                        .orElse(0);
        Optional<DifferenceLine> inward = DifferenceLine.through(in);
        Optional<DifferenceLine> outward = DifferenceLine.through(out);
        List<StickComparison> all = new ArrayList<>();
        inward.ifPresent(line -> all.addAll(line.left(in)));
        outward.ifPresent(line -> all.addAll(line.left(out)));
        return new MockUpCheck(
                mockUp,
                stood,
                tapeDeviation,
                all,
                comparing.unusable(),
                new WindowCorrection(
                        inward.map(DifferenceLine::line),
                        outward.map(DifferenceLine::line),
                        Math.max(
                                doubt(inward, in, whole, tapeDeviation),
                                doubt(outward, out, whole, tapeDeviation))));
    }

    private static double doubt(
            Optional<DifferenceLine> line,
            List<StickComparison> through,
            double whole,
            double tapeDeviation) {
        return line.isEmpty() ? 0 : line.get().doubt(through, whole, tapeDeviation);
    }

    /** Whether a reading lies within the side's known path. */
    public boolean knows(StickReading reading) {
        return knows(stood, reading.travel());
    }

    private static boolean knows(SideSetup side, double travel) {
        return travel - side.path().tMin() > -NEAR && travel - side.path().tMax() < NEAR;
    }

    /** The side at a travel in mm with the stick in. */
    public Position position(double travel) {
        return Position.of(stood, travel);
    }

    /**
     * Spacing of the holes that the joints' figures say at a travel, mm; empty where the stick says
     * nothing of that end of the window, or the path is not known.
     */
    public OptionalDouble expected(WindowEnd end, double travel) {
        return comparing().expected(end, travel);
    }

    /** How much further apart the holes are than the races' centres, mm. */
    public double holesOver(WindowEnd end) {
        return mockUp.stick().holesOver(end, stood.inner(), stood.outer());
    }

    /** Difference from that at a travel which says nothing, mm. */
    public double allowed(double travel) {
        return comparing().allowed(travel);
    }

    private Comparing comparing() {
        return new Comparing(mockUp, stood, tapeDeviation);
    }

    /** The longest stick, end to end, that goes between the cups' bottoms at a travel, mm. */
    public double roomBetweenCups(double travel) {
        return roomBetweenCups(stood, travel);
    }

    private static double roomBetweenCups(SideSetup side, double travel) {
        return Position.of(side, travel).distance()
                + side.inner().joint().cupBottom()
                + side.outer().joint().cupBottom();
    }

    /** How far apart the holes of that stick are, mm. */
    public double mostHoles(double travel) {
        return roomBetweenCups(travel) - mockUp.stick().lengthOverHoles();
    }

    /** What is wrong with a reading; empty when it can be used, or is not within the known path. */
    public Optional<UnusableReading> unusable(int row) {
        return unusable.stream().filter(each -> each.reading().row() == row).findFirst();
    }

    /** The reading that can be used least, the first of several; empty when all can be. */
    public Optional<UnusableReading> leastUsable() {
        return unusable.stream().reduce((a, b) -> b.flaw().compareTo(a.flaw()) > 0 ? b : a);
    }

    /** The comparison of an end at a reading; empty when it was not read, or can't be compared. */
    public Optional<StickComparison> at(int row, WindowEnd end) {
        return of(end).stream().filter(each -> each.reading().row() == row).findFirst();
    }

    private List<StickComparison> of(WindowEnd end) {
        return comparisons.stream().filter(each -> each.end() == end).toList();
    }

    /** The line through the differences of an end; empty without any. */
    public Optional<DifferenceLine> line(WindowEnd end) {
        return DifferenceLine.through(of(end));
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

    /** The same of one end of the window. */
    public Optional<StickComparison> worst(WindowEnd end, boolean corrected) {
        return of(end).stream()
                .filter(each -> each.contradicts(corrected))
                .max(Comparator.comparingDouble(each -> each.excess(corrected)));
    }

    /** What readings are held against. */
    private record Comparing(MockUp mockUp, SideSetup stood, double tape) {
        List<StickComparison> all(WindowEnd end) {
            List<StickComparison> all = new ArrayList<>();
            for (StickReading reading : mockUp.readings()) {
                double travel = reading.travel();
                if (flaw(reading).isPresent()) {
                    continue;
                }
                OptionalDouble expected = expected(end, travel);
                OptionalDouble holes = reading.holes(end);
                if (holes.isPresent() && expected.isPresent()) {
                    all.add(compared(end, reading, holes.getAsDouble(), expected.getAsDouble()));
                }
            }
            return all;
        }

        List<UnusableReading> unusable() {
            return mockUp.readings().stream().flatMap(reading -> flaw(reading).stream()).toList();
        }

        private Optional<UnusableReading> flaw(StickReading reading) {
            double travel = reading.travel();
            return knows(stood, travel)
                    ? UnusableReading.of(
                            reading,
                            roomBetweenCups(stood, travel) - mockUp.stick().lengthOverHoles(),
                            allowed(travel))
                    : Optional.empty();
        }

        private double allowed(double travel) {
            return StickComparison.allowed(stood.path().at(travel).doubt(), tape);
        }

        OptionalDouble expected(WindowEnd end, double travel) {
            Stick stick = mockUp.stick();
            if (!knows(stood, travel) || (end == WindowEnd.IN && !stick.pushes())) {
                return OptionalDouble.empty();
            }
            Position position = Position.of(stood, travel);
            return OptionalDouble.of(
                    end.either(position.inward(), position.outward()).spacing()
                            + stick.holesOver(end, stood.inner(), stood.outer()));
        }

        private StickComparison compared(
                WindowEnd end, StickReading reading, double holes, double expected) {
            return new StickComparison(
                    end,
                    reading,
                    expected,
                    holes - expected,
                    holes - expected,
                    allowed(reading.travel()));
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

        /** Place in the order, from 1; workbooks hold it as a number. */
        public int number() {
            return List.of(values()).indexOf(this) + 1;
        }
    }
}
