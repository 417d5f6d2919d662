package shaftwright.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;
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
    private final String title;

    private InputsFile(String title) {
        this.title = title;
    }

    /**
     * Reads a file.
     *
     * @throws UnreadableInputException if it is missing or no such JSON
     */
    static Map<String, List<String>> read(Path file) {
        InputsFile inputs = new InputsFile(file.getFileName().toString());
        if (Files.isDirectory(file)) {
            throw new UnreadableInputException(
                    inputs.title + ": found a folder; expected a JSON file.", null);
        }
        try (InputStream in = Files.newInputStream(file)) {
            return inputs.read(in);
        } catch (NoSuchFileException e) {
            throw new UnreadableInputException(inputs.title + ": no such file.", e);
        } catch (JsonProcessingException e) {
            throw new UnreadableInputException(
                    inputs.title
                            + ", line "
                            + e.getLocation().getLineNr()
                            + ": no valid JSON: "
                            + e.getOriginalMessage(),
                    e);
        } catch (IOException e) {
            throw new UnreadableInputException(
                    inputs.title + ": can't be read (" + e.getMessage() + ").", e);
        }
    }

    /** Reads the packaged resource of this name. */
    static Map<String, List<String>> resource(String name) {
        try (InputStream in = InputsFile.class.getResourceAsStream(name)) {
            return new InputsFile(name).read(in);
        } catch (IOException e) {
            throw new UnreadableInputException(name + ": " + e.getMessage(), e);
        }
    }

    private Map<String, List<String>> read(InputStream in) throws IOException {
        try (JsonParser parser =
                new JsonFactory()
                        .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
                        .createParser(in)) {
            if (parser.nextToken() != JsonToken.START_OBJECT) {
                throw refused(parser, "expected an object of names and values");
            }
            Map<String, List<String>> inputs = new LinkedHashMap<>();
            while (parser.nextToken() == JsonToken.FIELD_NAME) {
                String name = parser.currentName();
                if (parser.nextToken() == JsonToken.START_OBJECT && name.equals("inputs")) {
                    return members(parser);
                }
                if (inputs.isEmpty() && isReportKey(name)) {
                    parser.skipChildren();
                } else {
                    inputs.put(name, values(parser, name));
                }
            }
            if (parser.nextToken() != null) {
                throw refused(parser, "expected nothing behind the object");
            }
            return inputs;
        }
    }

    /** What stands before the inputs of a report; none of these is an input's name alone. */
    private static boolean isReportKey(String name) {
        return name.equals(JsonReport.CONTRACT) || name.equals(JsonReport.FILE);
    }

    private Map<String, List<String>> members(JsonParser parser) throws IOException {
        Map<String, List<String>> inputs = new LinkedHashMap<>();
        while (parser.nextToken() == JsonToken.FIELD_NAME) {
            String name = parser.currentName();
            parser.nextToken();
            inputs.put(name, values(parser, name));
        }
        return inputs;
    }

    private List<String> values(JsonParser parser, String name) throws IOException {
        List<String> values = new ArrayList<>();
        if (parser.currentToken() != JsonToken.START_ARRAY) {
            values.add(value(parser, name));
            return values;
        }
        while (parser.nextToken() != JsonToken.END_ARRAY) {
            values.add(value(parser, name));
        }
        return values;
    }

    private String value(JsonParser parser, String name) throws IOException {
        return switch (parser.currentToken()) {
            case VALUE_STRING, VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> parser.getText();
            case VALUE_NULL -> "";
            default ->
                    throw refused(
                            parser, "expected a text, a number or a list of them for " + name);
        };
    }

    private UnreadableInputException refused(JsonParser parser, String reason) {
        return new UnreadableInputException(
                title + ", line " + parser.currentLocation().getLineNr() + ": " + reason + ".",
                null);
    }
}
