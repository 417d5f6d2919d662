package shaftwright.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import shaftwright.book.Area;
import shaftwright.book.CellPlace;
import shaftwright.book.CellValue;

/**
 * The cached points of one chart: what viewers draw that do not look at the cells. Understands
 * {@code numRef} and {@code strRef} of charts (ECMA-376 part 1, 21.2.2) and {@code numDim} and
 * {@code strDim} with one level of extended charts (MS-ODRAWXML 2.24.3), where they refer to one
 * plain area or to a name of one.
 */
final class ChartPart implements PartReader.Walk {
    /**
     * One point.
     *
     * @param start of its element
     * @param end of its element
     * @param from start of what holds its text
     * @param to end of that
     * @param opening what must come before a text there: nothing, unless the element closed itself
     * @param closing what must follow it
     */
    private record Point(
            int index, int start, int end, int from, int to, String opening, String closing) {
        boolean isEmpty() {
            return !opening.isEmpty();
        }
    }

    /** The cached points of one reference, being read. */
    private static final class Cache {
        private final List<Point> points = new ArrayList<>();
        private String reference = "";
        private String prefix = "";
        private boolean numbers;

        /** Points of extended charts hold their text directly, others in a value element. */
        private boolean extended;

        private int start = -1;
        private int end;
        private int count = -1;
        private int afterCount;
        private int levels;
    }

    private final PartText text;
    private final List<Cache> caches = new ArrayList<>();

    private ChartPart(PartText text) {
        this.text = text;
    }

    /** The changes that bring a chart's cached points up to these new values. */
    static List<Splice> splices(PartText text, XlsxBook book, Map<CellPlace, CellValue> changes) {
        ChartPart chart = new ChartPart(text);
        PartReader.walk(text, chart);
        List<Splice> splices = new ArrayList<>();
        for (Cache cache : chart.caches) {
            Area area = book.areaOf(cache.reference);
            if (area != null && cache.start >= 0 && cache.levels <= 1) {
                chart.refresh(cache, area, changes, splices);
            }
        }
        return splices;
    }

    @Override
    public void over(PartReader reader) {
        while (reader.nextChild()) {
            switch (reader.name()) {
                case "numRef", "numDim" -> readCache(reader, true);
                case "strRef", "strDim" -> readCache(reader, false);
                default -> over(reader);
            }
        }
    }

    private void readCache(PartReader reader, boolean numbers) {
        Cache cache = new Cache();
        cache.numbers = numbers;
        caches.add(cache);
        while (reader.nextChild()) {
            switch (reader.name()) {
                case "f" -> cache.reference = reader.text();
                case "numCache", "strCache" -> readPoints(reader, cache);
                case "lvl" -> {
                    cache.extended = true;
                    readPoints(reader, cache);
                }
                default -> reader.skip();
            }
        }
    }

    private void readPoints(PartReader reader, Cache cache) {
        cache.prefix = reader.prefix();
        cache.start = reader.start();
        cache.levels++;
        if (cache.extended) {
            cache.count = number(reader.attribute("ptCount"));
            cache.afterCount = reader.isEmpty() ? -1 : reader.end();
        }
        while (reader.nextChild()) {
            if (reader.name().equals("ptCount")) {
                cache.count = number(reader.attribute("val"));
                reader.skip();
                cache.afterCount = reader.end();
            } else if (reader.name().equals("pt")) {
                cache.points.add(readPoint(reader, cache));
            } else {
                reader.skip();
            }
        }
        cache.end = reader.end();
    }

    private Point readPoint(PartReader reader, Cache cache) {
        int index = number(reader.attribute("idx"));
        int start = reader.start();
        if (cache.extended) {
            return readText(reader, index, start);
        }
        Point found = null;
        while (reader.nextChild()) {
            if (reader.name().equals("v")) {
                found = readText(reader, index, start);
            } else {
                reader.skip();
            }
        }
        int end = reader.end();
        if (found == null) {
            String all = point(cache, index, "");
            int middle = all.indexOf("</");
            return new Point(
                    index, start, end, start, end, all.substring(0, middle), all.substring(middle));
        }
        return new Point(index, start, end, found.from, found.to, found.opening, found.closing);
    }

    /** The text of the element that the reader stands on. */
    private Point readText(PartReader reader, int index, int start) {
        int tag = reader.start();
        int from = reader.end();
        if (reader.isEmpty()) {
            String closing = "</" + reader.prefix() + reader.name() + ">";
            String opening = text.text(tag, from).replaceFirst("\\s*/>$", ">");
            reader.text();
            return new Point(index, start, from, tag, from, opening, closing);
        }
        reader.text();
        return new Point(index, start, reader.end(), from, reader.start(), "", "");
    }

    private static int number(String text) {
        try {
            return text == null ? -1 : Integer.parseInt(text);
        } catch (NumberFormatException e) {
            return -1;
        }
    }

    private void refresh(
            Cache cache, Area area, Map<CellPlace, CellValue> changes, List<Splice> splices) {
        int next = 0;
        boolean wholeArea = cache.count == area.size() && cache.afterCount > 0;
        for (int i = 0; i < area.size(); i++) {
            CellValue value = changes.get(area.place(i));
            if (value == null) {
                continue;
            }
            if (!wholeArea) {
                // Hidden rows left out, perhaps: a program that needs the cache makes a new one.
                splices.add(new Splice(cache.start, cache.end, ""));
                return;
            }
            while (next < cache.points.size() && cache.points.get(next).index() < i) {
                next++;
            }
            refreshPoint(cache, next, i, shown(cache, value), splices);
        }
    }

    private void refreshPoint(
            Cache cache, int next, int index, String shown, List<Splice> splices) {
        Point old = next < cache.points.size() ? cache.points.get(next) : null;
        if (old != null && old.index() == index) {
            if (shown == null) {
                splices.add(new Splice(old.start(), old.end(), ""));
            } else if (!shown.equals(old.isEmpty() ? "" : text.text(old.from(), old.to()))) {
                splices.add(
                        new Splice(old.from(), old.to(), old.opening() + shown + old.closing()));
            }
        } else if (shown != null) {
            int at = next == 0 ? cache.afterCount : cache.points.get(next - 1).end();
            splices.add(new Splice(at, at, point(cache, index, shown)));
        }
    }

    private static String point(Cache cache, int index, String shown) {
        String open = "<" + cache.prefix;
        String close = "</" + cache.prefix;
        String content = cache.extended ? shown : open + "v>" + shown + close + "v>";
        return open + "pt idx=\"" + index + "\">" + content + close + "pt>";
    }

    /** What a point shows, or null for a gap: series of numbers skip all else. */
    private static String shown(Cache cache, CellValue value) {
        boolean gap =
                value instanceof CellValue.Blank
                        || (cache.numbers && !(value instanceof CellValue.Numeric));
        if (gap) {
            return null;
        }
        StringBuilder out = new StringBuilder();
        XmlText.encode(out, CellXml.plain(value));
        return out.toString();
    }
}
