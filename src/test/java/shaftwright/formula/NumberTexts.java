package shaftwright.formula;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;

/** Texts as they turn up in cells for plain numbers, good and bad, for every reader to agree on. */
public final class NumberTexts {
    /** Readable as numbers. */
    public static final List<String> GOOD =
            List.of(
                    "0",
                    "7",
                    "12",
                    "012",
                    "12.5",
                    "12,5",
                    "12.50",
                    "12,50",
                    "12.500",
                    "12.5000",
                    "12,5000",
                    "0.25",
                    "0,25",
                    ".5",
                    ",5",
                    ".500",
                    "1234.5",
                    "1234,5",
                    "-3",
                    "-3,5",
                    "+3",
                    "+3.5",
                    "\u22123,5",
                    "\u20133",
                    "-.5",
                    "-,5",
                    "-0",
                    " 12",
                    "12 ",
                    "  12,5   ",
                    "1234567890123456",
                    "0.1234567890123456",
                    "0,1234567890123456",
                    "-1234567890123456,1234567890123456",
                    "0000000000000001");

    /** No numbers, or numbers that could mean two things. */
    public static final List<String> BAD =
            List.of(
                    " ",
                    "   ",
                    "12,500",
                    "0,500",
                    ",500",
                    "-1,234",
                    "1,234.5",
                    "1.234,5",
                    "1,234,567",
                    "1.234.567",
                    "1,2,3",
                    "1.2.3",
                    "1.5,000",
                    "1,5.000",
                    "1,000,0",
                    "1 234",
                    "1 234,5",
                    "1'234",
                    "1\u00a0234",
                    "1\u202f234",
                    "\u00a012",
                    "12\u00a0",
                    "12\u2009",
                    "\u202f12",
                    "\u00a0",
                    "12.",
                    "12,",
                    ".",
                    ",",
                    "-",
                    "+",
                    "-.",
                    "- 3",
                    "+ 3",
                    "--3",
                    "+-3",
                    "-+3",
                    "3-",
                    "(3)",
                    "1e3",
                    "1E3",
                    "1e0",
                    "1.5e-3",
                    "1d",
                    "1f",
                    "0x10",
                    "0x0",
                    "0X0",
                    "X",
                    "X0",
                    "0X0.0",
                    "&H10",
                    "5%",
                    "5 %",
                    "1:30",
                    "1/2",
                    "\u00bd",
                    "12 1/2",
                    "3 May",
                    "12-Jan",
                    "1/2/2020",
                    "2020-01-02",
                    "1.2.2020",
                    "12:00",
                    "12 mm",
                    "12mm",
                    "12\u00b0",
                    "12 Nm",
                    "\u20ac12",
                    "$12",
                    "12 \u20ac",
                    "=12",
                    "12+1",
                    "2^3",
                    "12;5",
                    "12_5",
                    "12\u066b5",
                    "\uff11\uff12",
                    "\uff0d3",
                    "12\uff0e5",
                    "12\uff0c5",
                    "\u0661\u0662",
                    "\u3000",
                    "12\u3000",
                    "12\n",
                    "\n12",
                    "12\t",
                    "1\n2",
                    "\t",
                    "12345678901234567",
                    "0.12345678901234567",
                    "0,12345678901234567",
                    "0,1234567890123456789",
                    "00000000000000000001",
                    "0".repeat(40),
                    "12" + " ".repeat(100) + "3",
                    "12" + "x".repeat(90),
                    "?",
                    "*",
                    "~",
                    "12*",
                    "1?",
                    "n/a",
                    "#N/A",
                    "TRUE",
                    "FALSE",
                    "true",
                    "nan",
                    "inf",
                    "infinity",
                    "twelve",
                    "\ud83d\udd27");

    private static final String[][] LIKELY = {
        {"", "", "", " ", "  ", "\u00a0"},
        {"", "", "-", "+", "\u2212", "\u2013", "- "},
        {"12", "", "0", "7", "1234567890123456", "00000000", "1 234", "1,234"},
        {".", ",", "", ".", ",", ",,", ";"},
        {"5", "", "50", "500", "5000", "12345678", "12345678901234567", "0"},
        {"", "", "", "", " ", "e0", "e3", "%", "mm", "\u2009", ".", "-"}
    };

    private static final int THROWN = 400;

    private NumberTexts() {}

    /** Both lists and texts thrown together from the pieces of real ones, always the same. */
    public static List<String> all() {
        return Stream.of(GOOD, BAD, thrown()).flatMap(List::stream).toList();
    }

    private static List<String> thrown() {
        Random dice = new Random(20_260_102);
        Set<String> texts = new LinkedHashSet<>();
        while (texts.size() < THROWN) {
            StringBuilder text = new StringBuilder();
            for (String[] choice : LIKELY) {
                // Half of the pieces are the plain first one, so that many texts are good.
                text.append(choice[dice.nextBoolean() ? 0 : dice.nextInt(choice.length)]);
            }
            if (!text.isEmpty()) {
                texts.add(text.toString());
            }
        }
        return new ArrayList<>(texts);
    }
}
