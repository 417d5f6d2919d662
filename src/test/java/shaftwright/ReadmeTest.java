package shaftwright;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import shaftwright.contract.Contract;
import shaftwright.contract.Grid;
import shaftwright.contract.Input;
import shaftwright.contract.InputKind;

/** The README tells what the declarations say. */
class ReadmeTest {
    @Test
    void theTableOfInputsIsTheContracts() throws IOException {
        ReadmeTable.holds("inputs", table());
    }

    private static String table() {
        StringBuilder text = new StringBuilder("| name | cells | what | range | empty |\n");
        text.append("|---|---|---|---|---|\n");
        for (Input input : Contract.inputs()) {
            text.append("| `").append(input.name()).append("` | ").append(cells(input.grid()));
            text.append(" | ").append(input.label()).append(" | ").append(range(input));
            text.append(" | ").append(empty(input)).append(" |\n");
        }
        return text.toString();
    }

    private static String cells(Grid grid) {
        String side = grid.sided() ? "per side" : "";
        if (grid.perScenario()) {
            return "per scenario";
        }
        return grid.rows() == 1
                ? (side.isEmpty() ? "one" : side)
                : (grid.rows() + " rows " + side).strip();
    }

    private static String range(Input input) {
        if (input.kind() == InputKind.CHOICE) {
            return String.join(", ", input.choices());
        }
        if (!input.kind().numeric()) {
            return input.kind() == InputKind.PICK ? "a name in the table" : "text";
        }
        return plain(input.allowed().least())
                + " to "
                + plain(input.allowed().most())
                + (input.kind().unit().isEmpty() ? "" : " " + input.kind().unit());
    }

    private static String empty(Input input) {
        if (!input.hasWhenEmpty()) {
            return "–";
        }
        String unit = input.kind().unit();
        return plain(input.whenEmpty()) + (unit.isEmpty() ? "" : " " + unit);
    }

    private static String plain(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }
}
