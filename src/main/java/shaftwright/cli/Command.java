package shaftwright.cli;

import java.util.List;

/** The commands, each declared once: reading command lines and the help go by this. */
enum Command {
    NEW(
            "new",
            "Makes a new workbook.",
            List.of(Parameter.one("FILE", "the workbook to be made")),
            List.of(
                    Option.value(
                            "--unit",
                            "inch|mm",
                            "Unit of bare numbers and results. Default: inch."),
                    Option.value(
                            "--scenarios",
                            "COUNT",
                            "Number of scenario columns, 1 to 24. Default: 8."),
                    Options.SET,
                    Options.INPUTS,
                    Options.LENIENT,
                    Option.flag(
                            "--demo", "Fill in the demo vehicle. All its figures are invented."),
                    Option.flag(
                            "--force",
                            "Replace a file that is there; it is kept as NAME.backup.xlsx."),
                    Options.TRACE),
            List.of(
                    "new shafts.xlsx",
                    "new --unit mm --scenarios 4 shafts.xlsx",
                    "new --demo forest-special.xlsx",
                    "new --set vehicle_name=Two-seater --set height_left[1]=13-7/16 shafts.xlsx")),
    FILL(
            "fill",
            "Computes a workbook and writes every result into it. Formulas, formats, notes and"
                    + " your own sheets stay as they are; the previous file is kept as"
                    + " NAME.backup.xlsx.",
            List.of(Parameter.one("FILE", "the workbook")),
            List.of(
                    Option.value(
                            "--out", "FILE", "Write to this file and leave the workbook alone."),
                    Options.SET,
                    Options.INPUTS,
                    Options.LENIENT,
                    Options.TRACE),
            List.of(
                    "fill shafts.xlsx",
                    "fill --out wider.xlsx --set hub_shift[A]=1 shafts.xlsx",
                    "fill --inputs readings.json shafts.xlsx")),
    CHECK(
            "check",
            "Says all that is wrong or doubtful in a workbook: readings, parts, names, formulas"
                    + " that were overwritten or edited. Changes nothing.",
            List.of(Parameter.one("FILE", "the workbook")),
            List.of(Options.TRACE),
            List.of("check shafts.xlsx")),
    SHOW(
            "show",
            "Shows the results of every scenario and side. Changes nothing.",
            List.of(Parameter.one("FILE", "the workbook")),
            List.of(
                    Option.flag(
                            "--json",
                            "As JSON for other programs. Every key of a number names its unit:"
                                    + " _mm, _rad. Its \"inputs\" can be fed to --inputs."),
                    Option.value("--side", "left|right", "One side only."),
                    Option.value("--scenario", "LETTER", "One scenario only."),
                    Options.TRACE),
            List.of(
                    "show shafts.xlsx",
                    "show --side left --scenario A shafts.xlsx",
                    "show --json shafts.xlsx")),
    LEVERS(
            "levers",
            "Says what would give a scenario more room, one change at a time: joints, boots, ring"
                    + " seats, spacers, limit strap, bump stop, where transaxle and hubs stand."
                    + " What makes it fit comes first, cheapest first; pairs where no single change"
                    + " does. Costs are your own prices; what has none is not priced. Changes"
                    + " nothing.",
            List.of(Parameter.one("FILE", "the workbook")),
            List.of(Option.value("--scenario", "LETTER", "One scenario only."), Options.TRACE),
            List.of("levers shafts.xlsx", "levers --scenario B shafts.xlsx")),
    SWEEP(
            "sweep",
            "Varies two inputs of a scenario over ranges and shows for each pair whether a shaft"
                    + " fits, and its length window. Changes nothing.",
            List.of(Parameter.one("FILE", "the workbook")),
            List.of(
                    Option.value("--scenario", "LETTER", "The scenario to vary. Default: A."),
                    Option.value(
                            "--across",
                            "NAME=FROM..TO/COUNT",
                            "The input that changes from column to column, by its defined name, and"
                                    + " how many values it takes. Default: the measured tyre"
                                    + " diameter around the present one."),
                    Option.value(
                            "--down",
                            "NAME=FROM..TO/COUNT",
                            "The input that changes from row to row. Default: the hubs' shift"
                                    + " outward, half of what the track gains."),
                    Options.TRACE),
            List.of(
                    "sweep --scenario B shafts.xlsx",
                    "sweep --across tyre_measured=28..33/6 --down hub_shift=0..3/7 shafts.xlsx")),
    TRADE_OFFS(
            "trade-offs",
            "Tries every pairing of your joints at several hub shifts and amounts of travel, each"
                    + " with the best of your blanks, and lists those that fit and that no other"
                    + " beats in cost, travel and least slack. Changes nothing.",
            List.of(Parameter.one("FILE", "the workbook")),
            List.of(
                    Option.value("--scenario", "LETTER", "The scenario to vary. Default: A."),
                    Options.TRACE),
            List.of("trade-offs --scenario B shafts.xlsx")),
    TAKE(
            "take",
            "Copies a scenario of a friend's workbook, with the joints, bench readings, boots and"
                    + " blanks that it names, into an empty scenario column of yours, and fills"
                    + " yours. Lengths keep their meaning when the units differ. Tape readings and"
                    + " settings are not taken; settings that differ are listed.",
            List.of(
                    Parameter.one("FROM", "the friend's workbook, which is left alone"),
                    Parameter.one("SCENARIO", "letter of the scenario there"),
                    Parameter.one("INTO", "your workbook")),
            List.of(
                    Option.value(
                            "--as",
                            "LETTER",
                            "Put it into this column, whatever stands there. Default: the first"
                                    + " empty one."),
                    Option.value(
                            "--out", "FILE", "Write to this file and leave your workbook alone."),
                    Options.TRACE),
            List.of(
                    "take friend.xlsx B shafts.xlsx",
                    "take friend.xlsx B --as D --out tried.xlsx shafts.xlsx")),
    COMPARE(
            "compare",
            "Lays the scenarios of several workbooks side by side in a new one, with the inputs"
                    + " that differ. It holds every workbook whole, each in its own unit, so that it"
                    + " follows what is changed in it, and is linked to none of the files. At most 24"
                    + " scenarios in all.",
            List.of(Parameter.several("FILE", "the workbooks, which are left alone")),
            List.of(
                    Option.value("--out", "FILE", "The comparison to be made."),
                    Option.value(
                            "--unit",
                            "inch|mm",
                            "Unit of the pages that compare. Default: that of the first file."),
                    Option.flag(
                            "--anonymous", "Leave out the files' names and the vehicles' names."),
                    Option.flag(
                            "--force",
                            "Replace a file that is there; it is kept as NAME.backup.xlsx."),
                    Options.TRACE),
            List.of(
                    "compare mine.xlsx friend.xlsx --out both.xlsx",
                    "compare mine.xlsx yours.xlsx theirs.xlsx --unit mm --out all.xlsx --force")),
    RENEW(
            "renew",
            "Makes a current workbook of one that an earlier version made, or that lost charts or"
                    + " drop-down lists in some program. All that is typed comes along, as it is"
                    + " typed, with your formulas in typed cells, your notes, cells and sheets, and"
                    + " the names and order of all sheets. What can't come along is named; the"
                    + " previous file is kept as NAME.backup.xlsx.",
            List.of(Parameter.one("FILE", "the workbook")),
            List.of(
                    Option.value(
                            "--out", "FILE", "Write to this file and leave the workbook alone."),
                    Option.flag(
                            "--force",
                            "Replace another file that is there; it is kept as NAME.backup.xlsx."),
                    Options.TRACE),
            List.of("renew shafts.xlsx", "renew --out current.xlsx shafts.xlsx")),
    CLEAR_AUTHORS(
            "clear-authors",
            "Takes the names of authors out of a workbook before you hand it on: of the document's"
                    + " properties, of notes and of comments, and the folder it was saved in. The words"
                    + " of notes and all else stay; the previous file is kept as NAME.backup.xlsx.",
            List.of(Parameter.one("FILE", "any .xlsx workbook")),
            List.of(
                    Option.value(
                            "--out", "FILE", "Write to this file and leave the workbook alone."),
                    Options.TRACE),
            List.of("clear-authors shafts.xlsx", "clear-authors --out to-send.xlsx shafts.xlsx")),
    FUNCTIONS(
            "functions",
            "Lists the cell functions of the pack, or tells all about one.",
            List.of(Parameter.optional("NAME", "a function, such as REACH")),
            List.of(Options.TRACE),
            List.of("functions", "functions reach")),
    PACK(
            "pack",
            "Puts the pack's functions that have a closed form into a workbook, as named formulas"
                    + " for Excel 365 and programs like it. Nothing else in the workbook changes;"
                    + " the previous file is kept as NAME.backup.xlsx.",
            List.of(Parameter.one("FILE", "any .xlsx workbook")),
            List.of(
                    Option.flag("--remove", "Take them out again."),
                    Option.value(
                            "--out", "FILE", "Write to this file and leave the workbook alone."),
                    Options.TRACE),
            List.of("pack shafts.xlsx", "pack --remove shafts.xlsx"));

    private final String word;
    private final String description;

    // All three come from List.of, which no checker can see.
    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Parameter> parameters;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<Option> options;

    @SuppressWarnings("ImmutableEnumChecker")
    private final List<String> examples;

    Command(
            String word,
            String description,
            List<Parameter> parameters,
            List<Option> options,
            List<String> examples) {
        this.word = word;
        this.description = description;
        this.parameters = parameters;
        this.options = options;
        this.examples = examples;
    }

    /** As it is typed. */
    String word() {
        return word;
    }

    String description() {
        return description;
    }

    /** What it takes beside options, in order. */
    List<Parameter> parameters() {
        return parameters;
    }

    List<Option> options() {
        return options;
    }

    /** Command lines without the program's name. */
    List<String> examples() {
        return examples;
    }

    /** The option of this name, null when there is none. */
    Option optionOrNull(String name) {
        for (Option option : options) {
            if (option.name().equals(name)) {
                return option;
            }
        }
        return null;
    }

    /** The command of this name, null when there is none. */
    static Command ofWordOrNull(String word) {
        for (Command command : values()) {
            if (command.word.equals(word)) {
                return command;
            }
        }
        return null;
    }

    /** Whether it works out a workbook, and so needs all live lines. */
    boolean computes() {
        return this != FUNCTIONS && this != PACK && this != CLEAR_AUTHORS;
    }

    /** Options that several commands share. */
    private static final class Options {
        static final Option SET =
                Option.repeated(
                        "--set",
                        "NAME=VALUE",
                        "Type a value into an input cell. NAME is the cell's defined name; NAME[3]"
                                + " is the third row of a table, NAME[B] scenario B. Nothing behind ="
                                + " empties the cell. May be given several times.");
        static final Option INPUTS =
                Option.value(
                        "--inputs",
                        "FILE",
                        "Type values from a JSON file: one object, name to text, number or list;"
                                + " a list is all that a table or scenario row has.");
        static final Option LENIENT =
                Option.flag(
                        Inputs.LENIENT,
                        "Leave out what --inputs has under names that no input has, such as those"
                                + " of a later version, and say so.");
        static final Option TRACE =
                Option.flag("--trace", "Show where in the program an unexpected fault arose.");

        private Options() {}
    }
}
