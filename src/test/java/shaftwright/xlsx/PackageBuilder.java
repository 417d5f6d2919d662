package shaftwright.xlsx;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/** Puts hand-written parts together to a workbook file. */
final class PackageBuilder {
    static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    static final String RELATIONS =
            "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String HEAD =
            "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";

    private final Map<String, byte[]> parts = new LinkedHashMap<>();

    private PackageBuilder() {}

    /** A workbook of one sheet named "Sheet1" with this cell data between its rows' brackets. */
    static PackageBuilder withRows(String rows) {
        return withSheet(
                "<worksheet xmlns=\""
                        + MAIN
                        + "\"><sheetData>"
                        + rows
                        + "</sheetData></worksheet>");
    }

    /** A workbook of one sheet named "Sheet1" with this whole part, XML declaration excepted. */
    static PackageBuilder withSheet(String sheet) {
        return new PackageBuilder()
                .part(
                        "[Content_Types].xml",
                        HEAD
                                + "<Types xmlns=\"http://schemas.openxmlformats.org/package/2006/content-types\">"
                                + "<Default Extension=\"xml\" ContentType=\"application/xml\"/>"
                                + "<Default Extension=\"rels\" ContentType=\"application/vnd.openxmlformats-package.relationships+xml\"/>"
                                + "<Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml\"/>"
                                + "<Override PartName=\"/xl/worksheets/sheet1.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>"
                                + "<Override PartName=\"/xl/sharedStrings.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml\"/>"
                                + "<Override PartName=\"/xl/styles.xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/>"
                                + "</Types>")
                .part("_rels/.rels", relations("rId1", "officeDocument", "xl/workbook.xml"))
                .workbook("")
                .part(
                        "xl/_rels/workbook.xml.rels",
                        relations(
                                "rId1",
                                "worksheet",
                                "worksheets/sheet1.xml",
                                "rId2",
                                "sharedStrings",
                                "sharedStrings.xml",
                                "rIdStyles",
                                "styles",
                                "styles.xml"))
                .part("xl/worksheets/sheet1.xml", HEAD + sheet)
                .part("xl/styles.xml", HEAD + "<styleSheet xmlns=\"" + MAIN + "\"></styleSheet>")
                .sharedStrings("");
    }

    /** Replaces the workbook part by one with this text after its sheets. */
    PackageBuilder workbook(String afterSheets) {
        return part(
                "xl/workbook.xml",
                HEAD
                        + "<workbook xmlns=\""
                        + MAIN
                        + "\" xmlns:r=\""
                        + RELATIONS
                        + "\"><sheets><sheet name=\"Sheet1\" sheetId=\"1\" r:id=\"rId1\"/></sheets>"
                        + afterSheets
                        + "</workbook>");
    }

    static String relations(String... idKindTarget) {
        StringBuilder out = new StringBuilder(HEAD);
        out.append(
                "<Relationships xmlns=\"http://schemas.openxmlformats.org/package/2006/relationships\">");
        for (int i = 0; i < idKindTarget.length; i += 3) {
            out.append("<Relationship Id=\"")
                    .append(idKindTarget[i])
                    .append("\" Type=\"")
                    .append(RELATIONS)
                    .append('/')
                    .append(idKindTarget[i + 1])
                    .append("\" Target=\"")
                    .append(idKindTarget[i + 2])
                    .append("\"/>");
        }
        return out.append("</Relationships>").toString();
    }

    PackageBuilder sharedStrings(String items) {
        return part(
                "xl/sharedStrings.xml", HEAD + "<sst xmlns=\"" + MAIN + "\">" + items + "</sst>");
    }

    PackageBuilder part(String name, String text) {
        return part(name, text.getBytes(StandardCharsets.UTF_8));
    }

    PackageBuilder part(String name, byte[] bytes) {
        parts.put(name, bytes);
        return this;
    }

    PackageBuilder without(String name) {
        parts.remove(name);
        return this;
    }

    /** Replaces text inside a part. */
    PackageBuilder swap(String name, String old, String replacement) {
        String text = new String(parts.get(name), StandardCharsets.UTF_8);
        if (!text.contains(old)) {
            throw new IllegalArgumentException(old);
        }
        return part(name, text.replace(old, replacement));
    }

    /** Gives a part another name, at the same place in the archive. */
    PackageBuilder rename(String from, String to) {
        Map<String, byte[]> renamed = new LinkedHashMap<>();
        for (Map.Entry<String, byte[]> part : parts.entrySet()) {
            renamed.put(part.getKey().equals(from) ? to : part.getKey(), part.getValue());
        }
        parts.clear();
        parts.putAll(renamed);
        return this;
    }

    byte[] bytes() {
        try {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try (ZipOutputStream zip = new ZipOutputStream(out)) {
                for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                    ZipEntry entry = new ZipEntry(part.getKey());
                    entry.setTime(1_500_000_000_000L);
                    zip.putNextEntry(entry);
                    zip.write(part.getValue());
                    zip.closeEntry();
                }
            }
            return out.toByteArray();
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    Path save(Path file) throws IOException {
        return Files.write(file, bytes());
    }
}
