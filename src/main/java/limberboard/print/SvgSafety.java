package limberboard.print;

import java.io.StringReader;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/**
 * Whether a drawing may be shown: no scripts, no event attributes, no document type, no foreign
 * content, and nothing that refers to anything but parts of the drawing itself.
 */
final class SvgSafety {
  private static final int DEEPEST = 64;
  private static final Set<String> REFUSED =
      Set.of("script", "foreignobject", "iframe", "image", "a", "audio", "video", "handler");
  private static final Pattern OUTWARD_URL =
      Pattern.compile("url\\s*\\(\\s*['\"]?\\s*(?!['\"#\\s])", Pattern.CASE_INSENSITIVE);

  private SvgSafety() {}

  static boolean isSafe(String svg) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    try {
      XMLStreamReader reader = factory.createXMLStreamReader(new StringReader(svg));
      try {
        return isSafe(reader);
      } finally {
        reader.close();
      }
    } catch (XMLStreamException e) {
      return false;
    }
  }

  private static boolean isSafe(XMLStreamReader reader) throws XMLStreamException {
    int depth = 0;
    while (reader.hasNext()) {
      int event = reader.next();
      boolean safe =
          switch (event) {
            case XMLStreamConstants.DTD,
                XMLStreamConstants.ENTITY_REFERENCE,
                XMLStreamConstants.PROCESSING_INSTRUCTION ->
                false;
            case XMLStreamConstants.START_ELEMENT -> ++depth <= DEEPEST && isSafeElement(reader);
            case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA ->
                isSafeText(reader.getText());
            default -> true;
          };
      if (!safe) {
        return false;
      }
      if (event == XMLStreamConstants.END_ELEMENT) {
        depth--;
      }
    }
    return true;
  }

  private static boolean isSafeElement(XMLStreamReader reader) {
    if (REFUSED.contains(reader.getLocalName().toLowerCase(Locale.ROOT))) {
      return false;
    }
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String name = reader.getAttributeLocalName(i).toLowerCase(Locale.ROOT);
      String value = reader.getAttributeValue(i).strip();
      boolean refers = name.equals("href") || name.equals("src");
      if (name.startsWith("on") || refers && !value.startsWith("#") || !isSafeText(value)) {
        return false;
      }
    }
    return true;
  }

  private static boolean isSafeText(String text) {
    return !OUTWARD_URL.matcher(text).find() && !text.toLowerCase(Locale.ROOT).contains("@import");
  }
}
