package limberboard.letters.mail;

import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.james.mime4j.codec.DecodeMonitor;
import org.apache.james.mime4j.codec.DecoderUtil;
import org.apache.james.mime4j.dom.address.MailboxList;
import org.apache.james.mime4j.dom.field.DateTimeField;
import org.apache.james.mime4j.field.DateTimeFieldLenientImpl;
import org.apache.james.mime4j.field.address.LenientAddressParser;
import org.apache.james.mime4j.stream.Field;
import org.apache.james.mime4j.stream.RawField;

/** Gathers the fields of a header and says what they mean; the first of each name counts. */
final class HeadReader {
  /** More than this of one field says nothing about a letter, in characters. */
  private static final int LONGEST = 20_000;

  private static final Pattern COMMENT = Pattern.compile("\\([^()]*\\)");
  private static final Pattern ID = Pattern.compile("<[^<>\\s]{1,300}>");
  private static final Pattern AWAY =
      Pattern.compile(
          "^(automatic reply|auto(matic)?[- ]?(response|reply)|out of (the )?office|abwesenheit"
              + "|automatische antwort|absence(?! of\\b)|réponse automatique|respuesta automática"
              + "|undeliver|delivery status|mail delivery|returned mail).*",
          Pattern.CASE_INSENSITIVE);
  private static final Set<String> BY_PROGRAMS = Set.of("bulk", "junk", "list", "auto_reply");
  private static final Set<String> REPORTS = Set.of("multipart/report");

  private final Map<String, Field> fields = new LinkedHashMap<>();

  void add(Field field) {
    fields.putIfAbsent(field.getNameLowerCase(), field);
  }

  LetterHead head() {
    String subject = oneLine(decoded(body("subject")));
    return new LetterHead(
        mailbox("from"),
        mailbox("reply-to"),
        subject,
        date(),
        ids("message-id").stream().findFirst(),
        repliesTo(),
        automatic(subject));
  }

  private String body(String name) {
    Field field = fields.get(name);
    String all = field == null || field.getBody() == null ? "" : field.getBody();
    return all.length() <= LONGEST ? all : all.substring(0, LONGEST);
  }

  /** Encoded words decoded (RFC 2047); what is no good one stays as it is. */
  static String decoded(String text) {
    try {
      return DecoderUtil.decodeEncodedWords(text, DecodeMonitor.SILENT, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      return text;
    }
  }

  /** Text in one line, without anything that could begin another line. */
  static String oneLine(String text) {
    return text.replaceAll("[\\p{Cntrl}\\u2028\\u2029\\s]+", " ").strip();
  }

  private Optional<Mailbox> mailbox(String name) {
    String body = oneLine(body(name));
    if (body.isEmpty()) {
      return Optional.empty();
    }
    MailboxList all = LenientAddressParser.DEFAULT.parseAddressList(body).flatten();
    if (all.isEmpty()) {
      return Optional.of(new Mailbox(oneLine(decoded(body)), ""));
    }
    org.apache.james.mime4j.dom.address.Mailbox first = all.get(0);
    return Optional.of(
        new Mailbox(
            first.getName() == null ? "" : oneLine(decoded(first.getName())),
            first.getDomain() == null ? "" : oneLine(first.getAddress())));
  }

  /** The date; comments, which the standard allows, are taken out first. */
  private Optional<OffsetDateTime> date() {
    String plain = oneLine(COMMENT.matcher(body("date")).replaceAll(" "));
    if (plain.isEmpty()) {
      return Optional.empty();
    }
    DateTimeField parsed =
        DateTimeFieldLenientImpl.PARSER.parse(new RawField("Date", plain), DecodeMonitor.SILENT);
    return Optional.ofNullable(parsed.getDate())
        .map(found -> found.toInstant().atOffset(ZoneOffset.UTC));
  }

  private List<String> ids(String name) {
    List<String> ids = new ArrayList<>();
    Matcher matcher = ID.matcher(body(name));
    while (matcher.find()) {
      ids.add(matcher.group());
    }
    return ids;
  }

  private List<String> repliesTo() {
    Set<String> all = new LinkedHashSet<>(ids("in-reply-to"));
    List<String> references = ids("references");
    for (int i = references.size() - 1; i >= 0; i--) {
      all.add(references.get(i));
    }
    return List.copyOf(all);
  }

  /** By RFC 3834 and what programs set beside it; an empty return path is a program's, too. */
  private boolean automatic(String subject) {
    String submitted = oneLine(body("auto-submitted")).toLowerCase(Locale.ROOT);
    String precedence = oneLine(body("precedence")).toLowerCase(Locale.ROOT);
    String type = oneLine(body("content-type")).toLowerCase(Locale.ROOT);
    return (!submitted.isEmpty() && !submitted.startsWith("no"))
        || BY_PROGRAMS.contains(precedence)
        || fields.containsKey("x-autoreply")
        || oneLine(body("return-path")).equals("<>")
        || fields.containsKey("list-unsubscribe")
        || REPORTS.stream().anyMatch(type::startsWith)
        || AWAY.matcher(subject).matches();
  }
}
