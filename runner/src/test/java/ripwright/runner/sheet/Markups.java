package ripwright.runner.sheet;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/** Reads pages back, as XML: what is not well-formed is refused. */
final class Markups {
    private Markups() {}

    static Document parsed(String text) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
            factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
            DocumentBuilder builder = factory.newDocumentBuilder();
            builder.setErrorHandler(new Strict());
            return builder.parse(new InputSource(new StringReader(text)));
        } catch (SAXException | IOException | ParserConfigurationException e) {
            throw new AssertionError("Not well-formed: " + e.getMessage(), e);
        }
    }

    static List<Element> elements(Document document, String name) {
        NodeList nodes = document.getElementsByTagName(name);
        return IntStream.range(0, nodes.getLength())
                .mapToObj(nodes::item)
                .map(Element.class::cast)
                .toList();
    }

    static List<String> texts(Document document, String name) {
        return elements(document, name).stream().map(Element::getTextContent).toList();
    }

    private static final class Strict implements ErrorHandler {
        @Override
        public void warning(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void error(SAXParseException e) throws SAXException {
            throw e;
        }

        @Override
        public void fatalError(SAXParseException e) throws SAXException {
            throw e;
        }
    }
}
