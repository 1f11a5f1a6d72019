package limberboard.letters.mail;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import limberboard.letters.mail.Passage.Kind;

/**
 * Tells what a writer said now from what is quoted, sent on, signed or added by programs, line by
 * line. The usual marks are known in English and in the languages of the coasts around; what has
 * none of them is taken as the writer's own, so that nothing said is lost.
 */
final class PassageSplitter {
  private static final int WRAPPED_LINES = 3;
  private static final int SIGNED_LINES = 8;
  private static final int SIGNED_LENGTH = 70;

  /** How many rules and blank lines may stand above a header. */
  private static final int RULED_LINES = 6;

  /** A mark stands at the beginning of a line; what is behind this many characters is none. */
  private static final int LOOKED_AT = 400;

  private static final Pattern QUOTE = Pattern.compile("^\\s{0,3}(>|\\|\\s).*");
  private static final Pattern ATTRIBUTION =
      pattern(
          "^\\s*(on|am|le|el|il|op|den|em)\\b.{5,200}\\b(wrote|writes|schrieb|a écrit|escribió"
              + "|ha scritto|schreef|skrev|escreveu)\\b.{0,120}:\\s*$");

  /** A mail program says the day in figures; "on Monday the surveyor wrote:" is the writer's. */
  private static final Pattern DATED = Pattern.compile(".*\\d.*");

  private static final Pattern SAID =
      pattern("^\\s*[^.!?]{3,120}\\b(wrote|schrieb|a écrit)\\s*:\\s*$");
  private static final Pattern ORIGINAL =
      pattern(
          "^\\s*[-_*]{2,}\\s*(original message|ursprüngliche nachricht|message d'origine"
              + "|mensaje original|oorspronkelijk bericht|reply above this line).*");
  private static final Pattern SENT_ON =
      pattern(
          "^\\s*(-{2,}\\s*)?(begin )?(forwarded message|weitergeleitete nachricht|message transféré"
              + "|mensaje reenviado|doorgestuurd bericht|fwd message)\\b.*");
  private static final Pattern FIELD =
      pattern(
          "^\\s*\\*?(from|sent|date|to|cc|subject|von|gesendet|datum|an|betreff|de|envoyé|à|objet"
              + "|enviado|para|asunto|van|verzonden|aan|onderwerp|fra|til|emne)\\s?:\\*?\\s+\\S.*");
  private static final Pattern FROM = pattern("^\\s*\\*?(from|von|de|van|fra)\\s?:.*");
  private static final Pattern RULE = Pattern.compile("^\\s*[_=*-]{5,}\\s*$");
  private static final Pattern DASHES = Pattern.compile("^--\\s?$");
  private static final Pattern DEVICE =
      pattern(
          "^\\s*(sent|written|typed) (from|with|on|using) (my|a|an|the) [^.]{2,40}\\.?$"
              + "|^\\s*(gesendet|von) (von )?meinem .{2,40}$|^\\s*envoyé (de|depuis) mon .{2,40}$"
              + "|^\\s*get .{2,20} for (android|ios|mobile).*$");
  private static final Pattern CLOSING =
      pattern(
          "^\\s*(with |my |our |many |all |very |so"
              + " )*(kind(est)?|best|warm(est)?|friendly)?\\s*(regards|wishes|greetings|yours("
              + " sincerely| faithfully| truly)?|sincerely|cheers|fair winds|thanks( again| in"
              + " advance| and regards)?|thank you( in advance)?|many"
              + " thanks|best|rgds|br|bw|mfg|mit freundlichen grüßen|viele"
              + " grüße|cordialement|saludos|groeten|hilsen|yours|love|bye)\\s*[,.!:)]*\\s*(from"
              + " .{2,40})?$");
  private static final Pattern POSTSCRIPT = pattern("^\\s*p\\.?\\s?p?\\.?\\s?s\\b\\.?:?.*");
  private static final Pattern SMALL_PRINT =
      pattern(
          ".*(intended (solely |only )?(for the )?(use of the )?(recipient|addressee)|this"
              + " (e-?mail|message) (and any|is|may|contains|has been)|confidential(ity)?"
              + " (notice|and)|legally privileged|virus[- ](free|checked|scanned)|consider the"
              + " environment before print|unsubscribe|registered in .{3,40} (no|number)|privacy"
              + " (policy|notice)).*");

  private final List<String> lines;
  private final List<Passage> passages = new ArrayList<>();
  private final List<String> now = new ArrayList<>();
  private final boolean forwarded;
  private Kind kind = Kind.OWN;

  private PassageSplitter(String text, boolean forwarded) {
    this.lines = List.of(text.split("\r?\n", -1));
    this.forwarded = forwarded;
  }

  /**
   * The passages of a text. One who sends a letter on without a word of his own means that letter:
   * it is read as if it had been written now; what that one sends on in its turn stays apart.
   *
   * @param forwarded whether the letter's subject says that it was sent on, so that a header within
   *     the text begins what was sent on and not what is answered
   */
  static List<Passage> of(String text, boolean forwarded) {
    List<Passage> found = new PassageSplitter(text, forwarded).split();
    if (found.stream().anyMatch(each -> each.kind() == Kind.OWN)) {
      return found;
    }
    return found.stream()
        .flatMap(each -> each.kind() == Kind.FORWARDED ? opened(each).stream() : Stream.of(each))
        .toList();
  }

  /** A letter that was sent on, its header apart. */
  private static List<Passage> opened(Passage sentOn) {
    PassageSplitter within = new PassageSplitter(sentOn.text(), true);
    int body = within.headerEnd();
    if (body == 0) {
      return List.of(sentOn);
    }
    String head = String.join("\n", within.lines.subList(0, body)).strip();
    String rest = String.join("\n", within.lines.subList(body, within.lines.size()));
    return Stream.concat(
            Stream.of(new Passage(Kind.FORWARDED, head)),
            new PassageSplitter(rest, true).split().stream())
        .toList();
  }

  /** Where what was sent on begins, below the lines that say whose it is. */
  private int headerEnd() {
    int at = 0;
    int end = 0;
    while (at < lines.size()
        && (lines.get(at).isBlank()
            || matches(SENT_ON, at)
            || matches(ORIGINAL, at)
            || matches(FIELD, at)
            || matches(RULE, at))) {
      at++;
      end = lines.get(at - 1).isBlank() ? end : at;
    }
    return end;
  }

  private static Pattern pattern(String text) {
    return Pattern.compile(text, Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
  }

  private List<Passage> split() {
    for (int i = 0; i < lines.size(); ) {
      int header = headerLength(i);
      if (matches(SENT_ON, i)) {
        take(i, lines.size(), Kind.FORWARDED);
        i = lines.size();
      } else if (matches(ORIGINAL, i) || header > 0) {
        take(i, lines.size(), forwarded ? Kind.FORWARDED : Kind.QUOTED);
        i = lines.size();
      } else if (quoteAhead(i) > 0) {
        int to = i + quoteAhead(i);
        take(i, to, Kind.QUOTED);
        i = to;
      } else if (signs(i)) {
        int to = signedTo(i);
        take(i, to, Kind.SIGNATURE);
        i = to;
      } else if (matches(SMALL_PRINT, i) && blankBefore(i)) {
        int to = paragraphEnd(i);
        take(i, to, Kind.NOTICE);
        i = to;
      } else {
        take(i, i + 1, Kind.OWN);
        i++;
      }
    }
    end();
    return List.copyOf(passages);
  }

  private boolean matches(Pattern pattern, int i) {
    if (i >= lines.size()) {
      return false;
    }
    String line = lines.get(i);
    return pattern
        .matcher(line.length() <= LOOKED_AT ? line : line.substring(0, LOOKED_AT))
        .matches();
  }

  /** How many lines of a quotation begin here, with the line that says whose it is; 0 for none. */
  private int quoteAhead(int i) {
    int at = i;
    if (!matches(QUOTE, at)) {
      int said = attribution(i);
      if (said == 0) {
        return 0;
      }
      at = i + said;
      while (at < lines.size() && lines.get(at).isBlank()) {
        at++;
      }
      if (!matches(QUOTE, at)) {
        return matches(ATTRIBUTION, i) && matches(DATED, i) ? lines.size() - i : 0;
      }
    }
    int last = at;
    for (int j = at; j < lines.size() && (matches(QUOTE, j) || lines.get(j).isBlank()); j++) {
      last = matches(QUOTE, j) ? j : last;
    }
    return last + 1 - i;
  }

  /** Over how many lines "On Monday X wrote:" stands here, also broken; 0 where it does not. */
  private int attribution(int i) {
    StringBuilder said = new StringBuilder();
    for (int j = i; j < Math.min(lines.size(), i + WRAPPED_LINES); j++) {
      if (lines.get(j).isBlank()) {
        return 0;
      }
      if (lines.get(j).length() > LOOKED_AT) {
        return 0;
      }
      said.append(j == i ? "" : " ").append(lines.get(j).strip());
      if (ATTRIBUTION.matcher(said).matches() || (j == i && SAID.matcher(said).matches())) {
        return j - i + 1;
      }
    }
    return 0;
  }

  /** How many lines of a header stand here, with a rule above it; 0 for none. */
  private int headerLength(int i) {
    int at = i;
    while (at - i < RULED_LINES
        && (matches(RULE, at) || (at > i && at < lines.size() && lines.get(at).isBlank()))) {
      at++;
    }
    int first = at;
    while (matches(FIELD, at)) {
      at++;
    }
    return at - first >= 2 && matches(FROM, first) ? at - i : 0;
  }

  private boolean signs(int i) {
    if (matches(DASHES, i) || matches(DEVICE, i)) {
      return true;
    }
    return matches(CLOSING, i) && signedTo(i) > i;
  }

  /** Up to where a signature goes that begins here: to what is quoted, or to a postscript. */
  private int signedTo(int i) {
    if (matches(DEVICE, i)) {
      return i + 1;
    }
    boolean dashes = matches(DASHES, i);
    int to = i + 1;
    int said = 0;
    while (to < lines.size()) {
      String line = lines.get(to);
      if (matches(POSTSCRIPT, to)
          || quoteAhead(to) > 0
          || headerLength(to) > 0
          || matches(ORIGINAL, to)
          || matches(SENT_ON, to)
          || (matches(SMALL_PRINT, to) && blankBefore(to))) {
        break;
      }
      said += line.isBlank() ? 0 : 1;
      if (!dashes && (said > SIGNED_LINES || line.strip().length() > SIGNED_LENGTH)) {
        return i;
      }
      to++;
    }
    return to;
  }

  private boolean blankBefore(int i) {
    return i == 0 || lines.get(i - 1).isBlank() || kind != Kind.OWN || matches(RULE, i - 1);
  }

  private int paragraphEnd(int i) {
    int to = i;
    while (to < lines.size() && !lines.get(to).isBlank()) {
      to++;
    }
    return to;
  }

  private void take(int from, int to, Kind of) {
    if (of != kind) {
      end();
      kind = of;
    }
    now.addAll(lines.subList(from, to));
  }

  private void end() {
    String text = String.join("\n", now).stripTrailing();
    String without = text.replaceFirst("^(\\s*\n)+", "");
    if (!without.isBlank()) {
      passages.add(new Passage(kind, without));
    }
    now.clear();
  }
}
