package shaftwright.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/** Texts as they turn up in cells for tyre sizes, good and bad, for every reader to agree on. */
public final class TyreTexts {
    public static final List<String> GOOD =
            List.of(
                    "235/75 R15",
                    "235/75R15",
                    "P235/75 R 15",
                    "p235/75r15",
                    "LT235/75R15",
                    "LT 235/75 R15",
                    "235/75ZR15",
                    "235/75-15",
                    "235/75 D15",
                    "235 / 75 R 15",
                    " 235/75 R15 ",
                    "205/55 R16.5",
                    "205/55 R 16,5",
                    "225/45\u201317",
                    "235/75R15.50",
                    "30x9.50-15",
                    "30x9.50R15",
                    "30X9.5 R15 LT",
                    "30 x 9.50 - 15",
                    "30\u00d79.50-15",
                    "30x9,50-15",
                    "31x10.50R15LT",
                    "LT31x10.50R15",
                    "31.5x10-15",
                    "31.50x10.5-15",
                    "25x8-12",
                    "22x11-8",
                    "22x11.00-8",
                    "33x12.5 R 16.5",
                    "10x4.10-4",
                    "29x9\u221214",
                    "30x9.50 zr15",
                    "30x9.50D15",
                    "15x6.00-6.5",
                    "99x99-99",
                    "999/99R99",
                    "7.50-16",
                    "6.00-16",
                    "195R14C",
                    "7.50-29.5",
                    "165R13",
                    "145SR12",
                    "235/75R15C",
                    "235/75R15 LT",
                    "235/75 R15 105S",
                    "ST205/75D15",
                    "T125/70D15",
                    "235/75R15 104S",
                    "235/75R15 104/101S",
                    "195 R 14 C 106/104R",
                    "235/75R15 XL",
                    "235/75HR15",
                    "155R13",
                    "7,50-16",
                    "10.00R20",
                    "6.5-13",
                    "185 SR 14.5",
                    "T235/75R15");

    public static final List<String> BAD =
            List.of(
                    " ",
                    "x",
                    "/",
                    "r",
                    "235",
                    "235/75",
                    "235/75R",
                    "75/235R15",
                    "235/75 15",
                    "23575R15",
                    "235/75R1",
                    "235/75R150",
                    "235/7R15",
                    "235/750R15",
                    "35/75R15",
                    "1235/75R15",
                    "035/75R15",
                    "235/05R15",
                    "235/75R05",
                    "000/00R00",
                    "2 35/75R15",
                    "235/7 5R15",
                    "235/75R1 5",
                    "235/75.5R15",
                    "23.5/75R15",
                    "235.0/75R15",
                    "235/75RR15",
                    "235/75R-15",
                    "235/75--15",
                    "PP235/75R15",
                    "LP235/75R15",
                    "PLT235/75R15",
                    "LTP235/75R15",
                    "235x75R15",
                    "9.5/75R15",
                    "30x9.50",
                    "30-9.50-15",
                    "30/9.50R15",
                    "30x9.50x15",
                    "P30x9.50R15",
                    "LT30x9.50R15LT",
                    "30x9.50R15LTLT",
                    "30x9.50R15P",
                    "30x9.500-15",
                    "30.125x9.50-15",
                    "30x9.50-8.000",
                    "30x9.50-15.500",
                    "30x0.5-15",
                    "30x09.5-15",
                    "03x9.5-15",
                    "0x0-0",
                    "3x9.50-15",
                    "300x9.50-15",
                    "30x950-15",
                    "30x9.-15",
                    "30x.5-15",
                    "30.x9-15",
                    "30x9-15.",
                    "30x9-.5",
                    "30x9 1/2-15",
                    "30\"x9.50-15",
                    "30x9.50-15in",
                    "30x9..5-15",
                    "30x9.5.0-15",
                    "30 x 9 50-15",
                    "3 0x9.50-15",
                    "30x9.50-1 5",
                    "30x9.50+15",
                    "30x-9.50-15",
                    "-30x9.50-15",
                    "30x9.50-150",
                    "30x9.50-0",
                    "30x9.50-08",
                    "X0X",
                    "00x0r00",
                    "000/00r00",
                    "p000/00r00",
                    "1e2/75R15",
                    "235/75R1e1",
                    "235\\75R15",
                    "235/75R15\n",
                    "235\t/75R15",
                    "235/75\u00a0R15",
                    "\u00a0235/75R15",
                    "235/75R15\u3000",
                    "235/75 R15?",
                    "???/??r??",
                    "?",
                    "*",
                    "TRUE",
                    "tyre",
                    "30 in",
                    "762 mm",
                    "1/2/2020",
                    "30x9.50r15 l",
                    "30x9.50-15 t",
                    "\uff12\uff13\uff15/75R15",
                    "235/75R15 235/75R15",
                    "7-16",
                    "235-75",
                    "235-75 104S",
                    "7.50-30",
                    "235/75Q15",
                    "235/75q45",
                    "7.500-16",
                    "195R9",
                    "195-",
                    "1950R14",
                    "0.50-16",
                    "105S",
                    "195R14 105",
                    "235/75R15C C",
                    "X195R14",
                    "195x14",
                    "7.50x16",
                    "235/75R15 1045S",
                    "235/75R15 4S",
                    "235/75R15 104/S",
                    "LT235/75R15LT",
                    "195.5R14",
                    "STP205/75R15",
                    "P 7.50");

    private static final String[] PIECES = {
        "235",
        "75",
        "15",
        "30",
        "9.50",
        "9.5",
        "10",
        "0",
        "8",
        "16.5",
        "/",
        "x",
        "X",
        "\u00d7",
        "R",
        "r",
        "ZR",
        "z",
        "D",
        "-",
        "\u2013",
        " ",
        " ",
        "P",
        "LT",
        "l",
        "t",
        ".",
        ",",
        "00",
        "000",
        "?",
        "9,50",
        "31.5",
        "C",
        "104S",
        "1",
        "SR",
        "ST",
        "T",
        "XL",
        "7.50",
        " 106/104R"
    };

    private static final String[][] METRIC = {
        {"", "", "", "P", "LT", " ", "0", "T"},
        {"", "", " "},
        {"235", "195", "205", "315", "35", "1235", "023", "9.5"},
        {"/", "/", "/", " / ", "x", ""},
        {"75", "65", "55", "5", "05", "100", "75.5", "7 5"},
        {"R", " R", "R ", " ZR", "-", "D", "", " r "},
        {"15", "16", "16.5", "16,5", "8", "17.25", "16.500", "015"},
        {"", "", "", " ", "LT", "C", " 104S", " 104/101S", " XL", " 4S"}
    };

    private static final String[][] FLOTATION = {
        {"", "", "", "LT", "LT ", "P", " "},
        {"30", "31", "33", "31.5", "31.50", "31.500", "9", "130", "05"},
        {"x", "x", "X", " x ", "\u00d7", "/", ""},
        {"9.50", "9.5", "10.50", "12,5", "10", "8", "0.5", "9.500", "100", "9."},
        {"R", "-", " - ", " R ", "ZR", "D", "\u2013", "", "x"},
        {"15", "15", "8", "16.5", "16,50", "8.5", "8.000", "015", "150"},
        {"", "", "", "LT", " LT", " ", "C"}
    };

    private static final String[][] WITHOUT_ASPECT = {
        {"", "", "", "P", "LT", "ST", "T", "0"},
        {"195", "165", "7.50", "6.00", "7,5", "10.00", "7", "0.50", "7.500", "95", "1950"},
        {"R", "SR", "-", " R ", "D", "HR", "ZR", "", "x", "/"},
        {"14", "13", "16", "14.5", "9", "16.500", "016", "29", "30", "75"},
        {"", "", "C", "LT", "XL", " C", "CC"},
        {"", "", " 104S", " 106/104R", " 89/7T", "  82H ", " 104", "104S"}
    };

    private TyreTexts() {}

    /** Both lists and texts thrown together from the pieces of real ones, always the same. */
    public static List<String> all() {
        return Stream.of(GOOD, BAD, thrown(20_260_102, 800)).flatMap(List::stream).toList();
    }

    private static List<String> thrown(long seed, int count) {
        Random dice = new Random(seed);
        Set<String> texts = new LinkedHashSet<>();
        while (texts.size() < count) {
            StringBuilder text = new StringBuilder();
            int kind = dice.nextInt(6);
            if (kind == 0) {
                for (int i = 1 + dice.nextInt(8); i > 0; i--) {
                    text.append(PIECES[dice.nextInt(PIECES.length)]);
                }
            } else {
                for (String[] choice : kind < 3 ? METRIC : kind < 5 ? FLOTATION : WITHOUT_ASPECT) {
                    // Half of the pieces are the plain first one, so that many texts are good.
                    text.append(choice[dice.nextBoolean() ? 0 : dice.nextInt(choice.length)]);
                }
            }
            texts.add(text.toString());
        }
        texts.remove("");
        return new ArrayList<>(texts);
    }
}
