package shaftwright.functions;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** All functions of the pack, by topic. */
public final class Catalogue {
    private static final List<CellFunction> ALL = declared();

    private Catalogue() {}

    /** Every function, in the order of lists. */
    public static List<CellFunction> all() {
        return ALL;
    }

    /** The function of this name, with or without {@code SHAFT.}, in capitals or not. */
    public static Optional<CellFunction> find(String name) {
        String wanted = name.toUpperCase(Locale.ROOT);
        String shortName =
                wanted.startsWith(CellFunction.PREFIX)
                        ? wanted.substring(CellFunction.PREFIX.length())
                        : wanted;
        for (CellFunction function : ALL) {
            if (function.shortName().equals(shortName)) {
                return Optional.of(function);
            }
        }
        return Optional.empty();
    }

    private static List<CellFunction> declared() {
        List<CellFunction> all = new ArrayList<>();
        all.addAll(LengthFunctions.all());
        all.addAll(GeometryFunctions.all());
        all.addAll(JointFunctions.all());
        all.addAll(ShaftFunctions.all());
        all.addAll(CuttingFunctions.all());
        all.addAll(MockUpFunctions.sticks());
        all.addAll(TyreFunctions.all());
        all.addAll(TravelFunctions.all());
        all.addAll(PathFunctions.all());
        all.addAll(DoubtFunctions.all());
        all.addAll(MockUpFunctions.doubts());
        all.addAll(StrengthFunctions.all());
        all.addAll(FatigueFunctions.all());
        return List.copyOf(all);
    }
}
