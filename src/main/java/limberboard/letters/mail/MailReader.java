package limberboard.letters.mail;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.apache.james.mime4j.MimeException;
import org.apache.james.mime4j.codec.DecodeMonitor;
import org.apache.james.mime4j.dom.field.ContentDispositionField;
import org.apache.james.mime4j.dom.field.ContentTypeField;
import org.apache.james.mime4j.field.ContentDispositionFieldLenientImpl;
import org.apache.james.mime4j.field.ContentTypeFieldLenientImpl;
import org.apache.james.mime4j.stream.EntityState;
import org.apache.james.mime4j.stream.Field;
import org.apache.james.mime4j.stream.MimeConfig;
import org.apache.james.mime4j.stream.MimeTokenStream;

/**
 * Reads a letter as mail programs write it: RFC 5322 and MIME (RFC 2045 to 2047), part by part, so
 * that neither its length nor its nesting matters. What cannot be read is said in a remark, and the
 * rest is read all the same.
 */
public final class MailReader {
  private static final int DEEPEST = 60;
  private static final int MOST_PARTS = 500;
  private static final int LONGEST_TEXT = 2_000_000;
  private static final int LONGEST_HEADER = 4_000_000;
  private static final int MOST_FIELDS = 2_000;
  private static final String TOO_LONG =
      "The text is longer than two million bytes; the rest of it is left out.";
  private static final Pattern SENT_ON =
      Pattern.compile("^\\s*(fwd?|wg|tr|rv|i)\\s*:.*", Pattern.CASE_INSENSITIVE);
  private static final Pattern FOLDERS = Pattern.compile("^.*[/\\\\]");

  private final List<String> remarks = new ArrayList<>();
  private final List<Attachment> attachments = new ArrayList<>();
  private final Deque<Part> open = new ArrayDeque<>();
  private final HeadReader head = new HeadReader();
  private ContentTypeField type;
  private ContentDispositionField disposition;
  private final int wanted;
  private final int mostWanted;
  private Optional<byte[]> found = Optional.empty();
  private int messages;
  private int parts;
  private int read;

  private MailReader(int wanted, int mostWanted) {
    this.wanted = wanted;
    this.mostWanted = mostWanted;
  }

  /** A part that holds others. */
  private record Part(String subtype, List<String> texts, List<String> sentOn) {
    Part(String subtype) {
      this(subtype, new ArrayList<>(), new ArrayList<>());
    }
  }

  /**
   * Reads a letter.
   *
   * @param in its bytes, which are read to the end or as far as they make sense; not closed
   * @throws IOException when the bytes cannot be had
   */
  public static Letter read(InputStream in) throws IOException {
    return new MailReader(0, 0).letter(in);
  }

  /**
   * What an attachment holds; nothing else is kept.
   *
   * @param in the bytes of its letter; not closed
   * @param number its number in the letter, from 1
   * @param most how many bytes are kept at most
   * @return empty where the letter has no such attachment, or it is longer
   * @throws IOException when the bytes cannot be had
   */
  public static Optional<byte[]> attachment(InputStream in, int number, int most)
      throws IOException {
    MailReader reader = new MailReader(number, most);
    reader.letter(in);
    return reader.found;
  }

  /** Pasted text as a letter, without a header. */
  public static Letter pasted(String text) {
    boolean whole = text.length() <= LONGEST_TEXT;
    return new Letter(
        LetterHead.NONE,
        PassageSplitter.of(whole ? text : text.substring(0, LONGEST_TEXT), false),
        List.of(),
        whole ? List.of() : List.of(TOO_LONG));
  }

  private Letter letter(InputStream in) throws IOException {
    MimeTokenStream stream =
        new MimeTokenStream(
            new MimeConfig.Builder()
                .setMaxLineLen(-1)
                .setMaxHeaderLen(LONGEST_HEADER)
                .setMaxHeaderCount(MOST_FIELDS)
                .build());
    open.push(new Part("mixed"));
    stream.parse(in);
    try {
      EntityState state = stream.getState();
      while (state != EntityState.T_END_OF_STREAM && parts < MOST_PARTS && open.size() < DEEPEST) {
        take(state, stream);
        state = stream.next();
      }
      if (state != EntityState.T_END_OF_STREAM) {
        remarks.add("The letter has too many parts within parts; the rest of it is left out.");
      }
    } catch (MimeException e) {
      remarks.add("The letter is damaged; what comes after the damage is left out.");
    }
    while (open.size() > 1) {
      close();
    }
    return put(open.pop());
  }

  private Letter put(Part whole) {
    LetterHead read = head.head();
    boolean sentOn = SENT_ON.matcher(read.subject()).matches();
    List<Passage> passages = new ArrayList<>();
    whole.texts().forEach(text -> passages.addAll(PassageSplitter.of(text, sentOn)));
    whole.sentOn().forEach(text -> passages.add(new Passage(Passage.Kind.FORWARDED, text)));
    return new Letter(read, passages, attachments, remarks);
  }

  private void take(EntityState state, MimeTokenStream stream) throws IOException {
    switch (state) {
      case T_START_MESSAGE -> {
        messages++;
        if (messages > 1) {
          open.push(new Part("message"));
        }
      }
      case T_END_MESSAGE -> {
        messages--;
        if (messages > 0) {
          close();
        }
      }
      case T_START_HEADER -> {
        type = null;
        disposition = null;
      }
      case T_FIELD -> field(stream.getField());
      case T_START_MULTIPART ->
          open.push(new Part(stream.getBodyDescriptor().getSubType().toLowerCase(Locale.ROOT)));
      case T_END_MULTIPART -> close();
      case T_BODY -> body(stream);
      default -> {}
    }
  }

  private void field(Field field) {
    if (messages == 1 && open.size() == 1) {
      head.add(field);
    } else if (open.peek().subtype().equals("message")
        && List.of("from", "date", "subject").contains(field.getNameLowerCase())) {
      open.peek()
          .texts()
          .add(field.getName() + ": " + HeadReader.oneLine(HeadReader.decoded(field.getBody())));
    }
    switch (field.getNameLowerCase()) {
      case "content-type" ->
          type = ContentTypeFieldLenientImpl.PARSER.parse(field, DecodeMonitor.SILENT);
      case "content-disposition" ->
          disposition =
              ContentDispositionFieldLenientImpl.PARSER.parse(field, DecodeMonitor.SILENT);
      default -> {}
    }
  }

  private void body(MimeTokenStream stream) throws IOException {
    parts++;
    String media = stream.getBodyDescriptor().getMimeType().toLowerCase(Locale.ROOT);
    boolean attached = disposition != null && disposition.isAttachment();
    boolean text = media.equals("text/plain") || media.equals("text/html");
    if (!text || attached) {
      int number = attachments.size() + 1;
      long length = length(stream.getDecodedInputStream(), number == wanted);
      attachments.add(new Attachment(number, name(media), media, length));
      return;
    }
    String said = text(stream);
    if (media.equals("text/html")) {
      HtmlText.Words words = HtmlText.of(said);
      if (words.pictures() > 0) {
        remarks.add("Pictures from elsewhere were not loaded.");
      }
      said = words.text();
    } else if (parameter("format").equalsIgnoreCase("flowed")) {
      said = FlowedText.joined(said, parameter("delsp").equalsIgnoreCase("yes"));
    }
    open.peek().texts().add(said);
  }

  private String text(MimeTokenStream stream) throws IOException {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    InputStream in = stream.getDecodedInputStream();
    byte[] buffer = new byte[8192];
    int space = LONGEST_TEXT - read;
    int n = in.read(buffer);
    while (n >= 0 && bytes.size() < space) {
      bytes.write(buffer, 0, Math.min(n, space - bytes.size()));
      n = in.read(buffer);
    }
    read += bytes.size();
    if (n >= 0 && !remarks.contains(TOO_LONG)) {
      remarks.add(TOO_LONG);
    }
    return TextBytes.decoded(bytes.toByteArray(), parameter("charset"), remarks);
  }

  private String parameter(String name) {
    String value = type == null ? null : type.getParameter(name);
    return value == null ? "" : value.strip();
  }

  private String name(String media) {
    String named =
        Optional.ofNullable(disposition)
            .map(ContentDispositionField::getFilename)
            .orElseGet(() -> parameter("name"));
    String shown = FOLDERS.matcher(HeadReader.oneLine(HeadReader.decoded(named))).replaceFirst("");
    return shown.isBlank() ? "part " + (attachments.size() + 1) + " (" + media + ")" : shown;
  }

  /** Reads to the end, and keeps what is read where it is asked for and not too long. */
  private long length(InputStream in, boolean keep) throws IOException {
    ByteArrayOutputStream kept = new ByteArrayOutputStream();
    byte[] buffer = new byte[8192];
    long length = 0;
    for (int n = in.read(buffer); n >= 0; n = in.read(buffer)) {
      length += n;
      if (keep && length <= mostWanted) {
        kept.write(buffer, 0, n);
      }
    }
    if (keep && length <= mostWanted) {
      found = Optional.of(kept.toByteArray());
    }
    return length;
  }

  /** Puts what a part holds into the part around it; of alternatives, the one to read. */
  private void close() {
    Part part = open.pop();
    Part around = open.peek();
    around.sentOn().addAll(part.sentOn());
    switch (part.subtype()) {
      case "message" -> {
        String text = String.join("\n", part.texts()).strip();
        if (!text.isEmpty()) {
          around.sentOn().add(text);
        }
      }
      case "alternative" ->
          part.texts().stream()
              .filter(text -> !text.isBlank())
              .findFirst()
              .ifPresent(around.texts()::add);
      default -> around.texts().addAll(part.texts());
    }
  }
}
