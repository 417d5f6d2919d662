package shaftwright.calc;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import shaftwright.functions.Catalogue;
import shaftwright.functions.CellFunction;
import shaftwright.functions.Measure;
import shaftwright.functions.Parameter;

/**
 * Writes, from the catalogue, the texts by which Calc knows the functions: the UNO interface as IDL
 * and as Java, the component, and the function wizard's descriptions.
 */
public final class AddInText {
    private static final String CONFIGURATION_HEAD =
            """
            <?xml version="1.0" encoding="UTF-8"?>
            <oor:component-data xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" oor:name="CalcAddIns" oor:package="org.openoffice.Office">
            <node oor:name="AddInInfo">
            <node oor:name="SHAFT" oor:op="replace">
            <node oor:name="AddInFunctions">
            """;
    private static final String CONFIGURATION_END =
            """
            </node>
            </node>
            </node>
            </oor:component-data>
            """;

    private static final String ERRORS =
            " #VALUE!: missing or wrong sort. #NUM!: out of range. #N/A: no answer.";

    private static final String LENGTH = "; a number or a text such as 25 3/8";

    private AddInText() {}

    /** Writes both Java sources into the folder that is given. */
    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        Files.writeString(folder.resolve("XFunctions.java"), javaInterface());
        Files.writeString(folder.resolve("CellFunctions.java"), javaComponent());
    }

    /** The method that stands for a function. */
    static String method(CellFunction function) {
        return function.shortName().toLowerCase(Locale.ROOT);
    }

    /**
     * The interface as UNO's interface definition language has it. Calc gives a parameter of this
     * sort the document that the cell stands in, and does not show it to whoever writes a formula.
     */
    public static String idl() {
        StringBuilder text = new StringBuilder("module shaftwright { module calc {\n");
        text.append("interface XFunctions : com::sun::star::uno::XInterface {\n");
        for (CellFunction function : Catalogue.all()) {
            text.append("    any ").append(method(function)).append('(');
            String gap = "";
            if (function.hasUnit()) {
                text.append("[in] com::sun::star::beans::XPropertySet document");
                gap = ", ";
            }
            for (Parameter parameter : function.parameters()) {
                text.append(gap).append("[in] any ").append(parameter.name());
                gap = ", ";
            }
            text.append(");\n");
        }
        return text.append("};\n}; };\n").toString();
    }

    /** The interface in Java. */
    public static String javaInterface() {
        StringBuilder methods = new StringBuilder();
        StringBuilder infos = new StringBuilder();
        int index = 0;
        for (CellFunction function : Catalogue.all()) {
            infos.append(index == 0 ? "" : ",").append("new MethodTypeInfo(\"");
            infos.append(method(function)).append("\",").append(index++).append(",TypeInfo.ANY)\n");
            methods.append("/** ").append(function.meaning()).append(" */\n");
            methods.append(header(function)).append(";\n");
        }
        return "package shaftwright.calc;\n"
                + "import com.sun.star.beans.XPropertySet;\n"
                + "import com.sun.star.lib.uno.typeinfo.MethodTypeInfo;\n"
                + "import com.sun.star.lib.uno.typeinfo.TypeInfo;\n"
                + "import com.sun.star.uno.XInterface;\n"
                + "/** The cell functions as UNO knows them; written from the catalogue. */\n"
                + "@SuppressWarnings(\"MutablePublicArray\")\n"
                + "public interface XFunctions extends XInterface {\n"
                + "/** Methods in the order of the interface definition. */\n"
                + "TypeInfo[] UNOTYPEINFO = {\n"
                + infos
                + "};\n"
                + methods
                + "}\n";
    }

    /** The component in Java. */
    public static String javaComponent() {
        StringBuilder methods = new StringBuilder();
        for (CellFunction function : Catalogue.all()) {
            methods.append("@Override\npublic ").append(header(function)).append("{\n");
            methods.append("return call.of(\"").append(function.shortName());
            methods.append(function.hasUnit() ? "\", document" : "\", null");
            for (Parameter parameter : function.parameters()) {
                methods.append(", ").append(parameter.name());
            }
            methods.append(");\n}\n");
        }
        return "package shaftwright.calc;\n"
                + "import com.sun.star.beans.XPropertySet;\n"
                + "import com.sun.star.uno.XComponentContext;\n"
                + "/** The cell functions for Calc; written from the catalogue. */\n"
                + "public final class CellFunctions extends Component implements XFunctions {\n"
                + "static final String[] SERVICES = {\"com.sun.star.sheet.AddIn\", \"SHAFT\"};\n"
                + "private final Call call;\n"
                + "public CellFunctions(XComponentContext context) {\n"
                + "super(CellFunctions.class.getName(), SERVICES);\n"
                + "call = new Call(new DocumentUnits(context));\n}\n"
                + methods
                + "}\n";
    }

    private static String header(CellFunction function) {
        StringBuilder text = new StringBuilder("Object ").append(method(function)).append('(');
        String gap = "";
        if (function.hasUnit()) {
            text.append("XPropertySet document");
            gap = ", ";
        }
        for (Parameter parameter : function.parameters()) {
            text.append(gap).append("Object ").append(parameter.name());
            gap = ", ";
        }
        return text.append(')').toString();
    }

    /** What the function wizard shows. */
    public static String configuration() {
        StringBuilder text = new StringBuilder(CONFIGURATION_HEAD);
        for (CellFunction function : Catalogue.all()) {
            node(text, method(function));
            property(text, "DisplayName", function.name(), true);
            property(text, "Description", description(function), true);
            property(text, "Category", "Add-In", false);
            property(text, "CompatibilityName", function.name(), true);
            text.append("<node oor:name=\"Parameters\">\n");
            parameters(text, function.parameters());
            text.append("</node>\n</node>\n");
        }
        return text.append(CONFIGURATION_END).toString();
    }

    /**
     * What the wizard says of a function: what it answers, which arguments it needs, as the wizard
     * calls all of them optional, and what errors mean, which a cell shows bare. The example comes
     * last: the page of the arguments has room for three lines.
     */
    public static String description(CellFunction function) {
        return function.meaning()
                + needed(function)
                + ERRORS
                + " Example: "
                + function.example().formula(function.name())
                + " gives "
                + function.exampleResult()
                + ".";
    }

    private static String needed(CellFunction function) {
        String names =
                function.parameters().stream()
                        .filter(Parameter::isOptional)
                        .map(Parameter::name)
                        .collect(Collectors.joining(", "));
        return names.isEmpty() ? " Needs all arguments." : " Needs all but " + names + ".";
    }

    /** What the wizard says of an argument: what it is, its unit and range, and what else gives. */
    public static String asked(Parameter parameter) {
        return parameter.description()
                + (parameter.measure() == Measure.LENGTH ? LENGTH : "")
                + (parameter.allowed().words().isEmpty() ? "" : "; else #NUM!");
    }

    private static void parameters(StringBuilder text, List<Parameter> parameters) {
        for (Parameter parameter : parameters) {
            node(text, parameter.name());
            property(text, "DisplayName", parameter.name(), true);
            property(text, "Description", asked(parameter), true);
            text.append("</node>\n");
        }
    }

    private static void node(StringBuilder text, String name) {
        text.append("<node oor:name=\"").append(name).append("\" oor:op=\"replace\">\n");
    }

    private static void property(StringBuilder text, String name, String value, boolean localized) {
        text.append("<prop oor:name=\"").append(name).append("\"><value");
        text.append(localized ? " xml:lang=\"en-US\">" : ">").append(escaped(value));
        text.append("</value></prop>\n");
    }

    static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
