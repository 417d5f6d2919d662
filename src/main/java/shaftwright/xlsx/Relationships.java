package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.List;

/** The relationships of one part: which other parts it uses, and as what. */
final class Relationships implements PartReader.Walk {
    /** One relationship to a part inside the package; {@code target} is that part's name. */
    record Link(String id, String type, String target) {
        /** Kinds are told by the type's last word, which strict and transitional files share. */
        boolean isA(String kind) {
            return type.length() > kind.length()
                    && type.endsWith(kind)
                    && type.charAt(type.length() - kind.length() - 1) == '/';
        }
    }

    private final List<Link> links = new ArrayList<>();

    private final String folder;

    private Relationships(String folder) {
        this.folder = folder;
    }

    /** Reads those of a part; a part without any has an empty list. The package itself is "". */
    static Relationships of(String title, ZipSnapshot zip, String part) {
        int slash = part.lastIndexOf('/');
        String folder = part.substring(0, slash + 1);
        Relationships read = new Relationships(folder);
        ZipEntryRecord entry = zip.find(folder + "_rels/" + part.substring(slash + 1) + ".rels");
        if (entry != null) {
            PartText text = zip.text(entry);
            PartReader.walk(text, read);
        }
        return read;
    }

    @Override
    public void over(PartReader reader) {
        while (reader.nextChild()) {
            String target = reader.attribute("Target");
            String type = reader.attribute("Type");
            String id = reader.attribute("Id");
            boolean external = "External".equals(reader.attribute("TargetMode"));
            if (target != null && type != null && id != null && !external) {
                links.add(new Link(id, type, resolve(folder, target)));
            }
            reader.skip();
        }
    }

    /** The part that a target names, seen from a folder; {@code ..} never leaves the package. */
    private static String resolve(String folder, String target) {
        String path = target.replace('\\', '/');
        path = path.startsWith("/") ? path.substring(1) : folder + path;
        ArrayList<String> steps = new ArrayList<>();
        int from = 0;
        while (from <= path.length()) {
            int slash = path.indexOf('/', from);
            int to = slash < 0 ? path.length() : slash;
            String step = path.substring(from, to);
            if (step.equals("..")) {
                if (!steps.isEmpty()) {
                    steps.remove(steps.size() - 1);
                }
            } else if (!step.equals(".") && !step.isEmpty()) {
                steps.add(step);
            }
            from = to + 1;
        }
        return String.join("/", steps);
    }

    List<Link> links() {
        return links;
    }

    /** The first part of this kind, or null. */
    String first(String kind) {
        for (Link link : links) {
            if (link.isA(kind)) {
                return link.target();
            }
        }
        return null;
    }

    /** The link with this id, or null. */
    Link byId(String id) {
        for (Link link : links) {
            if (link.id().equals(id)) {
                return link;
            }
        }
        return null;
    }
}
