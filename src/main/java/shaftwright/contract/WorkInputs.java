package shaftwright.contract;

import java.util.List;
import shaftwright.contract.Input.Range;

/**
 * What the builder pays for work that levers ask for: none must be given, and what is not is said
 * to be not priced.
 */
public final class WorkInputs {
    private static final Range AMOUNT = new Range(0, 1e6);

    /** Contract version that brought them. */
    private static final int SINCE = 3;

    private WorkInputs() {}

    static void declare(List<Input> all) {
        all.add(
                price(
                        "counterbore_price",
                        "Sinking one ring seat deeper",
                        "Machining one race; with both ends done a vehicle has four."));
        all.add(
                price(
                        "spacer_price",
                        "One spacer between joint and cup",
                        "With the longer bolts that it takes."));
        all.add(price("strap_price", "One limit strap", "For one side, fitted or shortened."));
        all.add(price("bump_stop_price", "One bump stop", "For one side, changed or shimmed."));
        all.add(
                price(
                        "transaxle_price",
                        "Moving the transaxle",
                        "New or altered mounts, and what moves with it."));
        all.add(
                price(
                        "hub_price",
                        "Moving one hub in or out",
                        "Other arms or links for one side."));
    }

    private static Input price(String name, String label, String meaning) {
        return Input.number(
                        name,
                        Grid.BOOK,
                        label,
                        InputKind.MONEY,
                        AMOUNT,
                        AMOUNT,
                        meaning + " Used by Levers. Empty: not priced.")
                .since(SINCE);
    }
}
