package counterstep.export.dita;

import java.io.StringReader;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** The OASIS grammar of DITA 1.2 as the Debian package dita-ot installs it. */
final class DitaGrammar {
    private static final Path CATALOG = Path.of("/usr/share/dita-ot/catalog-dita.xml");

    /** Public names to files, as the catalog has them. */
    private static final Map<String, String> FILES = new HashMap<>();

    private DitaGrammar() {}

    static boolean installed() {
        return Files.isRegularFile(CATALOG);
    }

    /** What the grammar says against a page; nothing where it is right. */
    static List<String> complaints(String page) throws Exception {
        List<String> complaints = new ArrayList<>();
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setValidating(true);
        DocumentBuilder builder = factory.newDocumentBuilder();
        if (FILES.isEmpty()) {
            readCatalog();
        }
        builder.setEntityResolver((name, file) -> new InputSource(FILES.getOrDefault(name, file)));
        builder.setErrorHandler(new Listening(complaints));
        try {
            builder.parse(new InputSource(new StringReader(page)));
        } catch (SAXParseException fatal) {
            complaints.add(fatal.getMessage());
        }
        return complaints;
    }

    /** The JDK's own catalog refuses the relative bases of this one, which OASIS allows. */
    private static void readCatalog() throws Exception {
        NodeList names = read(Files.readString(CATALOG)).getElementsByTagName("public");
        for (int place = 0; place < names.getLength(); place++) {
            Element name = (Element) names.item(place);
            URI base = CATALOG.toUri().resolve(name.getAttribute("xml:base"));
            String file = base.resolve(name.getAttribute("uri")).toString();
            FILES.put(name.getAttribute("publicId"), file);
        }
    }

    /** The page as any reader of XML sees it, without its grammar. */
    static Document read(String page) throws Exception {
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
        return factory.newDocumentBuilder().parse(new InputSource(new StringReader(page)));
    }

    private record Listening(List<String> complaints) implements ErrorHandler {
        @Override
        public void warning(SAXParseException said) {
            complaints.add(said.getLineNumber() + ": " + said.getMessage());
        }

        @Override
        public void error(SAXParseException said) {
            complaints.add(said.getLineNumber() + ": " + said.getMessage());
        }

        @Override
        public void fatalError(SAXParseException said) throws SAXException {
            throw said;
        }
    }
}
