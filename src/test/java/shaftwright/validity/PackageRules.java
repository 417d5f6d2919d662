package shaftwright.validity;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.w3c.dom.Attr;
import org.w3c.dom.Element;
import org.w3c.dom.NamedNodeMap;
import org.w3c.dom.Node;

/** Content types and relationships (ECMA-376 part 2, 9.2 and 9.3). */
final class PackageRules {
    private final PackageFile file;
    private final Consumer<Finding> findings;

    PackageRules(PackageFile file, Consumer<Finding> findings) {
        this.file = file;
        this.findings = findings;
    }

    void check() {
        for (String part : file.twice()) {
            findings.accept(new Finding(part, "", "is in the package twice"));
        }
        contentTypes();
        for (String part : file.parts().keySet()) {
            if (part.endsWith(".rels")) {
                relationships(part);
            }
        }
        for (String part : file.parts().keySet()) {
            if (part.endsWith(".xml") && !part.equals(PackageFile.TYPES) && !isSheet(part)) {
                uses(part, file.xml(part), ids(file.relationships(part)));
            }
        }
    }

    /** Sheets are large: their few identifiers are looked at where they are read. */
    private static boolean isSheet(String part) {
        return part.contains("worksheets/");
    }

    private void contentTypes() {
        Map<String, String> defaults = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        Map<String, String> overrides = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        Element types = file.xml(PackageFile.TYPES);
        for (Element each : PackageFile.children(types, "Default")) {
            once(defaults, each.getAttribute("Extension"), each);
        }
        for (Element each : PackageFile.children(types, "Override")) {
            String name = each.getAttribute("PartName");
            once(overrides, name, each);
            if (!file.parts().containsKey(name.substring(1))) {
                findings.accept(
                        new Finding(PackageFile.TYPES, name, "names a part that is not there"));
            }
        }
        for (String part : file.parts().keySet()) {
            String extension = part.substring(part.lastIndexOf('.') + 1);
            if (!part.equals(PackageFile.TYPES)
                    && !overrides.containsKey("/" + part)
                    && !defaults.containsKey(extension)) {
                findings.accept(new Finding(part, "", "has no content type"));
            }
        }
    }

    private void once(Map<String, String> types, String key, Element type) {
        if (types.put(key, type.getAttribute("ContentType")) != null) {
            findings.accept(new Finding(PackageFile.TYPES, key, "has two content types"));
        }
    }

    private void relationships(String rels) {
        String source = rels.replace("_rels/", "").replaceFirst("\\.rels$", "");
        if (!source.isEmpty() && !file.parts().containsKey(source)) {
            findings.accept(new Finding(rels, "", "belongs to a part that is not there"));
        }
        Set<String> ids = new HashSet<>();
        for (PackageFile.Relationship each : file.relationships(source)) {
            if (!ids.add(each.id())) {
                findings.accept(new Finding(rels, each.id(), "occurs twice"));
            }
            if (!each.external() && !file.parts().containsKey(each.target())) {
                findings.accept(new Finding(rels, each.id(), "leads to no part: " + each.target()));
            }
        }
    }

    private void uses(String part, Element element, Set<String> ids) {
        NamedNodeMap attributes = element.getAttributes();
        for (int i = 0; i < attributes.getLength(); i++) {
            Attr attribute = (Attr) attributes.item(i);
            if (PackageFile.RELATIONSHIPS.equals(attribute.getNamespaceURI())) {
                use(part, attribute.getValue(), ids, findings);
            }
        }
        for (Node node = element.getFirstChild(); node != null; node = node.getNextSibling()) {
            if (node instanceof Element child) {
                uses(part, child, ids);
            }
        }
    }

    static void use(String part, String id, Set<String> ids, Consumer<Finding> findings) {
        if (!id.isEmpty() && !ids.contains(id)) {
            findings.accept(new Finding(part, id, "is no relationship of this part"));
        }
    }

    /** Identifiers of a part's relationships. */
    static Set<String> ids(List<PackageFile.Relationship> relationships) {
        Set<String> ids = new HashSet<>();
        relationships.forEach(each -> ids.add(each.id()));
        return ids;
    }
}
