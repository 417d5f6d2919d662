package shaftwright.validity;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;

/** Functions that Excel knows, by how files store them; the source stands in the table. */
final class ExcelFunctions {
    private static final Map<String, Integer> SINCE = new HashMap<>();
    private static final Map<String, String> STORED = new HashMap<>();

    static {
        try (BufferedReader in =
                new BufferedReader(
                        new InputStreamReader(
                                ExcelFunctions.class.getResourceAsStream("excel-functions.csv"),
                                StandardCharsets.UTF_8))) {
            for (String line : in.lines().filter(each -> !each.startsWith("#")).skip(1).toList()) {
                String[] fields = line.split(",");
                STORED.put(fields[0], fields[1]);
                SINCE.put(fields[1], Integer.valueOf(fields[2]));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private ExcelFunctions() {}

    /** What is wrong with a function's name as a file stores it; "" when nothing is. */
    static String wrong(String stored, int newest) {
        Integer since = SINCE.get(stored);
        if (since == null) {
            return STORED.containsKey(stored)
                    ? "function " + stored + " is stored as " + STORED.get(stored)
                    : "Excel has no function " + stored;
        }
        return since <= newest ? "" : "function " + stored + " came after Excel " + newest;
    }
}
