package shaftwright.template;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import shaftwright.build.Side;

/** Sheets that not every builder needs: hidden at first, and listed on the first sheet. */
enum OptionalSheet {
    LINKAGE(
            "pick-up points, where the hub's path comes from a linkage and not from the tape",
            LinkageSheet.NAME),
    DAMPERS(
            "dampers, limit straps and tubes near the boots, which may end the travel",
            DampersSheet.NAME),
    MATING("splines beyond their count, flanges, and what boots go through", MatingSheet.NAME),
    LEVERS("what would give a scenario more room, and what beats what", VariantsSheet.NAME),
    DRAWINGS(
            "the card's scenario from behind and from above, through its travel",
            DrawingSheet.name(Side.LEFT),
            DrawingSheet.name(Side.RIGHT)),
    DERIVATION(
            "the way from the tape to the card's length, to be checked with a pocket calculator",
            DerivationSheet.name(Side.LEFT),
            DerivationSheet.name(Side.RIGHT)),
    BLANKS("why each of your blanks can be used or not", BlanksSheet.NAME),
    STRENGTH("your loads against bar, splines and bolts", StrengthSheet.NAME),
    DOUBT("how far the lengths may be off, and chances of bottoming", DoubtSheet.NAME),
    MOCK_UP("a stick in the shaft's place, read before steel is cut", MockUpSheet.NAME),
    BUILT("finished shafts measured again, and a log of service", BuiltSheet.NAME),
    WORKING(
            "figures behind the rest, in mm and rad; leave them as they are",
            WorkingSheets.NAME,
            WorkingSheets.name(Side.LEFT),
            WorkingSheets.name(Side.RIGHT));

    /** How to see one, in the words of spreadsheet programs. */
    static final String HOW =
            "Hidden until you want them. Right-click any sheet's tab and choose Show Sheet (Unhide in"
                    + " some programs), or run: shaftwright sheets FILE --show NAME";

    private final String purpose;

    private final List<String> names;

    OptionalSheet(String purpose, String... names) {
        this.purpose = purpose;
        this.names = List.of(names);
    }

    /** Of one kind, in the order in which they stand. */
    List<String> names() {
        return names;
    }

    /** What they are called in a list: one, one a side, or some more. */
    String title() {
        return switch (names.size()) {
            case 1 -> names.get(0);
            case 2 -> names.get(0) + ", " + Side.RIGHT.word();
            default -> names.get(0) + " (" + names.size() + " sheets)";
        };
    }

    /** What it is for, as the end of a sentence. */
    String purpose() {
        return purpose;
    }

    /** Live line that says whether a verdict rests on it, if there is one. */
    String pointer() {
        return "on_" + name().toLowerCase(Locale.ROOT);
    }

    /** All of them. */
    static Stream<String> all() {
        return Arrays.stream(values()).flatMap(sheet -> sheet.names.stream());
    }
}
