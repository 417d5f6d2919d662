package shaftwright.badinput;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import shaftwright.book.CellPlace;

/** The parts of a workbook file, to look at or to edit as another program might. */
public final class FileParts {
    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    public static FileParts of(Path file) {
        FileParts parts = new FileParts();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                parts.parts.put(entry.getName(), zip.getInputStream(entry).readAllBytes());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return parts;
    }

    public Map<String, byte[]> parts() {
        return parts;
    }

    public String text(String part) {
        return new String(parts.get(part), StandardCharsets.UTF_8);
    }

    public FileParts put(String part, byte[] bytes) {
        parts.put(part, bytes);
        return this;
    }

    public FileParts put(String part, String text) {
        return put(part, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Replaces a text that the part must have. */
    public FileParts replace(String part, String old, String now) {
        String text = text(part);
        if (!text.contains(old)) {
            throw new IllegalArgumentException(part + " has no " + old);
        }
        return put(part, text.replace(old, now));
    }

    /** The part of a sheet. */
    String sheet(String name) {
        String id =
                found(
                        text("xl/workbook.xml"),
                        "<sheet [^>]*name=\"" + name + "\"[^>]*?r:id=\"([^\"]+)\"");
        for (String link : text("xl/_rels/workbook.xml.rels").split("<Relationship ", -1)) {
            if (link.contains("Id=\"" + id + "\"")) {
                String target = found(link, "Target=\"/?(?:xl/)?([^\"]+)\"");
                return "xl/" + target;
            }
        }
        throw new IllegalArgumentException(name);
    }

    private static String found(String text, String pattern) {
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        if (!matcher.find()) {
            throw new IllegalArgumentException(pattern + " in " + text);
        }
        return matcher.group(1);
    }

    /** Puts this between the tags of a cell that the sheet has; its style stays. */
    FileParts cell(CellPlace place, String content) {
        String part = sheet(place.sheet());
        Matcher cell =
                Pattern.compile("<c r=\"" + place.address() + "\"([^>]*?)(?:/>|>.*?</c>)")
                        .matcher(text(part));
        if (!cell.find()) {
            throw new IllegalArgumentException(place.toString());
        }
        String tag =
                "<c r=\"" + place.address() + "\"" + cell.group(1).replaceAll(" t=\"[^\"]*\"", "");
        return put(
                part,
                text(part).substring(0, cell.start())
                        + tag
                        + ">"
                        + content
                        + "</c>"
                        + text(part).substring(cell.end()));
    }

    /** Adds a sheet of the builder's; {@code cells} are those of its first row. */
    FileParts addSheet(String name, String cells) {
        return addSheetOfRows(name, "<row r=\"1\">" + cells + "</row>");
    }

    /** Adds a sheet of the builder's with these rows. */
    FileParts addSheetOfRows(String name, String rows) {
        int number = parts.size() + 100;
        put(
                "xl/worksheets/own" + number + ".xml",
                "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                        + "<sheetData>"
                        + rows
                        + "</sheetData></worksheet>");
        replace(
                "[Content_Types].xml",
                "</Types>",
                "<Override PartName=\"/xl/worksheets/own"
                        + number
                        + ".xml\" ContentType=\"application/vnd.openxmlformats-officedocument"
                        + ".spreadsheetml.worksheet+xml\"/></Types>");
        replace(
                "xl/workbook.xml",
                "</sheets>",
                "<sheet name=\""
                        + name
                        + "\" sheetId=\""
                        + number
                        + "\" r:id=\"own"
                        + number
                        + "\"/></sheets>");
        return replace(
                "xl/_rels/workbook.xml.rels",
                "</Relationships>",
                "<Relationship Id=\"own"
                        + number
                        + "\" Type=\"http://schemas.openxmlformats.org/officeDocument/2006/"
                        + "relationships/worksheet\" Target=\"worksheets/own"
                        + number
                        + ".xml\"/></Relationships>");
    }

    /** Adds a defined name for the whole workbook. */
    FileParts addName(String name, String formula) {
        return replace(
                "xl/workbook.xml",
                "</definedNames>",
                "<definedName name=\"" + name + "\">" + formula + "</definedName></definedNames>");
    }

    public Path write(Path file) {
        try (ZipOutputStream out = new ZipOutputStream(Files.newOutputStream(file))) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                out.putNextEntry(new ZipEntry(part.getKey()));
                out.write(part.getValue());
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }
}
