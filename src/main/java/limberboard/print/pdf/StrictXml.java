package limberboard.print.pdf;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.parsers.DocumentBuilder;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Parses XHTML without document types, entities or anything from outside, and prints nothing. Any
 * thread.
 */
public final class StrictXml {
  private static final String NO_DOCTYPE = "http://apache.org/xml/features/disallow-doctype-decl";

  /** Reading a document that is put together only while it is read would change it. */
  private static final String AT_ONCE = "http://apache.org/xml/features/dom/defer-node-expansion";

  private StrictXml() {}

  /**
   * The document.
   *
   * @throws IOException when the text is not well formed
   */
  public static Document parse(String xhtml) throws IOException {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
      factory.setFeature(NO_DOCTYPE, true);
      factory.setNamespaceAware(true);
      factory.setFeature(AT_ONCE, false);
      DocumentBuilder builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new Throwing());
      return builder.parse(new InputSource(new StringReader(xhtml)));
    } catch (ParserConfigurationException | SAXException e) {
      throw new IOException("the page is not well-formed XHTML: " + e.getMessage(), e);
    }
  }

  /** Throws at every error, and prints nothing. */
  private static final class Throwing implements ErrorHandler {
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
