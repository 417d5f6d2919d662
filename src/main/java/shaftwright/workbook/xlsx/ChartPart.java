package shaftwright.workbook.xlsx;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import shaftwright.workbook.Area;
import shaftwright.workbook.CellPlace;
import shaftwright.workbook.CellValue;

/**
 * The cached points of one chart: what viewers draw that do not look at the cells. Understands
 * {@code numRef} and {@code strRef} of charts (ECMA-376 part 1, 21.2.2) and {@code numDim} and
 * {@code strDim} with one level of extended charts (MS-ODRAWXML 2.24.3), where they refer to one
 * plain area or to a name of one.
 */
final class ChartPart implements PartReader.Walk {
    /** One point: its whole element, and its text. */
    private record Point(int index, int start, int end, int from, int to) {}

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
                cache.points.add(readPoint(reader, cache.extended));
            } else {
                reader.skip();
            }
        }
        cache.end = reader.end();
    }

    private static Point readPoint(PartReader reader, boolean extended) {
        int index = number(reader.attribute("idx"));
        int start = reader.start();
        int from = reader.end();
        int to = from;
        if (extended) {
            reader.text();
            to = Math.max(from, reader.start());
        } else {
            while (reader.nextChild()) {
                if (reader.name().equals("v")) {
                    from = reader.end();
                    reader.text();
                    to = reader.start();
                } else {
                    reader.skip();
                }
            }
        }
        return new Point(index, start, reader.end(), from, to);
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
            } else if (!shown.equals(text.text(old.from(), old.to()))) {
                splices.add(new Splice(old.from(), old.to(), shown));
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
