package shaftwright.workbook.xlsx;

import com.ctc.wstx.stax.WstxInputFactory;
import java.io.StringReader;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import org.codehaus.stax2.XMLStreamReader2;

/**
 * Walks the elements of one part, with exact character offsets into its text.
 *
 * <p>Uses Woodstox by name: the offsets of the JDK's own reader drift after its first buffer, and
 * looking a reader up as a service costs start-up time. A DOCTYPE is refused, so neither external
 * entities nor entity bombs can occur.
 */
final class PartReader {
    private static final WstxInputFactory FACTORY = factory();

    private final String title;
    private final PartText part;
    private final XMLStreamReader2 in;

    private PartReader(String title, PartText part) throws XMLStreamException {
        this.title = title;
        this.part = part;
        this.in = (XMLStreamReader2) FACTORY.createXMLStreamReader(new StringReader(part.text()));
    }

    private static WstxInputFactory factory() {
        WstxInputFactory factory = new WstxInputFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        return factory;
    }

    /** What is done with a part's elements, the reader standing on the root's start tag. */
    interface Walk<T> {
        T over(PartReader reader) throws XMLStreamException;
    }

    /**
     * Walks a part.
     *
     * @throws UnreadableBookException if it is no well-formed XML or has a DOCTYPE
     */
    static <T> T walk(String title, PartText part, Walk<T> walk) {
        try {
            PartReader reader = new PartReader(title, part);
            reader.toRoot();
            T result = walk.over(reader);
            reader.in.close();
            return result;
        } catch (XMLStreamException e) {
            throw new UnreadableBookException(
                    title,
                    "part " + part.part() + " damaged: " + e.getMessage(),
                    "well-formed XML",
                    e);
        }
    }

    private void toRoot() throws XMLStreamException {
        int event = in.next();
        while (event != XMLStreamConstants.START_ELEMENT) {
            if (event == XMLStreamConstants.DTD) {
                throw new UnreadableBookException(
                        title,
                        "a DOCTYPE in part " + part.part(),
                        "parts without one, as every spreadsheet program writes them");
            }
            event = in.next();
        }
    }

    /** Steps into or along: true on a child's start tag, false on the end tag of its parent. */
    boolean nextChild() throws XMLStreamException {
        int event = in.next();
        while (event != XMLStreamConstants.START_ELEMENT) {
            if (event == XMLStreamConstants.END_ELEMENT) {
                return false;
            }
            event = in.next();
        }
        return true;
    }

    /** Passes over the element whose start tag this stands on. */
    void skip() throws XMLStreamException {
        in.skipElement();
    }

    String name() {
        return in.getLocalName();
    }

    /** Whether the element has this local name and this namespace. */
    boolean is(String name, String namespace) {
        return in.getLocalName().equals(name) && namespace.equals(in.getNamespaceURI());
    }

    String namespace() {
        String uri = in.getNamespaceURI();
        return uri == null ? "" : uri;
    }

    /** An attribute without prefix, or null. */
    String attribute(String name) {
        for (int i = 0; i < in.getAttributeCount(); i++) {
            if (in.getAttributeLocalName(i).equals(name) && in.getAttributePrefix(i).isEmpty()) {
                return in.getAttributeValue(i);
            }
        }
        return null;
    }

    /** An attribute that has a prefix, such as {@code r:id}, or null. */
    String prefixedAttribute(String name) {
        for (int i = 0; i < in.getAttributeCount(); i++) {
            if (in.getAttributeLocalName(i).equals(name) && !in.getAttributePrefix(i).isEmpty()) {
                return in.getAttributeValue(i);
            }
        }
        return null;
    }

    /** The text inside this element; leaves the reader on its end tag. */
    String text() throws XMLStreamException {
        return in.getElementText();
    }

    /** Whether the start tag closes itself. */
    boolean isEmpty() throws XMLStreamException {
        return in.isEmptyElement();
    }

    /** Where the tag that this stands on starts. */
    int start() {
        return (int) in.getLocationInfo().getStartingCharOffset();
    }

    /** Where the tag that this stands on ends, its bracket included. */
    int end() throws XMLStreamException {
        return (int) in.getLocationInfo().getEndingCharOffset();
    }

    UnreadableBookException damaged(String found, String expected) {
        return new UnreadableBookException(title, found + " in part " + part.part(), expected);
    }
}
