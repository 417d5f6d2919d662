package shaftwright.live;

/** The block of the workbook in which a live quantity stands. */
public enum Section {
    /** Single working cells that all sheets share. */
    BOOK_WORK,
    /** Joints, benches, boots and blanks as numbers, and the sorted list of travel limits. */
    PARTS_WORK,
    /** Scenario inputs as numbers, and what both sides share. */
    SCENARIO_WORK,
    /** One side's readings, fit and hub path. */
    PATH_WORK,
    /** One side's scenario columns: set-up, window, choice. */
    SIDE_WORK,
    /** One side's position table. */
    POSITION_WORK,
    /** One side's review of every blank. */
    BLANK_WORK,
    /** What a linkage's points are called, beside the typed ones. */
    LINKAGE_POINTS,
    /** What became of a linkage: an engine block. */
    LINKAGE_BLOCK,
    /** A linkage's curves by their coefficients, and how good they are, of the same block. */
    LINKAGE_CURVES,
    /** What became of points that scenarios have of their own: an engine block. */
    OWN_BLOCK,
    /** Curves of their linkages, of the same block. */
    OWN_CURVES,
    /** What the measuring guide leaves to be said, on several sheets. */
    GUIDE_NOTES,
    /** Notes beside the typed readings. */
    MEASURE_NOTES,
    /** Where the line comes from about which hubs are steered, below its inputs. */
    KINGPIN_NOTE,
    /** Results under the scenario inputs. */
    SCENARIO_RESULTS,
    /** Some of them as fractions, below their decimals in inch workbooks. */
    FRACTIONS,
    /** Each side's shaft in all states that are asked for, below its results: an engine block. */
    STATES_BLOCK,
    /** Travel that each side's shaft allows, below its results: an engine block. */
    TRAVEL_BLOCK,
    /** Longest travel that any blank allows, below it: an engine block. */
    LONGEST_BLOCK,
    /** Where each thing would end the travel alone, below it: an engine block. */
    ALONE_BLOCK,
    /** How dampers and straps move on a side: an engine block. */
    RESTRAINT_BLOCK,
    /** The same row by row. */
    RESTRAINT_ROWS,
    /** What they and boots make of each scenario's travel: an engine block. */
    STOP_BLOCK,
    /** Lengths over each scenario's travel, of the same block. */
    STOP_TABLE,
    /** What changes do for the scenario to vary: an engine block. */
    LEVER_BLOCK,
    /** Values along the edges of the grid of variants. */
    SWEEP_EDGES,
    /** The grid of variants: an engine block. */
    SWEEP_BLOCK,
    /** Torque, capacity and factor of every part, scenarios side by side. */
    STRENGTH,
    /** How torque that comes back tires each shaft, scenarios side by side. */
    FATIGUE,
    /** What flange bolts carry, beside their rows. */
    BOLTS,
    /** Doubt of lengths, and the margins built up from it. */
    DOUBT,
    /** Chances of running out of travel: an engine block. */
    CHANCES,
    /** Tables of a side, scenarios side by side. */
    TABLES,
    /** What must mate in each scenario, and what its boots go through. */
    MATING,
    /** Boots of the scenario on the cards over the travel. */
    MATING_TABLE,
    /** Why each blank was chosen or refused. */
    BLANK_TABLES,
    /** What to buy for each scenario. */
    PARTS_LIST,
    /** Figures behind a side's mock-up. */
    STICK_WORK,
    /** What is expected of each of its readings, and what they say. */
    STICK_SHOWN,
    /** What all of them say. */
    STICK_SAID,
    /** Figures behind what is measured on the finished shafts. */
    BUILT_WORK,
    /** Slack of the finished shafts as they were cut. */
    BUILT_CUT,
    /** End play and angles of the finished shafts. */
    BUILT_SHOWN,
    /** What the service log says. */
    SERVICE,
    /** Limit lines of a side's charts. */
    CHART_LIMITS,
    /** Which line of a side's charts is which scenario's. */
    CHART_LEGEND,
    /** What to do next, on the first sheet. */
    START_NEXT,
    /** Which sheets of the first sheet's list of hidden ones a verdict rests on. */
    START_MORE,
    /** The first sheet's list of verdicts. */
    START,
    /** Sizes and words of a shop card's drawing. */
    SHAFT_SIZES,
    /** Points of a shop card's drawing. */
    SHAFT_DRAWING,
    /** Figures behind a side's drawing. */
    VIEW_WORK,
    /** Which way the line along the linkage goes. */
    VIEW_ORDER,
    /** Lengths along the edges of a side's drawing. */
    VIEW_EDGES,
    /** What a side's drawing says of itself. */
    VIEW_SHOWN,
    /** How the length on a shop card came about. */
    DERIVATION,
    /** What a shop card prints for one side. */
    SHOP_CARD;

    /** Whether it stands on a working sheet, which no builder has to look at. */
    public boolean isWorking() {
        return switch (this) {
            case BOOK_WORK,
                    PARTS_WORK,
                    SCENARIO_WORK,
                    PATH_WORK,
                    SIDE_WORK,
                    POSITION_WORK,
                    BLANK_WORK,
                    STICK_WORK,
                    BUILT_WORK,
                    CHART_LIMITS,
                    SHAFT_SIZES,
                    SHAFT_DRAWING,
                    VIEW_WORK ->
                    true;
            default -> false;
        };
    }
}
