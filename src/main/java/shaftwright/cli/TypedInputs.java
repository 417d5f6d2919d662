package shaftwright.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Pattern;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;
import shaftwright.filling.TypedColumn;
import shaftwright.reading.ScenarioOutcome;
import shaftwright.units.LengthUnit;

/**
 * What the command line wants typed into input cells; all that is wrong with it is said at once.
 */
final class TypedInputs {
    /** A number with an exponent, or of more digits than a tape text may have. */
    private static final String NUMBER =
            "[-+]?[0-9]+(\\.[0-9]+)?[eE][-+]?[0-9]{1,9}|-?([0-9]{17,}(\\.[0-9]+)?|[0-9]+\\.[0-9]{17,})";

    /** Above it a number takes more digits than a tape text may have. */
    private static final double LARGEST = 1e15;

    private static final int DECIMALS = 16;

    private final Map<String, SortedMap<Integer, String>> columns = new LinkedHashMap<>();
    private final Set<String> whole = new LinkedHashSet<>();
    private final List<String> wrong = new ArrayList<>();

    /** In files, and in assignments; the latter are refused always. */
    private final UnknownNames unknown = new UnknownNames();

    private final UnknownNames unknownAssigned = new UnknownNames();
    private final boolean lenient;

    /** Nothing typed yet; a lenient one leaves names of files out that no input has. */
    TypedInputs(boolean lenient) {
        this.lenient = lenient;
    }

    /**
     * Takes everything that an input has: one text for a single one, one a row or scenario else.
     */
    void given(String name, GivenInput given) {
        Optional<Input> found = input(name, unknown);
        if (found.isEmpty()) {
            return;
        }
        Input input = found.get();
        if (places(input) == 1 && given.texts().size() > 1) {
            wrong.add(name + ": found a list; expected one value.");
            return;
        }
        if (places(input) > 1 && given.single()) {
            wrong.add(
                    name
                            + ": found one value; expected a list, as it is typed once per "
                            + (input.grid().perScenario() ? "scenario" : "row")
                            + ": [value, value], null for an empty cell.");
            return;
        }
        SortedMap<Integer, String> column = new TreeMap<>();
        for (String text : given.texts()) {
            column.put(column.size(), plain(input, text));
        }
        columns.put(name, column);
        whole.add(name);
    }

    /** Takes one {@code NAME=VALUE}, {@code NAME[3]=VALUE} or {@code NAME[B]=VALUE}. */
    void assignment(String assignment) {
        int equals = assignment.indexOf('=');
        if (equals <= 0) {
            wrong.add("--set: found \"" + assignment + "\"; expected NAME=VALUE.");
            return;
        }
        String target = assignment.substring(0, equals).trim().toLowerCase(Locale.ROOT);
        int bracket = target.indexOf('[');
        String name = bracket < 0 ? target : target.substring(0, bracket);
        Optional<Input> found = input(name, unknownAssigned);
        if (found.isEmpty()) {
            return;
        }
        Input input = found.get();
        OptionalInt place = place(input, target, bracket);
        if (place.isEmpty()) {
            wrong.add("--set " + target + ": expected " + form(input, name) + ".");
            return;
        }
        SortedMap<Integer, String> column = columns.get(name);
        if (column == null) {
            column = new TreeMap<>();
            columns.put(name, column);
        }
        column.put(place.getAsInt(), plain(input, assignment.substring(equals + 1)));
    }

    /**
     * A length's number as tapes have it: programs write {@code 1e0} or seventeen digits, which
     * neither a builder nor the workbook's formula takes for a length. Other texts stay.
     */
    private static String plain(Input input, String text) {
        if (input.kind() != InputKind.LENGTH || !Pattern.matches(NUMBER, text)) {
            return text;
        }
        double number = Double.parseDouble(text);
        if (Math.abs(number) >= LARGEST) {
            return text;
        }
        BigDecimal exact = BigDecimal.valueOf(number).round(MathContext.DECIMAL64);
        BigDecimal shown =
                exact.setScale(Math.min(exact.scale(), DECIMALS), RoundingMode.HALF_EVEN);
        return shown.signum() == 0 ? "0" : shown.stripTrailingZeros().toPlainString();
    }

    /** The input of this name; one that there is not is added to the unknown ones. */
    private static Optional<Input> input(String name, UnknownNames unknown) {
        Optional<Input> input = Contract.find(name);
        if (input.isEmpty()) {
            unknown.add(name);
        }
        return input;
    }

    private static int places(Input input) {
        return input.grid().perScenario() ? Contract.MOST_SCENARIOS : input.grid().rows();
    }

    /** Zero-based place, empty when it is none of this input's. */
    private static OptionalInt place(Input input, String target, int bracket) {
        if (bracket < 0) {
            return places(input) == 1 ? OptionalInt.of(0) : OptionalInt.empty();
        }
        if (places(input) == 1 || !target.endsWith("]")) {
            return OptionalInt.empty();
        }
        String inside = target.substring(bracket + 1, target.length() - 1).trim();
        if (input.grid().perScenario()) {
            return ScenarioOutcome.number(inside);
        }
        try {
            int row = Integer.parseInt(inside);
            return row > 0 ? OptionalInt.of(row - 1) : OptionalInt.empty();
        } catch (NumberFormatException e) {
            return OptionalInt.empty();
        }
    }

    private static String form(Input input, String name) {
        if (input.grid().perScenario()) {
            return name + "[B]=VALUE with a scenario's letter, A to X";
        }
        return places(input) == 1
                ? name + "=VALUE, since it is typed once"
                : name + "[3]=VALUE with a row from 1 on";
    }

    /** Says what else is wrong, together with everything that this finds. */
    void refuse(String message) {
        wrong.add(message);
    }

    /** Whether something is to be typed into this input. */
    boolean has(String name) {
        return columns.containsKey(name);
    }

    /** First text of an input, empty when it has none. */
    String text(String name) {
        return has(name) ? columns.get(name).getOrDefault(0, "") : "";
    }

    /**
     * For a workbook that is there.
     *
     * @throws UsageException if anything is wrong
     */
    List<TypedColumn> forFilling() {
        stopIfWrong();
        List<TypedColumn> all = new ArrayList<>();
        for (Map.Entry<String, SortedMap<Integer, String>> column : columns.entrySet()) {
            all.add(
                    new TypedColumn(
                            column.getKey(), column.getValue(), whole.contains(column.getKey())));
        }
        return all;
    }

    /**
     * For a new workbook: every cell of each input named, those not given as they start.
     *
     * @throws UsageException if anything is wrong
     */
    Map<String, List<String>> forNew(LengthUnit unit, int scenarios) {
        Map<String, List<String>> all = new LinkedHashMap<>();
        for (Map.Entry<String, SortedMap<Integer, String>> column : columns.entrySet()) {
            String name = column.getKey();
            Input input = Contract.named(name);
            String[] texts = new String[input.grid().cells(scenarios)];
            Arrays.fill(texts, whole.contains(name) ? "" : input.initial(unit));
            for (Map.Entry<Integer, String> text : column.getValue().entrySet()) {
                if (text.getKey() < texts.length) {
                    texts[text.getKey()] = text.getValue();
                } else if (!text.getValue().isEmpty()) {
                    wrong.add(beyond(input, name, text.getKey(), texts.length));
                }
            }
            all.put(name, List.of(texts));
        }
        stopIfWrong();
        return all;
    }

    private static String beyond(Input input, String name, int place, int places) {
        return input.grid() == Grid.SCENARIO
                ? name
                        + ": found a value for scenario "
                        + ScenarioOutcome.letter(place)
                        + "; expected A to "
                        + ScenarioOutcome.letter(places - 1)
                        + ", or more --scenarios."
                : name
                        + ": found a value for row "
                        + (place + 1)
                        + "; expected 1 to "
                        + places
                        + ".";
    }

    private void stopIfWrong() {
        List<String> all = new ArrayList<>();
        if (!lenient && !unknown.isEmpty()) {
            all.addAll(unknown.lines());
            all.add(InputOptions.LENIENT + " leaves out what no input of this version is called");
        }
        all.addAll(unknownAssigned.lines());
        all.addAll(wrong);
        if (!all.isEmpty()) {
            throw new UsageException(all);
        }
    }

    /** Warnings about names of files that were left out. */
    List<String> leftOut() {
        return lenient
                ? unknown.lines().stream().map(line -> "warning: left out: " + line + ".").toList()
                : List.of();
    }
}
