package limberboard.library.picture;

import java.io.IOException;
import java.io.InputStream;
import java.io.StringReader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import javax.xml.XMLConstants;
import javax.xml.stream.Location;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamConstants;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import limberboard.library.file.FileTrouble;

/** Says what is wrong with a picture: an SVG with a script or anything from outside is refused. */
public final class PictureSafety {
  private static final long LARGEST = 2_000_000;
  private static final int DEEPEST = 64;
  private static final Pattern OUTWARD_URL =
      Pattern.compile("url\\s*\\(\\s*+['\"]?+\\s*+(?!#)", Pattern.CASE_INSENSITIVE);

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
      return bitmap ? PixelCheck.wrong(picture) : Optional.of("is no SVG, PNG or JPEG");
    } catch (IOException e) {
      return Optional.of("cannot be read: " + FileTrouble.reason(e));
    }
  }

  private static Optional<String> svg(Path picture) throws IOException {
    try (InputStream in = Files.newInputStream(picture)) {
      return wrong(in);
    }
  }

  /** What is wrong with a drawing in SVG, empty when it may be shown. */
  public static Optional<String> wrong(InputStream svg) {
    XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
    factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
    factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
    factory.setProperty(XMLConstants.ACCESS_EXTERNAL_DTD, "");
    try {
      return wrong(factory.createXMLStreamReader(new StringReader(text(svg))));
    } catch (CharacterCodingException e) {
      return Optional.of("is not UTF-8 text");
    } catch (XMLStreamException e) {
      return Optional.of("is not well-formed XML" + at(e.getLocation()));
    } catch (IOException e) {
      return Optional.of("cannot be read: " + FileTrouble.reason(e));
    }
  }

  private static String at(Location place) {
    return place == null || place.getLineNumber() < 1 ? "" : " at line " + place.getLineNumber();
  }

  /** The drawing as text: of bytes that are no text the platform's reader would print by itself. */
  private static String text(InputStream svg) throws IOException {
    ByteBuffer bytes = ByteBuffer.wrap(svg.readNBytes((int) LARGEST));
    String text = StandardCharsets.UTF_8.newDecoder().decode(bytes).toString();
    return text.startsWith("\uFEFF") ? text.substring(1) : text;
  }

  private static Optional<String> wrong(XMLStreamReader reader) throws XMLStreamException {
    int depth = 0;
    DrawingLimits limits = new DrawingLimits();
    while (reader.hasNext()) {
      Optional<String> wrong =
          switch (reader.next()) {
            case XMLStreamConstants.DTD ->
                Optional.of("has a document type, which an SVG here does without");
            case XMLStreamConstants.PROCESSING_INSTRUCTION ->
                Optional.of("has a processing instruction, which an SVG here does without");
            case XMLStreamConstants.START_ELEMENT -> started(reader, ++depth, limits);
            case XMLStreamConstants.CHARACTERS, XMLStreamConstants.CDATA ->
                outside(reader.getText(), "its styles");
            default -> Optional.empty();
          };
      if (wrong.isPresent()) {
        return wrong;
      }
      if (reader.getEventType() == XMLStreamConstants.END_ELEMENT) {
        depth--;
        limits.ended();
      }
    }
    return limits.finished();
  }

  private static Optional<String> started(XMLStreamReader reader, int depth, DrawingLimits limits) {
    if (depth == 1 && !reader.getLocalName().equals("svg")) {
      return Optional.of("is not an SVG drawing");
    }
    return depth > DEEPEST
        ? Optional.of("is nested more than " + DEEPEST + " deep")
        : element(reader).or(() -> limits.started(name(reader), attributes(reader)));
  }

  private static String name(XMLStreamReader reader) {
    return reader.getLocalName().toLowerCase(Locale.ROOT);
  }

  private static Map<String, String> attributes(XMLStreamReader reader) {
    Map<String, String> attributes = new HashMap<>();
    for (int i = 0; i < reader.getAttributeCount(); i++) {
      attributes.put(
          reader.getAttributeLocalName(i).toLowerCase(Locale.ROOT),
          reader.getAttributeValue(i).strip());
    }
    return attributes;
  }

  private static Optional<String> outside(String text, String where) {
    boolean refers =
        OUTWARD_URL.matcher(text).find() || text.toLowerCase(Locale.ROOT).contains("@import");
    return refers
        ? Optional.of("refers to something outside itself in " + where)
        : Optional.empty();
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
      if (link && !value.startsWith("#")) {
        return Optional.of("refers to something outside itself in " + name);
      }
      Optional<String> outside = outside(value, name);
      if (outside.isPresent()) {
        return outside;
      }
    }
    return Optional.empty();
  }
}
