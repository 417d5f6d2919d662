package shaftwright.contract;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import shaftwright.build.Side;

/**
 * The workbook contract: every input, declared once. Whatever else needs to know an input's name,
 * place, unit, range, default or meaning asks here.
 */
public final class Contract {
    /**
     * Version written into every workbook: 1 for program version 0.1.0. It is raised once a release
     * in which an input or a live line is added or a formula changes; a workbook of a lower version
     * lacks what came later.
     */
    public static final int VERSION = 8;

    /** Defined name of the cell that holds {@link #VERSION}. */
    public static final String VERSION_NAME = "shaftwright_contract";

    /** Name of the cell that says which cells need the function pack. */
    public static final String PACK_NOTE_NAME = "pack_note";

    /** Defined name by which a comparison of several workbooks is told from one of them. */
    public static final String COMPARISON_NAME = "shaftwright_comparison";

    /** Scenarios of a workbook when nobody asks for another number. */
    public static final int USUAL_SCENARIOS = 8;

    /** Most scenarios that one workbook may hold. */
    public static final int MOST_SCENARIOS = 24;

    private static final Map<String, InputSheet> SHEETS = new HashMap<>();
    private static final Map<String, Input> BY_NAME = declare();
    private static final Map<Grid, List<Input>> BY_GRID = byGrid();

    /** By side and input's name; put together once, as every look at an input asks for one. */
    private static final Map<Side, Map<String, String>> DEFINED_NAMES = namesBySide();

    private Contract() {}

    /** All inputs in the order in which a builder meets them. */
    public static List<Input> inputs() {
        return List.copyOf(BY_NAME.values());
    }

    /**
     * The input of this name, without side suffix.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Input input(String name) {
        Input input = BY_NAME.get(name);
        if (input == null) {
            throw new IllegalArgumentException("no input is called \"" + name + "\"");
        }
        return input;
    }

    /**
     * The input that this defined name belongs to, with side suffix where it is sided.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static Input named(String definedName) {
        return find(definedName)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "no input is called \"" + definedName + "\""));
    }

    /** The same, empty when there is none. */
    public static Optional<Input> find(String definedName) {
        Input input = BY_NAME.get(definedName);
        for (Side side : Side.values()) {
            if (input == null && definedName.endsWith(Contract.suffix(side))) {
                Input sided =
                        BY_NAME.get(
                                definedName.substring(
                                        0, definedName.length() - Contract.suffix(side).length()));
                input = sided != null && sided.grid().sided() ? sided : null;
            }
        }
        return Optional.ofNullable(input).filter(found -> definedName(found, definedName));
    }

    private static boolean definedName(Input input, String name) {
        return input.definedName(Side.LEFT).equals(name)
                || input.definedName(Side.RIGHT).equals(name);
    }

    /** Every input's defined names, sided inputs with both, in declared order. */
    public static List<String> definedNames() {
        List<String> names = new ArrayList<>(190);
        for (Input input : BY_NAME.values()) {
            names.add(input.definedName(Side.LEFT));
            if (input.grid().sided()) {
                names.add(input.definedName(Side.RIGHT));
            }
        }
        return names;
    }

    private static Map<Side, Map<String, String>> namesBySide() {
        Map<Side, Map<String, String>> bySide = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            Map<String, String> names = new HashMap<>();
            for (Input input : BY_NAME.values()) {
                names.put(input.name(), input.definedName(side));
            }
            bySide.put(side, names);
        }
        return bySide;
    }

    /** What the defined name of a sided cell ends in: {@code _left}, {@code _right}. */
    public static String suffix(Side side) {
        return side == Side.LEFT ? "_left" : "_right";
    }

    /**
     * The defined name that {@link Input#definedName} gives the input of this name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public static String definedName(String name, Side side) {
        String found = DEFINED_NAMES.get(side).get(name);
        if (found == null) {
            throw new IllegalArgumentException("no input is called \"" + name + "\"");
        }
        return found;
    }

    /** Inputs of one grid in declared order. */
    public static List<Input> inputs(Grid grid) {
        List<Input> found = BY_GRID.get(grid);
        return found == null ? List.of() : found;
    }

    private static Map<Grid, List<Input>> byGrid() {
        Map<Grid, List<Input>> byGrid = new EnumMap<>(Grid.class);
        for (Input input : BY_NAME.values()) {
            List<Input> inputs = byGrid.get(input.grid());
            if (inputs == null) {
                inputs = new ArrayList<>();
                byGrid.put(input.grid(), inputs);
            }
            inputs.add(input);
        }
        for (Map.Entry<Grid, List<Input>> inputs : byGrid.entrySet()) {
            inputs.setValue(List.copyOf(inputs.getValue()));
        }
        return byGrid;
    }

    /** The sheet on which a number is typed. */
    public static InputSheet sheet(Input number) {
        return SHEETS.get(number.name());
    }

    private static Map<String, Input> declare() {
        List<Input> all = new ArrayList<>(170);
        on(InputSheet.MEASURE, all, VehicleInputs::declare);
        on(InputSheet.MEASURE, all, SteerInputs::vehicle);
        on(InputSheet.MEASURE, all, MountLoad::vehicle);
        on(InputSheet.MEASURE, all, CheckInputs::declare);
        on(InputSheet.MEASURE, all, ReadingInputs::declare);
        on(InputSheet.LINKAGE, all, LinkageInputs::declare);
        on(InputSheet.PARTS, all, JointInputs::declare);
        on(InputSheet.PARTS, all, StockInputs::declare);
        on(InputSheet.MATING, all, MatingInputs::declare);
        on(InputSheet.STRENGTH, all, TorqueInputs::vehicle);
        on(InputSheet.STRENGTH, all, FatigueInputs::declare);
        on(InputSheet.STRENGTH, all, MaterialInputs::declare);
        on(InputSheet.STRENGTH, all, RatedInputs::declare);
        on(InputSheet.DOUBT, all, DoubtInputs::doubt);
        on(InputSheet.PARTS, all, DoubtInputs::spares);
        on(InputSheet.PARTS, all, WorkInputs::declare);
        on(InputSheet.MOCK_UP, all, StickInputs::declare);
        on(InputSheet.AS_BUILT, all, BuiltInputs::declare);
        on(InputSheet.DAMPERS, all, RestraintInputs::declare);
        on(InputSheet.LINKAGE, all, OwnPointInputs::declare);
        on(InputSheet.SCENARIOS, all, ScenarioInputs::declare);
        Map<String, Input> byName = new LinkedHashMap<>();
        for (Input input : all) {
            byName.put(input.name(), input);
        }
        return byName;
    }

    /** Declares inputs that are typed on one sheet; scenarios' variants have a sheet apart. */
    private static void on(InputSheet sheet, List<Input> all, Consumer<List<Input>> inputs) {
        int first = all.size();
        inputs.accept(all);
        for (Input input : all.subList(first, all.size())) {
            boolean column = input.grid() == Grid.SCENARIO || sheet != InputSheet.SCENARIOS;
            SHEETS.put(input.name(), column ? sheet : InputSheet.LEVERS);
        }
    }
}
