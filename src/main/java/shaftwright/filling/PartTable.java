package shaftwright.filling;

import java.util.List;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;

/** A table of parts that scenarios pick from by name. */
public enum PartTable {
    JOINTS(Grid.JOINT, "joint_name", "joint"),
    BOOTS(Grid.BOOT, "boot_name", "boot"),
    BLANKS(Grid.BLANK, "blank_name", "blank"),
    /** Rows that belong to a joint by its name, several to one. */
    BENCH(Grid.BENCH, "bench_joint", "bench reading");

    private final Grid grid;
    private final String key;
    private final String word;

    PartTable(Grid grid, String key, String word) {
        this.grid = grid;
        this.key = key;
        this.word = word;
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
