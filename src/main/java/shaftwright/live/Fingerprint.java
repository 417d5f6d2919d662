package shaftwright.live;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Index;
import shaftwright.reading.KnownPrints;
import shaftwright.reading.Sizing;
import shaftwright.shaft.ShaftEnd;

/**
 * A whole number below 16,777,213 that changes when one of the live quantities that it is made from
 * does, once as a formula and once as the core computes it: {@code MOD(Σ wᵢ vᵢ, 16777213)}.
 *
 * <p>A measured quantity counts as {@code MOD(ROUND(x·2²⁰, 0), 16777213)}, an empty one as 1: the
 * rounding to a millionth makes the last digits not matter in which programs differ. Weights are
 * below 2¹⁶ and terms few, so that sums stay below 2⁴⁷, where every program's remainder is exact.
 * Quantities must be below 100,000 in size. The modulus is prime, hence a change of one term is
 * always seen, and an exchange of two; of other changes one in 16 million is missed.
 */
public final class Fingerprint {
    /** Stands in cells of a block that has no figures; a blank one would say "never filled". */
    public static final String NOTHING = "–";

    static final int MODULUS = 16_777_213;
    private static final int STEPS = 1_048_576;
    private static final int WEIGHT_ROOT = 4093;
    private static final int WEIGHT_MODULUS = 65_521;
    private static final int MOST_TERMS = 64;

    /** How a term counts. */
    private enum Kind {
        MEASURED,
        THOUSANDTH,
        MILLIONTH,
        WHOLE,
        SUM
    }

    private record Term(String line, Kind kind) {}

    private final LiveLines lines;
    private final List<Term> terms = new ArrayList<>();

    Fingerprint(LiveLines lines) {
        this.lines = lines;
    }

    /**
     * Adds quantities of the same scenario and row, in mm, rad or plain numbers; of the same side
     * too, unless the name ends in {@code @left} or {@code @right}.
     */
    Fingerprint measured(String... names) {
        return add(Kind.MEASURED, names);
    }

    /**
     * The same of quantities that both ends of the shaft have, the inner end's before the outer.
     */
    Fingerprint atEnds(String... names) {
        for (String name : names) {
            atEnd(ShaftEnd.INNER, name).atEnd(ShaftEnd.OUTER, name);
        }
        return this;
    }

    /** The same of one end. */
    Fingerprint atEnd(ShaftEnd end, String... names) {
        for (String name : names) {
            measured(name + "_" + end.shortWord());
        }
        return this;
    }

    /** What shafts are cut by: the joints that they end in, the path's doubt, the shop. */
    Fingerprint cutting() {
        return atEnds("race_depth", "seat", "stub", "splines")
                .measured("variance_distance", "variance_height", "curve_allowance")
                .sum("hat_print")
                .measured("shop_increment_read", "ring_thickness_read", "tape_mm")
                .measured("groove_depth_read", "groove_width_read", "spline_runout_read");
    }

    /** Adds a quantity that is up to a thousand times too large, such as a square in mm². */
    Fingerprint thousandth(String name) {
        return add(Kind.THOUSANDTH, name);
    }

    /**
     * Adds a quantity that is up to a million times too large, such as a variance of squares in
     * mm².
     */
    Fingerprint millionth(String name) {
        return add(Kind.MILLIONTH, name);
    }

    /** Adds other fingerprints, likewise. */
    Fingerprint whole(String... names) {
        return add(Kind.WHOLE, names);
    }

    /** Adds the sum of the fingerprints of all rows of a quantity. */
    Fingerprint sum(String name) {
        return add(Kind.SUM, name);
    }

    private Fingerprint add(Kind kind, String... names) {
        for (String name : names) {
            terms.add(new Term(name, kind));
        }
        return this;
    }

    /** The number of several rows together, in whatever order. */
    static double sum(DoubleStream rows) {
        return Math.floorMod(rows.mapToLong(number -> (long) number).sum(), MODULUS);
    }

    /** The formula, its weights starting with this one. */
    String formula(int firstWeight) {
        StringBuilder text = new StringBuilder("MOD(");
        int weight = weight(firstWeight);
        for (Term term : terms) {
            text.append(text.length() == 4 ? "" : "+").append(weight).append('*');
            String place = "{" + term.line + "}";
            switch (term.kind) {
                case MEASURED -> text.append(rounded(place, ""));
                case THOUSANDTH -> text.append(rounded(place, "/1000"));
                case MILLIONTH -> text.append(rounded(place, "/1000000"));
                case WHOLE -> text.append(place);
                case SUM -> text.append("SUM({").append(term.line).append(":all})");
            }
            weight = next(weight);
        }
        return text.append(',').append(MODULUS).append(')').toString();
    }

    private static String rounded(String place, String divided) {
        return ("IF(" + place + "=\"\",1,MOD(ROUND(" + place + divided + "*" + STEPS)
                + (",0)," + MODULUS + "))");
    }

    /**
     * The number by the core.
     *
     * @param firstWeight always the same one for the same place
     */
    double of(Sizing sizing, Index index, int firstWeight) {
        KnownPrints known = sizing.prints();
        double number = known.number(this, index);
        if (number < 0) {
            number = computed(sizing, index, firstWeight);
            known.keep(this, index, number);
        }
        return number;
    }

    private double computed(Sizing sizing, Index index, int firstWeight) {
        long sum = 0;
        int weight = weight(firstWeight);
        for (Term term : terms) {
            sum += weight * value(term, sizing, index);
            weight = next(weight);
        }
        return Math.floorMod(sum, MODULUS);
    }

    private long value(Term term, Sizing sizing, Index index) {
        int mark = term.line.indexOf('@');
        if (mark >= 0) {
            Side side = term.line.endsWith("left") ? Side.LEFT : Side.RIGHT;
            return value(
                    new Term(term.line.substring(0, mark), term.kind),
                    sizing,
                    new Index(side, index.scenario(), index.row()));
        }
        LiveLine line = lines.line(term.line);
        if (term.kind == Kind.SUM) {
            long sum = 0;
            for (int row = 0; row < line.grid().rows(); row++) {
                Index at = new Index(index.side(), index.scenario(), row);
                sum += (long) number(line.core().at(sizing, at));
            }
            return sum;
        }
        double x = number(line.core().at(sizing, index));
        return switch (term.kind) {
            case MEASURED -> rounded(x);
            case THOUSANDTH -> rounded(x / 1000);
            case MILLIONTH -> rounded(x / 1_000_000);
            default -> (long) x;
        };
    }

    private static double number(CellValue value) {
        return value instanceof CellValue.Numeric number ? number.value() : Double.NaN;
    }

    /** Halves away from zero, as spreadsheets round; 1 for an empty cell. */
    private static long rounded(double x) {
        if (Double.isNaN(x)) {
            return 1;
        }
        long size = (long) Math.floor(Math.abs(x) * STEPS + 0.5);
        return Math.floorMod(x < 0 ? -size : size, MODULUS);
    }

    /** Powers of a number: no two alike, nor evenly spaced, which would let changes cancel. */
    private static int weight(int number) {
        if (number < 0 || number >= MOST_TERMS) {
            throw new IllegalArgumentException("no weight of number " + number);
        }
        int weight = WEIGHT_ROOT;
        for (int i = 0; i < number; i++) {
            weight = next(weight);
        }
        return weight;
    }

    private static int next(int weight) {
        return (int) ((long) weight * WEIGHT_ROOT % WEIGHT_MODULUS);
    }
}
