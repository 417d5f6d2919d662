package shaftwright.calc;

/** The texts by which LibreOffice knows the extension's parts and its menu. */
final class ExtensionText {
    private static final String XML = "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n";
    private static final String CONFIGURATION =
            "<oor:component-data xmlns:oor=\"http://openoffice.org/2001/registry\""
                    + " xmlns:xs=\"http://www.w3.org/2001/XMLSchema\"";

    /** The part that the list of installed extensions shows. */
    static final String ABOUT_PART = "about.txt";

    private ExtensionText() {}

    static String about() {
        return "Sizes half shafts with plunging joints: a menu that fills and checks sizing"
                + " workbooks, and cell functions named SHAFT. A sizing aid, not approval.\n";
    }

    static String manifest() {
        return XML
                + """
                <manifest:manifest xmlns:manifest="http://openoffice.org/2001/manifest">
                <manifest:file-entry manifest:full-path="shaftwright.idl" manifest:media-type="application/vnd.sun.star.uno-typelibrary;type=RDB"/>
                <manifest:file-entry manifest:full-path="shaftwright.components" manifest:media-type="application/vnd.sun.star.uno-components"/>
                <manifest:file-entry manifest:full-path="CalcAddIns.xcu" manifest:media-type="application/vnd.sun.star.configuration-data"/>
                <manifest:file-entry manifest:full-path="ProtocolHandler.xcu" manifest:media-type="application/vnd.sun.star.configuration-data"/>
                <manifest:file-entry manifest:full-path="Addons.xcu" manifest:media-type="application/vnd.sun.star.configuration-data"/>
                </manifest:manifest>
                """;
    }

    static String components() {
        return XML
                + "<components xmlns=\"http://openoffice.org/2010/uno-components\">\n"
                + "<component loader=\"com.sun.star.loader.Java2\" uri=\"shaftwright.jar\">\n"
                + "<implementation name=\"shaftwright.calc.CellFunctions\">\n"
                + "<service name=\"com.sun.star.sheet.AddIn\"/><service name=\"SHAFT\"/>\n"
                + "</implementation>\n"
                + "<implementation name=\"shaftwright.calc.Menu\">\n"
                + "<service name=\"shaftwright.calc.Menu\"/>\n"
                + "</implementation>\n"
                + "</component>\n"
                + "</components>\n";
    }

    static String protocol() {
        return XML
                + CONFIGURATION
                + " oor:name=\"ProtocolHandler\" oor:package=\"org.openoffice.Office\">\n"
                + "<node oor:name=\"HandlerSet\">\n"
                + "<node oor:name=\"shaftwright.calc.Menu\" oor:op=\"replace\">\n"
                + "<prop oor:name=\"Protocols\" oor:type=\"oor:string-list\"><value>vnd.shaftwright:*"
                + "</value></prop>\n"
                + "</node>\n</node>\n</oor:component-data>\n";
    }

    static String menu() {
        StringBuilder text = new StringBuilder(XML).append(CONFIGURATION);
        text.append(" oor:name=\"Addons\" oor:package=\"org.openoffice.Office\">\n");
        text.append("<node oor:name=\"AddonUI\"><node oor:name=\"OfficeMenuBar\">\n");
        text.append("<node oor:name=\"shaftwright.calc\" oor:op=\"replace\">\n");
        property(text, "Context", "com.sun.star.sheet.SpreadsheetDocument", false);
        property(text, "Title", "Shaftwright", true);
        text.append("<node oor:name=\"Submenu\">\n");
        int place = 0;
        for (MenuCommand command : MenuCommand.values()) {
            text.append("<node oor:name=\"m").append(place++);
            text.append("\" oor:op=\"replace\">\n");
            property(text, "URL", command.url(), false);
            property(text, "Title", command.title(), true);
            property(text, "Target", "_self", false);
            text.append("</node>\n");
        }
        return text.append("</node>\n</node>\n</node></node>\n</oor:component-data>\n").toString();
    }

    private static void property(StringBuilder text, String name, String value, boolean localized) {
        text.append("<prop oor:name=\"").append(name).append("\" oor:type=\"xs:string\"><value");
        text.append(localized ? " xml:lang=\"en-US\">" : ">").append(AddInText.escaped(value));
        text.append("</value></prop>\n");
    }

    static String description(String version) {
        return XML
                + "<description xmlns=\"http://openoffice.org/extensions/description/2006\""
                + " xmlns:xlink=\"http://www.w3.org/1999/xlink\">\n"
                + "<identifier value=\""
                + ExtensionFile.IDENTIFIER
                + "\"/>\n<version value=\""
                + version
                + "\"/>\n<display-name><name lang=\"en\">Shaftwright</name></display-name>\n"
                + "<extension-description><src lang=\"en\" xlink:href=\""
                + ABOUT_PART
                + "\"/></extension-description>\n"
                + "</description>\n";
    }
}
