package shaftwright.filling;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;

/** A table of parts that scenarios pick from by name. */
public enum PartTable {
    JOINTS(Grid.JOINT, "joint_name", "joint"),
    BOOTS(Grid.BOOT, "boot_name", "boot"),
    BLANKS(Grid.BLANK, "blank_name", "blank"),
    /** Rows that belong to a joint by its name, several to one. */
    BENCH(Grid.BENCH, "bench_joint", "bench reading"),
    /** Likewise. */
    RATINGS(Grid.RATED, "rated_joint", "rating of a joint"),
    MATERIALS(Grid.MATERIAL, "material_name", "material");

    private final Grid grid;
    private final String key;
    private final String word;

    PartTable(Grid grid, String key, String word) {
        this.grid = grid;
        this.key = key;
        this.word = word;
    }

    /** The table whose rows a column of parts names; empty for a column that names none. */
    static Optional<PartTable> namedBy(Input column) {
        return column.kind() == InputKind.PICK
                ? Arrays.stream(values())
                        .filter(table -> table.key.equals(column.choices().get(0)))
                        .findFirst()
                : Optional.empty();
    }

    /** Tables whose rows belong to a part of this one by its name. */
    List<PartTable> belonging() {
        return this == JOINTS ? List.of(BENCH, RATINGS) : List.of();
    }

    /** Name of the column that holds the part's name. */
    String key() {
        return key;
    }

    /** What one row is called. */
    String word() {
        return word;
    }

    /** Its columns, the name's among them. */
    List<Input> columns() {
        return Contract.inputs(grid);
    }
}
