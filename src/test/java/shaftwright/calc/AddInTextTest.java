package shaftwright.calc;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;

/** What Calc is told is what the catalogue declares. */
class AddInTextTest {
    private static final Path SOURCES = Path.of("src/generated/java/shaftwright/calc");

    /** When this fails, run {@code src/addin.sh}. */
    @Test
    void interfaceIsTheCatalogues() throws IOException {
        assertThat(words(Files.readString(SOURCES.resolve("XFunctions.java"))))
                .isEqualTo(words(AddInText.javaInterface()));
    }

    /** When this fails, run {@code src/addin.sh}. */
    @Test
    void componentIsTheCatalogues() throws IOException {
        assertThat(words(Files.readString(SOURCES.resolve("CellFunctions.java"))))
                .isEqualTo(words(AddInText.javaComponent()));
    }

    @Test
    void descriptionsAreWellFormedAndOneAFunction() throws Exception {
        byte[] text = AddInText.configuration().getBytes(StandardCharsets.UTF_8);
        var document =
                DocumentBuilderFactory.newInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(text));

        var properties = document.getElementsByTagName("prop");
        int names = 0;
        for (int i = 0; i < properties.getLength(); i++) {
            var property = (org.w3c.dom.Element) properties.item(i);
            names += property.getAttribute("oor:name").equals("CompatibilityName") ? 1 : 0;
        }
        assertThat(names).isEqualTo(Catalogue.all().size());
    }

    /** Calc calls every argument optional, and shows an error without a word. */
    @Test
    void descriptionSaysWhatIsNeededAndWhatErrorsMean() {
        CellFunction distance = Catalogue.find("DISTANCE").orElseThrow();

        assertThat(AddInText.description(distance))
                .contains(
                        " Needs all but foreaft, unit. #VALUE!: missing or wrong sort. #NUM!: out of"
                                + " range. #N/A: no answer. Example: ");
        assertThat(AddInText.asked(distance.parameters().get(0)))
                .isEqualTo(
                        "sideways distance; length, 0 or more; a number or a text such as 25 3/8;"
                                + " else #NUM!");
        assertThat(AddInText.configuration()).doesNotContain("must be given");
    }

    /** Layout is the formatter's business. */
    private static String words(String source) {
        return source.replaceAll("[\\s*/]+", "");
    }
}
