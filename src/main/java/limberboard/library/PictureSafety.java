package limberboard.library;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javax.xml.XMLConstants;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;

/** Says what is wrong with a picture: an SVG with a script or anything from outside is refused. */
public final class PictureSafety {
  private static final long LARGEST = 2_000_000;

  private PictureSafety() {}

  /** What is wrong with the picture, empty when it may be shown. */
  public static Optional<String> wrong(Path picture) {
    String name = picture.getFileName().toString().toLowerCase(Locale.ROOT);
    try {
      if (Files.size(picture) > LARGEST) {
        return Optional.of("is larger than " + LARGEST + " bytes");
      }
      if (name.endsWith(".svg")) {
        return svg(picture);
      }
      boolean bitmap = name.endsWith(".png") || name.endsWith(".jpg") || name.endsWith(".jpeg");
      return bitmap ? Optional.empty() : Optional.of("is no SVG, PNG or JPEG");
    } catch (IOException e) {
      return Optional.of("cannot be read: " + e.getMessage());
    }
  }

  private static Optional<String> svg(Path picture) throws IOException {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    try (InputStream in = Files.newInputStream(picture)) {
      XMLStreamReader reader = factory.createXMLStreamReader(in);
      boolean first = true;
      while (reader.hasNext()) {
        int event = reader.next();
        if (event == XMLStreamConstants.DTD) {
          return Optional.of("has a document type, which an SVG here does without");
        }
        if (event == XMLStreamConstants.START_ELEMENT) {
          if (first && !reader.getLocalName().equals("svg")) {
            return Optional.of("is not an SVG drawing");
          }
          first = false;
          Optional<String> wrong = element(reader);
          if (wrong.isPresent()) {
            return wrong;
          }
        }
      }
      return Optional.empty();
    } catch (XMLStreamException e) {
      return Optional.of("is not well-formed XML");
    }
  }

  private static Optional<String> element(XMLStreamReader reader) {
    String element = reader.getLocalName().toLowerCase(Locale.ROOT);
    if (element.equals("script") || element.equals("foreignobject")) {
      return Optional.of("has a <" + element + ">, and drawings hold no programs");
    }
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      String name = reader.getAttributeLocalName(i).toLowerCase(Locale.ROOT);
      String value = reader.getAttributeValue(i).strip().toLowerCase(Locale.ROOT);
      if (name.startsWith("on")) {
        return Optional.of("has " + name + "=…, and drawings hold no programs");
      }
      boolean link = name.equals("href") || name.equals("src");
      boolean outside =
          link && !value.startsWith("#") || value.contains("url(") && !value.contains("url(#");
      if (outside) {
        return Optional.of("refers to something outside itself in " + name);
      }
    }
    return Optional.empty();
  }
}
