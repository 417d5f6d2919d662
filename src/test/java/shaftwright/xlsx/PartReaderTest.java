package shaftwright.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.ctc.wstx.stax.WstxInputFactory;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.codehaus.stax2.XMLStreamReader2;

/** Held against Woodstox 7.1, which was found exact on offsets: names, values, texts, places. */
class PartReaderTest {
    private static PartText part(String xml) {
        return PartText.of("book.xlsx", "part.xml", xml.getBytes(StandardCharsets.UTF_8));
    }

    /** What this project's reader sees: one line per tag. */
    private static String seen(String xml) {
        StringBuilder out = new StringBuilder();
        PartReader.walk(part(xml), reader -> see(reader, out));
        return out.toString();
    }

    private static void see(PartReader reader, StringBuilder out) {
        out.append(reader.start()).append(" {").append(reader.namespace()).append('}');
        out.append(reader.name());
        for (String name : new String[] {"r", "t", "ab"}) {
            out.append('|').append(reader.attribute(name));
            out.append('|').append(reader.prefixedAttribute(name));
        }
        out.append('|').append(reader.isEmpty()).append('|').append(reader.end()).append('\n');
        if (reader.is("t", "urn:main")) {
            out.append(reader.text()).append('\n');
        } else {
            while (reader.nextChild()) {
                see(reader, out);
            }
        }
        out.append("end ").append(reader.end()).append('\n');
    }

    private static String seenByWoodstox(String xml) throws XMLStreamException {
        XMLStreamReader2 in =
                (XMLStreamReader2)
                        new WstxInputFactory().createXMLStreamReader(new StringReader(xml));
        StringBuilder out = new StringBuilder();
        int event = in.next();
        while (event != XMLStreamConstants.START_ELEMENT) {
            event = in.next();
        }
        seeWoodstox(in, xml, out);
        return out.toString();
    }

    private static void seeWoodstox(XMLStreamReader2 in, String xml, StringBuilder out)
            throws XMLStreamException {
        out.append(bytes(xml, in.getLocationInfo().getStartingCharOffset()));
        String namespace = in.getNamespaceURI();
        out.append(" {").append(namespace == null ? "" : namespace).append('}');
        out.append(in.getLocalName());
        for (String name : new String[] {"r", "t", "ab"}) {
            out.append('|').append(attribute(in, name, false));
            out.append('|').append(attribute(in, name, true));
        }
        out.append('|').append(in.isEmptyElement());
        out.append('|').append(bytes(xml, in.getLocationInfo().getEndingCharOffset())).append('\n');
        if (in.getLocalName().equals("t") && "urn:main".equals(in.getNamespaceURI())) {
            out.append(in.getElementText()).append('\n');
        } else {
            int event = in.next();
            while (event != XMLStreamConstants.END_ELEMENT) {
                if (event == XMLStreamConstants.START_ELEMENT) {
                    seeWoodstox(in, xml, out);
                }
                event = in.next();
            }
        }
        out.append("end ")
                .append(bytes(xml, in.getLocationInfo().getEndingCharOffset()))
                .append('\n');
    }

    private static int bytes(String xml, long characters) {
        return xml.substring(0, (int) characters).getBytes(StandardCharsets.UTF_8).length;
    }

    private static String attribute(XMLStreamReader2 in, String name, boolean prefixed) {
        for (int i = 0; i < in.getAttributeCount(); i++) {
            if (in.getAttributeLocalName(i).equals(name)
                    && in.getAttributePrefix(i).isEmpty() != prefixed) {
                return in.getAttributeValue(i);
            }
        }
        return null;
    }

    @Provide
    Arbitrary<String> documents() {
        Arbitrary<String> texts =
                Arbitraries.of(
                        "",
                        " ",
                        "x",
                        "3/8\"",
                        "a\r\nb\rc\n",
                        "&amp;&lt;&gt;&quot;&apos;",
                        "&#65;&#x1F600;",
                        "ø Ω 😀",
                        "<!-- <c> -- -->".replace("-- -->", "-->"),
                        "<![CDATA[<v>&amp;]]\r\n]]>",
                        "<?pi <v> ?>",
                        "] ",
                        ">");
        Arbitrary<String> values =
                Arbitraries.of("", "A1", "a>b", "&quot;&#10;", "x\ty\nz", "'", "ø", "  ");
        Arbitrary<String> attributes =
                Combinators.combine(Arbitraries.of("r", "t", "p:ab", "q:r", "other"), values)
                        .as((name, value) -> " " + name + " =\n\"" + value + "\"");
        Arbitrary<String> leaf =
                Combinators.combine(Arbitraries.of("t", "p:t", "q:t"), texts.list().ofMaxSize(3))
                        .as(
                                (name, inside) ->
                                        "<"
                                                + name
                                                + ">"
                                                + String.join("", inside)
                                                + "</"
                                                + name
                                                + " >");
        return Arbitraries.recursive(
                        () -> leaf,
                        inner ->
                                Combinators.combine(
                                                Arbitraries.of("c", "p:c", "q:row", "is"),
                                                attributes.optional(),
                                                Arbitraries.of(
                                                        "",
                                                        " xmlns=\"urn:other\"",
                                                        " xmlns:q='urn:main'"),
                                                inner.list().ofMaxSize(3),
                                                texts)
                                        .as(PartReaderTest::element),
                        3)
                .map(
                        body ->
                                "<?xml version=\"1.0\"?>\n<!-- head --><p:root xmlns:p=\"urn:main\" xmlns='urn:main' xmlns:q=\"urn:q\">"
                                        + body
                                        + "</p:root>");
    }

    private static String element(
            String name,
            java.util.Optional<String> attribute,
            String declaration,
            java.util.List<String> children,
            String text) {
        String start = "<" + name + attribute.orElse("") + declaration;
        return children.isEmpty() && text.isEmpty()
                ? start + " />"
                : start + ">" + text + String.join(text, children) + "</" + name + ">";
    }

    @Property
    void readsAsWoodstoxDoes(@ForAll("documents") String xml) throws XMLStreamException {
        assertThat(seen(xml)).isEqualTo(seenByWoodstox(xml));
    }

    /** A document with one character gone either reads as Woodstox reads it, or is refused. */
    @Property
    void damagedDocumentNeverEscapesOtherwise(@ForAll("documents") String xml, @ForAll int where) {
        int at = Math.floorMod(where, xml.length());
        int length = Character.charCount(xml.codePointAt(at));
        boolean half = Character.isLowSurrogate(xml.charAt(at));
        String damaged = half ? xml : xml.substring(0, at) + xml.substring(at + length);
        String ours;
        try {
            ours = seen(damaged);
        } catch (UnreadableBookException e) {
            assertThat(e.file()).isEqualTo("book.xlsx");
            return;
        }
        String theirs;
        try {
            theirs = seenByWoodstox(damaged);
        } catch (XMLStreamException e) {
            // Stricter in what packages never hold: double attributes, "--" in comments.
            return;
        }
        assertThat(ours).isEqualTo(theirs);
    }

    @Example
    void unbalancedTagsAreRefused() {
        String[] broken = {
            "<a><b></a></b>",
            "<a",
            "<a b>",
            "<a b='1>",
            "<a>",
            "<a></b>",
            "<a><!-- </a>",
            "",
            "x",
            "<p:a/>",
            "<a><t xmlns='urn:main'>&x;</t></a>",
            "<a><t xmlns='urn:main'>&#x110000;</t></a>"
        };
        for (String xml : broken) {
            assertThatThrownBy(() -> seen(xml))
                    .as(xml)
                    .isInstanceOf(UnreadableBookException.class)
                    .hasMessageContaining("part.xml");
        }
    }
}
