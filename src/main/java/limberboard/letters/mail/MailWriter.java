package limberboard.letters.mail;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.apache.james.mime4j.dom.Message;
import org.apache.james.mime4j.dom.TextBody;
import org.apache.james.mime4j.field.Fields;
import org.apache.james.mime4j.message.BasicBodyFactory;
import org.apache.james.mime4j.message.BodyPartBuilder;
import org.apache.james.mime4j.message.DefaultMessageWriter;
import org.apache.james.mime4j.message.MultipartBuilder;
import org.apache.james.mime4j.stream.NameValuePair;
import org.apache.james.mime4j.stream.RawField;
import org.apache.james.mime4j.util.MimeUtil;

/**
 * Writes a letter as a file that mail programs open: RFC 5322 and MIME, the text as {@code
 * format=flowed} (RFC 3676) and as HTML beside each other, all in UTF-8. What came from another
 * letter (a name, a subject, an id) can add no field to the header. Stateless.
 */
public final class MailWriter {
  private static final int LONGEST_ID = 900;
  private static final Pattern ID =
      Pattern.compile("<[\\x21-\\x3b\\x3d\\x3f-\\x7e]{1," + LONGEST_ID + "}>");
  private static final Pattern DOMAIN =
      Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9.-]*[A-Za-z0-9])?");
  private static final Pattern LOCAL = Pattern.compile("[\\x21-\\x7e]+");
  private static final NameValuePair UTF_8 = new NameValuePair("charset", "UTF-8");

  private MailWriter() {}

  /** The file. */
  public static byte[] write(OutgoingLetter letter) {
    try {
      Message.Builder message = Message.Builder.of();
      message.setField(Fields.version("1.0"));
      mailbox(letter.from()).ifPresent(message::setFrom);
      letter.to().flatMap(MailWriter::mailbox).ifPresent(message::setTo);
      message.setSubject(letter.subject());
      TimeZone zone = TimeZone.getTimeZone(letter.date().getOffset());
      message.setDate(Date.from(letter.date().toInstant()), zone);
      ids("Message-ID", List.of(letter.id())).ifPresent(message::setField);
      ids("In-Reply-To", letter.repliesTo().stream().toList()).ifPresent(message::setField);
      ids("References", letter.references()).ifPresent(message::setField);
      MultipartBuilder both = alternatives(letter);
      if (letter.files().isEmpty()) {
        message.setBody(both.build());
      } else {
        MultipartBuilder all =
            MultipartBuilder.create("mixed")
                .addBodyPart(BodyPartBuilder.create().setBody(both.build()));
        for (OutgoingLetter.SentFile file : letter.files()) {
          all.addBodyPart(
              BodyPartBuilder.create()
                  .setBody(file.bytes(), file.media())
                  .setContentTransferEncoding(MimeUtil.ENC_BASE64)
                  .setContentDisposition("attachment", file.name()));
        }
        message.setBody(all.build());
      }
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      new DefaultMessageWriter().writeMessage(message.build(), out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException("memory cannot be written to", e);
    }
  }

  private static MultipartBuilder alternatives(OutgoingLetter letter) throws IOException {
    NameValuePair flowed = new NameValuePair("format", "flowed");
    return MultipartBuilder.create("alternative")
        .addBodyPart(text("text/plain", FlowedWriter.broken(letter.text()), UTF_8, flowed))
        .addBodyPart(text("text/html", lineEnds(letter.html()), UTF_8));
  }

  private static BodyPartBuilder text(String media, String text, NameValuePair... parameters)
      throws IOException {
    TextBody body = new BasicBodyFactory().textBody(text, StandardCharsets.UTF_8);
    return BodyPartBuilder.create()
        .setBody(body)
        .setContentType(media, parameters)
        .setContentTransferEncoding(MimeUtil.ENC_QUOTED_PRINTABLE);
  }

  private static String lineEnds(String text) {
    UnaryOperator<String> one = all -> all.replace("\r\n", "\n").replace('\r', '\n');
    return one.apply(text).replace("\n", "\r\n");
  }

  /** Message ids as a field that is folded between them; what is no id is left out. */
  private static Optional<RawField> ids(String field, List<String> ids) {
    List<String> good = ids.stream().filter(id -> ID.matcher(id).matches()).toList();
    return good.isEmpty()
        ? Optional.empty()
        : Optional.of(new RawField(field, String.join(" ", good)));
  }

  /** An address that can stand in a header; empty where it is none. */
  private static Optional<org.apache.james.mime4j.dom.address.Mailbox> mailbox(Mailbox mailbox) {
    int at = mailbox.address().lastIndexOf('@');
    if (at < 1) {
      return Optional.empty();
    }
    String local = mailbox.address().substring(0, at);
    String domain = mailbox.address().substring(at + 1);
    String name = mailbox.name().isEmpty() ? null : mailbox.name();
    return LOCAL.matcher(local).matches() && DOMAIN.matcher(domain).matches()
        ? Optional.of(new org.apache.james.mime4j.dom.address.Mailbox(name, null, local, domain))
        : Optional.empty();
  }
}
