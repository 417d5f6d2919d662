package shaftwright.reading;

import java.util.ArrayList;
import java.util.List;
import shaftwright.book.CellValue;
import shaftwright.build.Side;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Index;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.units.UnreadableLengthException;
import shaftwright.units.UnreadableNumberException;

/**
 * What is typed and can't be used, in words: the first such cell, by label, side and row. A cell
 * that all scenarios share keeps them all from a verdict, a scenario's own only that scenario.
 */
public final class Misread {
    /** Said of a cell that is not a number of its kind. */
    public static final String CANT_BE_READ = " can't be read";

    /** Said of a number that its input does not allow. */
    public static final String OUT_OF_RANGE = " is out of range (is the unit right?)";

    private static final Misread NOTHING = new Misread("", List.of());

    private final String shared;
    private final List<String> scenarios;

    private Misread(String shared, List<String> scenarios) {
        this.shared = shared;
        this.scenarios = scenarios;
    }

    /** Where everything that was typed can be used. */
    static Misread nothing() {
        return NOTHING;
    }

    /** Looks at every typed number. */
    static Misread of(InputValues inputs) {
        List<String> scenarios = new ArrayList<>();
        for (int scenario = 0; scenario < inputs.scenarios(); scenario++) {
            scenarios.add(column(inputs, scenario));
        }
        return new Misread(shared(inputs), scenarios);
    }

    /** What keeps a scenario from use, a clause without a full stop; empty for nothing. */
    public String in(int scenario) {
        if (!shared.isEmpty() || scenarios.isEmpty()) {
            return shared;
        }
        return scenarios.get(scenario);
    }

    /** What all scenarios share: inputs of the whole vehicle first, then the left side's. */
    private static String shared(InputValues inputs) {
        String found = first(inputs, Side.LEFT, false);
        for (Side side : Side.values()) {
            found = found.isEmpty() ? first(inputs, side, true) : found;
        }
        return found;
    }

    private static String first(InputValues inputs, Side side, boolean sided) {
        for (Input input : Contract.inputs()) {
            if (isShared(input) && input.grid().sided() == sided && isUsed(inputs, input, side)) {
                String found = first(inputs, input, side);
                if (!found.isEmpty()) {
                    return found;
                }
            }
        }
        return "";
    }

    /** Whether this is a number that all scenarios share; of the service log no verdict follows. */
    public static boolean isShared(Input input) {
        return input.kind().numeric()
                && !input.grid().perScenario()
                && input.grid() != Grid.SERVICE;
    }

    /** While the right side is not measured, the left side's cells serve for it. */
    private static boolean isUsed(InputValues inputs, Input input, Side side) {
        boolean own =
                switch (input.grid()) {
                    case AS_CUT, BUILT, STICK, STICK_READING -> true;
                    default -> false;
                };
        return side == Side.LEFT || own || SideReadings.rightMeasured(inputs);
    }

    /** The first cell that can't be read, or else the first out of range. */
    private static String first(InputValues inputs, Input input, Side side) {
        for (String flaw : new String[] {CANT_BE_READ, OUT_OF_RANGE}) {
            for (int row = 0; row < inputs.rows(input.name(), side); row++) {
                if (flaw(inputs, input, new Index(side, 0, row)).equals(flaw)) {
                    return subject(input, side)
                            + (input.grid().rows() > 1 ? row + 1 : "")
                            + cell(inputs, input, new Index(side, 0, row))
                            + flaw;
                }
            }
        }
        return "";
    }

    /**
     * Label, side and table of an input, as a sentence about it begins; the number of the row
     * follows where there are several, then the cell. The label stands in quotes, since many are no
     * nouns ("Angle gauge reads to").
     */
    public static String subject(Input input, Side side) {
        String subject = quoted(input) + (input.grid().sided() ? ", " + side.word() : "");
        if (input.grid().rows() > 1) {
            return subject + ", " + row(input.grid()) + " ";
        }
        return subject;
    }

    /** An input as a sentence about it begins in a scenario's column. */
    public static String quoted(Input input) {
        return '"' + input.label() + '"';
    }

    private static String cell(InputValues inputs, Input input, Index index) {
        return " (" + inputs.address(input.name(), index) + "),";
    }

    /** What a row of a table is called: several tables have a price or a diameter. */
    private static String row(Grid grid) {
        return switch (grid) {
            case LINKAGE_POINT -> "pick-up point";
            case OWN_POINT -> "own pick-up point";
            case JOINT -> "joint row";
            case BENCH -> "bench row";
            case BOOT -> "boot row";
            case BLANK -> "blank row";
            case MATERIAL -> "material row";
            case RATED -> "rated joint row";
            case RATING -> "rating row";
            case DUTY -> "duty row";
            case DOUBT -> "doubt row";
            case RESTRAINT -> "damper row";
            case TUBE -> "tube row";
            case STICK_READING -> "stick reading";
            default -> "row";
        };
    }

    private static String column(InputValues inputs, int scenario) {
        for (String flaw : new String[] {CANT_BE_READ, OUT_OF_RANGE}) {
            for (Input input : Contract.inputs(Grid.SCENARIO)) {
                if (input.kind().numeric()
                        && flaw(inputs, input, new Index(Side.LEFT, scenario, 0)).equals(flaw)) {
                    return quoted(input)
                            + cell(inputs, input, new Index(Side.LEFT, scenario, 0))
                            + flaw;
                }
            }
        }
        return "";
    }

    private static String flaw(InputValues inputs, Input input, Index index) {
        if (!inputs.unreadable(input.name(), index)) {
            return "";
        }
        CellValue raw = inputs.content(input.name(), index);
        if (!(raw instanceof CellValue.Numeric || raw instanceof CellValue.Text)) {
            return CANT_BE_READ;
        }
        try {
            double typed = InputReader.typed(input, raw, inputs.unit());
            boolean whole = input.kind() != InputKind.COUNT || typed == Math.rint(typed);
            return whole ? OUT_OF_RANGE : CANT_BE_READ;
        } catch (UnreadableLengthException | UnreadableNumberException e) {
            return CANT_BE_READ;
        }
    }
}
