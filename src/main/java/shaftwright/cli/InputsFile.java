package shaftwright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.io.JsonEOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Inputs as JSON: an object whose keys are defined names and whose values are a text, a number or a
 * list of those, one a table row or scenario. The report of {@code show --json} may be given as a
 * whole: its {@code inputs} are taken.
 */
final class InputsFile {
    private static final String NAMES_AND_VALUES =
            "an object of names and values: {\"name\": value, \"name\": [value, value]}";

    /** All inputs of a workbook are below one; reports of 24 scenarios are below four. */
    private static final int LARGEST_MB = 16;

    /** How much is quoted around a place that can't be read. */
    private static final int BEFORE = 20;

    private static final int BEHIND = 8;

    private final String title;
    private String text = "";

    private InputsFile(String title) {
        this.title = title;
    }

    /**
     * Reads a file.
     *
     * @throws UnreadableInputException if it is missing or no such JSON
     */
    static Map<String, GivenInput> read(Path file) {
        InputsFile inputs = new InputsFile(file.getFileName().toString());
        if (Files.isDirectory(file)) {
            throw new UnreadableInputException(
                    inputs.title + ": found a folder; expected a JSON file.", null);
        }
        try (InputStream in = Files.newInputStream(file)) {
            return inputs.read(in);
        } catch (NoSuchFileException e) {
            throw new UnreadableInputException(inputs.title + ": file not found.", e);
        } catch (IOException e) {
            throw new UnreadableInputException(
                    inputs.title + ": can't be read (" + e.getMessage() + ").", e);
        }
    }

    /** Reads the packaged resource of this name. */
    static Map<String, GivenInput> resource(String name) {
        try (InputStream in = InputsFile.class.getResourceAsStream(name)) {
            return new InputsFile(name).read(in);
        } catch (IOException e) {
            throw new UnreadableInputException(name + ": " + e.getMessage(), e);
        }
    }

    private Map<String, GivenInput> read(InputStream in) throws IOException {
        byte[] bytes = in.readNBytes((LARGEST_MB << 20) + 1);
        if (bytes.length > LARGEST_MB << 20) {
            throw refused("", "more than " + LARGEST_MB + " MB", NAMES_AND_VALUES, null);
        }
        text = decoded(bytes);
        try (JsonParser parser = new JsonFactory().createParser(text)) {
            try {
                return object(parser);
            } catch (JsonProcessingException e) {
                throw unreadable(parser, e);
            }
        }
    }

    /** UTF-8, or UTF-16 where the first bytes tell it. */
    private String decoded(byte[] bytes) {
        boolean little = (bytes.length > 1 && bytes[1] == 0) || starts(bytes, 0xFF, 0xFE);
        boolean big = (bytes.length > 1 && bytes[0] == 0) || starts(bytes, 0xFE, 0xFF);
        Charset wide = little ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE;
        Charset charset = little || big ? wide : StandardCharsets.UTF_8;
        try {
            String decoded = charset.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            return decoded.startsWith("\uFEFF") ? decoded.substring(1) : decoded;
        } catch (CharacterCodingException e) {
            throw refused("", "text that is not " + charset, "JSON saved in UTF-8", e);
        }
    }

    private static boolean starts(byte[] bytes, int first, int second) {
        return bytes.length > 1 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
    }

    private Map<String, GivenInput> object(JsonParser parser) throws IOException {
        if (parser.nextToken() != JsonToken.START_OBJECT) {
            throw refused(parser, parser.currentToken() == null ? "nothing" : "something else");
        }
        Map<String, GivenInput> inputs = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            if (parser.nextToken() == JsonToken.START_OBJECT && name.equals("inputs")) {
                return members(parser);
            }
            if (inputs.isEmpty() && isReportKey(name)) {
                parser.skipChildren();
            } else {
                put(parser, inputs, name);
            }
        }
        if (parser.nextToken() != null) {
            throw refused(parser, "something after the object");
        }
        return inputs;
    }

    /** What stands before the inputs of a report; none of these is an input's name alone. */
    private static boolean isReportKey(String name) {
        return name.equals(JsonReport.CONTRACT) || name.equals(JsonReport.FILE);
    }

    private Map<String, GivenInput> members(JsonParser parser) throws IOException {
        Map<String, GivenInput> inputs = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            put(parser, inputs, name);
        }
        return inputs;
    }

    private void put(JsonParser parser, Map<String, GivenInput> inputs, String name)
            throws IOException {
        GivenInput given;
        if (parser.currentToken() == JsonToken.START_ARRAY) {
            List<String> values = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                values.add(value(parser, name));
            }
            given = GivenInput.list(values);
        } else {
            given = GivenInput.one(value(parser, name));
        }
        if (inputs.put(name, given) != null) {
            throw refused(place(parser), "\"" + name + "\" twice", "each name once", null);
        }
    }

    private String value(JsonParser parser, String name) throws IOException {
        return switch (parser.currentToken()) {
            case VALUE_STRING, VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getText();
            case VALUE_NULL -> "";
            default ->
                    throw refused(
                            place(parser),
                            switch (parser.currentToken()) {
                                case VALUE_TRUE, VALUE_FALSE -> parser.getText();
                                case START_ARRAY -> "a list in a list";
                                default -> "an object";
                            },
                            "a text, a number or a list of them for " + name,
                            null);
        };
    }

    /** What the parser stumbled over, in other words than a programmer's. */
    private UnreadableInputException unreadable(JsonParser parser, JsonProcessingException e) {
        if (e instanceof JsonEOFException) {
            return refused(
                    place(parser),
                    "the end of the file",
                    "a closing bracket or quotation mark before it",
                    e);
        }
        if (e instanceof StreamConstraintsException) {
            return refused(
                    place(parser),
                    "a name, a number or a nesting of brackets that is too long",
                    NAMES_AND_VALUES,
                    e);
        }
        JsonLocation stop = e.getLocation() == null ? parser.currentLocation() : e.getLocation();
        return refused(place(stop), "no valid JSON " + near(stop), NAMES_AND_VALUES, e);
    }

    /** The characters around a place, of its line only. */
    private String near(JsonLocation stop) {
        int at = (int) Math.max(0, Math.min(stop.getCharOffset(), text.length()));
        int from = Math.max(text.lastIndexOf('\n', at - 1) + 1, at - BEFORE);
        int lineEnd = text.indexOf('\n', at);
        int to = Math.min(lineEnd < 0 ? text.length() : lineEnd, at + BEHIND);
        return "near " + text.substring(from, Math.max(from, to)).strip();
    }

    private static String place(JsonParser parser) {
        return place(parser.currentLocation());
    }

    private static String place(JsonLocation location) {
        return ", line " + location.getLineNr();
    }

    private UnreadableInputException refused(JsonParser parser, String found) {
        return refused(place(parser), found, NAMES_AND_VALUES, null);
    }

    private UnreadableInputException refused(
            String place, String found, String expected, Exception causeOrNull) {
        return new UnreadableInputException(
                title + place + ": found " + found + "; expected " + expected + ".", causeOrNull);
    }
}
