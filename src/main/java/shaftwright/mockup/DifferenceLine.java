package shaftwright.mockup;

import java.util.List;
import java.util.Optional;
import shaftwright.shaft.CorrectionLine;

/**
 * The straight line through differences over travel, by least squares: a shift where all were read
 * at one height, the line itself where they were read at two.
 *
 * @param line held beyond the lowest and the highest height
 * @param count number of differences
 * @param meanTravel of all, mm
 * @param spread sum of the squares of what their travels are off that, mm²
 */
public record DifferenceLine(CorrectionLine line, int count, double meanTravel, double spread) {
    /** Heights whose squares spread by less than this, mm², are one. */
    static final double ONE_HEIGHT = 1e-6;

    /** Through all of them; empty without any. */
    static Optional<DifferenceLine> through(List<StickComparison> all) {
        int count = all.size();
        if (count == 0) {
            return Optional.empty();
        }
        double meanTravel = all.stream().mapToDouble(each -> each.reading().travel()).sum() / count;
        double mean = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (StickComparison each : all) {
            mean += each.difference() / count;
            low = Math.min(low, each.reading().travel());
            high = Math.max(high, each.reading().travel());
        }
        double spread = 0;
        double product = 0;
        for (StickComparison each : all) {
            double off = each.reading().travel() - meanTravel;
            spread += off * off;
            product += off * each.difference();
        }
        double slope = spread < ONE_HEIGHT ? 0 : product / spread;
        return Optional.of(
                new DifferenceLine(
                        new CorrectionLine(mean - slope * meanTravel, slope, low, high),
                        count,
                        meanTravel,
                        spread));
    }

    /** The same differences with what the line leaves of each. */
    List<StickComparison> left(List<StickComparison> all) {
        return all.stream()
                .map(
                        each ->
                                new StickComparison(
                                        each.end(),
                                        each.reading(),
                                        each.expected(),
                                        each.difference(),
                                        each.difference() - line.at(each.reading().travel()),
                                        each.allowed()))
                .toList();
    }

    /**
     * What the line adds to the doubt of a length (k = 2), mm: the scatter about it, {@code 2 √(Σ
     * r² / ν)}, though no less than a tape's own; the whole doubt of a reading where nothing checks
     * it.
     *
     * @param whole the largest difference that says nothing, of all readings, mm
     */
    double doubt(List<StickComparison> all, double whole, double tapeDeviation) {
        int free = count - (spread < ONE_HEIGHT ? 1 : 2);
        if (free <= 0) {
            return whole;
        }
        double sum = 0;
        for (StickComparison each : left(all)) {
            sum += each.left() * each.left();
        }
        return Math.max(2 * Math.sqrt(sum / free), 2 * tapeDeviation);
    }
}
