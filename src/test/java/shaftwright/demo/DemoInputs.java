package shaftwright.demo;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/** The demo inputs as the tests read them. */
public final class DemoInputs {
    private final Map<String, Object> values = values();

    /** A text, a number (Double) or a list of them by the input's name. */
    public static Map<String, Object> values() {
        Map<String, Object> values = new LinkedHashMap<>();
        try (InputStream in =
                        DemoInputs.class.getResourceAsStream(
                                "/shaftwright/demo/forest-special.json");
                JsonParser parser = new JsonFactory().createParser(in)) {
            parser.nextToken();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                if (values.put(name, value(parser, parser.nextToken())) != null) {
                    throw new IllegalStateException(name + " is given twice");
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return values;
    }

    private static Object value(JsonParser parser, JsonToken token) throws IOException {
        if (token == JsonToken.START_ARRAY) {
            List<Object> list = new ArrayList<>();
            for (JsonToken next = parser.nextToken();
                    next != JsonToken.END_ARRAY;
                    next = parser.nextToken()) {
                list.add(value(parser, next));
            }
            return list;
        }
        return token == JsonToken.VALUE_STRING ? parser.getText() : parser.getDoubleValue();
    }

    int size(String name) {
        return ((List<?>) values.get(name)).size();
    }

    String text(String name) {
        return (String) values.get(name);
    }

    String text(String name, int row) {
        return (String) entry(name, row);
    }

    double number(String name, int row) {
        return (Double) entry(name, row);
    }

    double length(String name) {
        return millimetres(text(name));
    }

    double length(String name, int row) {
        return millimetres(text(name, row));
    }

    OptionalDouble optionalLength(String name, int row) {
        return blank(name, row)
                ? OptionalDouble.empty()
                : OptionalDouble.of(millimetres(text(name, row)));
    }

    boolean blank(String name, int row) {
        return "".equals(entry(name, row));
    }

    private Object entry(String name, int row) {
        return ((List<?>) values.get(name)).get(row);
    }

    /** Inches and a fraction, or millimetres when it says so. */
    static double millimetres(String text) {
        if (text.endsWith(" mm")) {
            return Double.parseDouble(text.substring(0, text.length() - 3));
        }
        return text.startsWith("-")
                ? -ForestSpecialReadings.inches(text.substring(1))
                : ForestSpecialReadings.inches(text);
    }
}
