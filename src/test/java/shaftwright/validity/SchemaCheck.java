package shaftwright.validity;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.xmlbeans.SchemaTypeLoader;
import org.apache.xmlbeans.SchemaTypeSystem;
import org.apache.xmlbeans.XmlBeans;
import org.apache.xmlbeans.XmlError;
import org.apache.xmlbeans.XmlException;
import org.apache.xmlbeans.XmlObject;
import org.apache.xmlbeans.XmlOptions;

/**
 * Validates every part whose root element the ECMA-376 schemas know. They come whole with
 * poi-ooxml-full only, whose classes have the names of those of poi-ooxml-lite that the product
 * runs on: a class loader of their own keeps them apart.
 */
public final class SchemaCheck {
    /** Where the build puts it. */
    private static final Path SCHEMAS = Path.of("target/schemas/poi-ooxml-full.jar");

    /** XML 1.0 itself defines xml:space, Excel writes it, and the schemas leave it out. */
    private static final String SPACE =
            "Attribute not allowed (no wildcards allowed): space@http://www.w3.org/XML/1998/namespace";

    private static final SchemaTypeLoader TYPES = types();

    private SchemaCheck() {}

    public static List<Finding> of(Path file) {
        List<Finding> findings = new ArrayList<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            for (ZipEntry entry : zip.stream().toList()) {
                if (entry.getName().matches(".*\\.(xml|rels|vml)")) {
                    check(zip, entry, findings);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return findings;
    }

    private static void check(ZipFile zip, ZipEntry entry, List<Finding> findings)
            throws IOException {
        try (InputStream in = zip.getInputStream(entry)) {
            XmlObject part = TYPES.parse(in, null, new XmlOptions().setLoadLineNumbers());
            if (!part.schemaType().isDocumentType()) {
                return;
            }
            List<XmlError> errors = new ArrayList<>();
            part.validate(new XmlOptions().setErrorListener(errors));
            errors.removeIf(error -> error.getMessage().startsWith(SPACE));
            for (XmlError error : errors) {
                findings.add(
                        new Finding(
                                entry.getName(), "line " + error.getLine(), error.getMessage()));
            }
        } catch (XmlException e) {
            findings.add(new Finding(entry.getName(), "", e.getMessage()));
        }
    }

    private static SchemaTypeLoader types() {
        if (!Files.isRegularFile(SCHEMAS)) {
            throw new AssertionError(SCHEMAS + " is missing; the build puts it there");
        }
        try {
            ClassLoader loader = new Schemas(SCHEMAS.toUri().toURL());
            Object types =
                    loader.loadClass("org.apache.poi.schemas.ooxml.system.ooxml.TypeSystemHolder")
                            .getField("typeSystem")
                            .get(null);
            return XmlBeans.typeLoaderUnion(
                    (SchemaTypeSystem) types, XmlBeans.getBuiltinTypeSystem());
        } catch (MalformedURLException | ReflectiveOperationException e) {
            throw new AssertionError("no schemas in " + SCHEMAS, e);
        }
    }

    /** Looks into the jar before it asks others. */
    private static final class Schemas extends URLClassLoader {
        Schemas(URL jar) {
            super(new URL[] {jar}, SchemaCheck.class.getClassLoader());
        }

        @Override
        protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
            synchronized (getClassLoadingLock(name)) {
                Class<?> known = findLoadedClass(name);
                if (known != null) {
                    return known;
                }
                try {
                    return findClass(name);
                } catch (ClassNotFoundException elsewhere) {
                    return super.loadClass(name, resolve);
                }
            }
        }

        @Override
        public URL getResource(String name) {
            URL own = findResource(name);
            return own == null ? super.getResource(name) : own;
        }
    }
}
