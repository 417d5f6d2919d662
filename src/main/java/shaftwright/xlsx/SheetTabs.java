package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * The row of a workbook's tabs: which sheets are seen, which is in front, and whether the builder
 * has locked it.
 */
final class SheetTabs {
    private record Tab(String name, boolean seen, int start, int end) {
        /** Whether it is seen once some are shown and others hidden. */
        boolean isSeen(Set<String> show, Set<String> hide) {
            String lowerCase = XlsxBook.lowerCase(name);
            return show.contains(lowerCase) || (seen && !hide.contains(lowerCase));
        }
    }

    /** A window's view of the workbook, by where its tag stands. */
    private record View(int start, int end, int active, int first) {}

    private final PartText text;
    private final List<Tab> tabs = new ArrayList<>();
    private final List<View> views = new ArrayList<>();
    private boolean locked;

    private SheetTabs(PartText text) {
        this.text = text;
    }

    /** Those of a workbook part. */
    static SheetTabs of(PartText workbook) {
        SheetTabs tabs = new SheetTabs(workbook);
        PartReader.walk(workbook, tabs::read);
        return tabs;
    }

    private void read(PartReader reader) {
        while (reader.nextChild()) {
            switch (reader.name()) {
                case "workbookProtection" -> {
                    locked = isTrue(reader.attribute("lockStructure"));
                    reader.skip();
                }
                case "bookViews" -> readViews(reader);
                case "sheets" -> readTabs(reader);
                default -> reader.skip();
            }
        }
    }

    private void readViews(PartReader reader) {
        while (reader.nextChild()) {
            views.add(
                    new View(
                            reader.start(),
                            reader.end(),
                            number(reader.attribute("activeTab")),
                            number(reader.attribute("firstSheet"))));
            reader.skip();
        }
    }

    private void readTabs(PartReader reader) {
        while (reader.nextChild()) {
            String state = reader.attribute("state");
            tabs.add(
                    new Tab(
                            reader.attribute("name"),
                            state == null || state.equals("visible"),
                            reader.start(),
                            reader.end()));
            reader.skip();
        }
    }

    private static boolean isTrue(String value) {
        return "1".equals(value) || "true".equals(value);
    }

    /** As whole as it is, 0 where it is none: a program then starts with the first tab. */
    private static int number(String value) {
        return value != null && value.matches("\\d{1,5}") ? Integer.parseInt(value) : 0;
    }

    /** Whether sheets may be neither shown nor hidden. */
    boolean isLocked() {
        return locked;
    }

    /** Whether each sheet is seen, in tab order. */
    Map<String, Boolean> seen() {
        Map<String, Boolean> seen = new LinkedHashMap<>();
        tabs.forEach(tab -> seen.put(tab.name(), tab.seen()));
        return seen;
    }

    /** Whether any sheet is left to see once some are shown and others hidden. */
    boolean leavesAny(Set<String> show, Set<String> hide) {
        return tabs.stream().anyMatch(tab -> tab.isSeen(show, hide));
    }

    /**
     * The changes that show some sheets and hide others, so that the tab in front is one that is
     * seen.
     *
     * @param show lower-case names
     * @param hide lower-case names of others
     * @param sheets gives a sheet's part by its name
     * @return by part; empty when all is so already
     */
    Map<PartText, List<Splice>> changes(
            Set<String> show, Set<String> hide, Function<String, PartText> sheets) {
        List<Splice> splices = new ArrayList<>();
        boolean[] seen = new boolean[tabs.size()];
        for (int i = 0; i < seen.length; i++) {
            Tab tab = tabs.get(i);
            seen[i] = tab.isSeen(show, hide);
            if (seen[i] != tab.seen()) {
                String tag = text.text(tab.start(), tab.end());
                splices.add(
                        new Splice(
                                tab.start(),
                                tab.end(),
                                seen[i]
                                        ? TagText.withoutAttribute(tag, "state")
                                        : TagText.withAttribute(tag, "state", "hidden")));
            }
        }
        Map<PartText, List<Splice>> changes = new LinkedHashMap<>();
        if (splices.isEmpty()) {
            return changes;
        }
        changes.put(text, splices);
        for (View view : views) {
            int front = nearest(seen, view.active());
            int first = nearest(seen, view.first());
            if (front != view.active() || first != view.first()) {
                String tag = text.text(view.start(), view.end());
                tag = TagText.withAttribute(tag, "activeTab", String.valueOf(front));
                tag = TagText.withAttribute(tag, "firstSheet", String.valueOf(first));
                splices.add(new Splice(view.start(), view.end(), tag));
            }
        }
        int front = nearest(seen, views.isEmpty() ? 0 : views.get(0).active());
        for (int i = 0; i < seen.length; i++) {
            boolean turned = seen[i] != tabs.get(i).seen() || i == front;
            if (turned) {
                select(sheets.apply(tabs.get(i).name()), i == front, changes);
            }
        }
        return changes;
    }

    /** The tab itself, else the next one on its right, else on its left, that is seen. */
    private static int nearest(boolean[] seen, int tab) {
        for (int i = tab; i < seen.length; i++) {
            if (seen[i]) {
                return i;
            }
        }
        for (int i = Math.min(tab, seen.length) - 1; i > 0; i--) {
            if (seen[i]) {
                return i;
            }
        }
        return 0;
    }

    /** Says in a sheet's own views whether it is selected. */
    private static void select(
            PartText sheet, boolean selected, Map<PartText, List<Splice>> changes) {
        List<Splice> splices = new ArrayList<>();
        PartReader.walk(
                sheet,
                reader -> {
                    while (reader.nextChild() && !reader.name().equals("sheetData")) {
                        if (reader.name().equals("sheetViews")) {
                            while (reader.nextChild()) {
                                select(sheet, reader, selected, splices);
                            }
                        } else {
                            reader.skip();
                        }
                    }
                });
        if (!splices.isEmpty()) {
            changes.put(sheet, splices);
        }
    }

    private static void select(
            PartText sheet, PartReader reader, boolean selected, List<Splice> splices) {
        if (isTrue(reader.attribute("tabSelected")) != selected) {
            String tag = sheet.text(reader.start(), reader.end());
            splices.add(
                    new Splice(
                            reader.start(),
                            reader.end(),
                            selected
                                    ? TagText.withAttribute(tag, "tabSelected", "1")
                                    : TagText.withoutAttribute(tag, "tabSelected")));
        }
        reader.skip();
    }
}
