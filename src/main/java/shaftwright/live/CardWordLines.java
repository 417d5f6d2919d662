package shaftwright.live;

import static shaftwright.contract.Grid.BOOK;
import static shaftwright.contract.Grid.SIDE;
import static shaftwright.live.Quantity.TEXT;

import shaftwright.book.CellValue;
import shaftwright.contract.Index;
import shaftwright.reading.Sizing;
import shaftwright.shaft.SideResult;

/** Texts that the shop card of each side prints, and which scenario it is for. */
enum CardWordLines implements LiveLine.Formula, LiveLine.Core {
    INDEX("card_index", "Scenario on the cards", "work_letter"),
    VEHICLE("card_vehicle", "Vehicle", "vehicle_name"),
    NAME("card_name", "Scenario", "scenario_name"),
    VERDICT("card_verdict", "Verdict", "side_verdict"),
    BLANK("card_blank", "Blank", "result_blank"),
    PUT_IN("card_put_in", "Getting it in", "result_put_in"),
    JOINT_INNER("card_joint_inner", "Joint, inner", "joint_inner"),
    BOOT_INNER("card_boot_inner", "Boot, inner", "boot_inner"),
    JOINT_OUTER("card_joint_outer", "Joint, outer", "joint_outer"),
    BOOT_OUTER("card_boot_outer", "Boot, outer", "boot_outer");

    /** The shop scenario's column among the working ones. */
    static final String WORKING_COLUMN = "card_index";

    /** Its column among the typed ones, where a builder may have put columns between. */
    private static final String TYPED_COLUMN = "MATCH(shop_scenario,scenario_letter,0)";

    private final String name;
    private final String label;
    private final String source;

    CardWordLines(String name, String label, String source) {
        this.name = name;
        this.label = label;
        this.source = source;
    }

    static void declare(LiveLines lines) {
        lines.add(
                new LiveLine(
                        INDEX.name,
                        Section.BOOK_WORK,
                        BOOK,
                        INDEX.label,
                        Quantity.WHOLE,
                        INDEX,
                        INDEX));
        for (CardWordLines line : values()) {
            if (line != INDEX) {
                lines.add(
                        new LiveLine(
                                line.name, Section.SHOP_CARD, SIDE, line.label, TEXT, line, line));
            }
        }
    }

    @Override
    public int revised() {
        return this == BLANK || this == PUT_IN ? 2 : 1;
    }

    @Override
    public String at(Index index) {
        return switch (this) {
            case INDEX -> "IFERROR(MATCH(shop_scenario,{" + source + ":each},0),0)";
            case VEHICLE -> source + "&\"\"";
            case VERDICT -> words(WORKING_COLUMN);
            case BLANK, PUT_IN -> CardGateLines.ifLengths(words(TYPED_COLUMN));
            default -> words(TYPED_COLUMN);
        };
    }

    private String words(String column) {
        return "IF(card_index=0,\"\",IFERROR("
                + chosen("{" + source + ":each}", column)
                + "&\"\",\"\"))";
    }

    /** The shop scenario's cell; Gnumeric's INDEX refuses a row of a single cell. */
    static String chosen(String row, String column) {
        return "IF(COLUMNS(" + row + ")=1," + row + ",INDEX(" + row + ",1," + column + "))";
    }

    @Override
    public CellValue at(Sizing sizing, Index index) {
        int scenario = sizing.shopScenario();
        if (this == INDEX) {
            return CellValue.of(scenario + 1);
        }
        if (this == VEHICLE) {
            return CellValue.of(sizing.inputs().text(source));
        }
        return CellValue.of(scenario < 0 ? "" : core(sizing, scenario, index));
    }

    private String core(Sizing sizing, int scenario, Index index) {
        if (this == VERDICT) {
            return VerdictLines.words(sizing, new Index(index.side(), scenario, 0));
        }
        if (this == BLANK) {
            SideResult result = CardGateLines.printedOrNull(sizing, index);
            return result == null ? "" : ResultLines.blank(result);
        }
        if (this == PUT_IN) {
            return CardGateLines.printedOrNull(sizing, index) == null
                    ? ""
                    : RimLines.sentence(sizing, new Index(index.side(), scenario, 0));
        }
        return sizing.inputs().text(source, new Index(index.side(), scenario, 0));
    }

    /** The shop scenario's result on a side, null when there is none. */
    static SideResult resultOrNull(Sizing sizing, Index index) {
        int scenario = sizing.shopScenario();
        return scenario < 0 ? null : sizing.resultOrNull(new Index(index.side(), scenario, 0));
    }
}
