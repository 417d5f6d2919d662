package shaftwright.validity;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** A package's parts, what types they have and how they are related (ECMA-376 part 2). */
final class PackageFile {
    static final String RELATIONSHIPS =
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    static final String TYPES = "[Content_Types].xml";

    /** From one part to another, or out of the package. */
    record Relationship(String id, String type, String target, boolean external) {}

    private final Map<String, byte[]> parts = new LinkedHashMap<>();
    private final List<String> twice = new ArrayList<>();
    private final Map<String, Document> documents = new TreeMap<>();

    private PackageFile() {}

    static PackageFile open(Path file) {
        PackageFile opened = new PackageFile();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            Map<String, String> seen = new TreeMap<>();
            for (ZipEntry entry : zip.stream().filter(each -> !each.isDirectory()).toList()) {
                if (seen.put(entry.getName().toLowerCase(Locale.ROOT), "") != null) {
                    opened.twice.add(entry.getName());
                }
                opened.parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return opened;
    }

    /** Contents by name, without a slash before it. */
    Map<String, byte[]> parts() {
        return parts;
    }

    /** Names that occur more than once, be it in other letters. */
    List<String> twice() {
        return twice;
    }

    /** A part's XML. */
    Element xml(String part) {
        return documents.computeIfAbsent(part, this::parse).getDocumentElement();
    }

    private Document parse(String part) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder().parse(new ByteArrayInputStream(parts.get(part)));
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalArgumentException(part + " is no XML", e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Where a part's relationships stand. */
    static String relationshipsOf(String part) {
        int slash = part.lastIndexOf('/') + 1;
        return part.substring(0, slash) + "_rels/" + part.substring(slash) + ".rels";
    }

    /** A part's relationships; "" is the package itself. */
    List<Relationship> relationships(String part) {
        String rels = relationshipsOf(part);
        List<Relationship> list = new ArrayList<>();
        if (parts.containsKey(rels)) {
            for (Element each : children(xml(rels), "Relationship")) {
                boolean external = each.getAttribute("TargetMode").equals("External");
                String target = each.getAttribute("Target");
                list.add(
                        new Relationship(
                                each.getAttribute("Id"),
                                each.getAttribute("Type"),
                                external ? target : resolved(part, target),
                                external));
            }
        }
        return list;
    }

    /** The parts of one kind that a part is related to, by the last word of the type. */
    List<String> related(String part, String kind) {
        return relationships(part).stream()
                .filter(each -> each.type().endsWith("/" + kind) && !each.external())
                .map(Relationship::target)
                .toList();
    }

    private static String resolved(String part, String target) {
        String base = "/" + part.substring(0, part.lastIndexOf('/') + 1);
        Path path = Path.of(base).resolve(target.replaceFirst("#.*", "")).normalize();
        return path.toString().substring(1);
    }

    static List<Element> children(Element parent, String name) {
        List<Element> found = new ArrayList<>();
        for (Node node = parent.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element element && element.getLocalName().equals(name)) {
                found.add(element);
            }
        }
        return found;
    }

    /** All elements inside of this local name, however deep. */
    static List<Element> inside(Element parent, String name) {
        List<Element> found = new ArrayList<>();
        var nodes = parent.getElementsByTagNameNS("*", name);
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }
}
