package limberboard.letters.inbox;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import limberboard.letters.answer.DraftLine;

/** A note as YAML. All texts stand in quotes, so that none of them can be read as anything else. */
final class LetterNoteText {
  /** A line of this many characters is written as two. */
  static final int LONGEST = 4_000;

  private LetterNoteText() {}

  /** The text of a note's file. */
  static String of(LetterNote note) {
    StringBuilder text = new StringBuilder();
    text.append("state: ").append(note.state().word()).append('\n');
    note.since().ifPresent(day -> text.append("since: ").append(day).append('\n'));
    LetterSaid said = note.said();
    said.boat().ifPresent(boat -> text.append("boat: ").append(quoted(boat)).append('\n'));
    said.about().ifPresent(kind -> text.append("about: ").append(quoted(kind)).append('\n'));
    said.symptoms().ifPresent(all -> text.append("symptoms: ").append(list(all)).append('\n'));
    said.urgent().ifPresent(all -> text.append("urgent: ").append(list(all)).append('\n'));
    if (!said.answers().isEmpty()) {
      text.append("answers:\n");
      new TreeMap<>(said.answers()).forEach((symptom, given) -> answers(symptom, given, text));
    }
    if (!note.edits().isEmpty()) {
      text.append("pieces:\n");
      note.edits().forEach(edit -> edit(edit, text));
    }
    return text.toString();
  }

  private static void answers(String symptom, Map<String, String> given, StringBuilder text) {
    text.append("  ").append(quoted(symptom)).append(":\n");
    new TreeMap<>(given)
        .forEach(
            (check, answer) ->
                text.append("    ")
                    .append(quoted(check))
                    .append(": ")
                    .append(quoted(answer))
                    .append('\n'));
  }

  private static void edit(KeptEdit edit, StringBuilder text) {
    text.append("  - piece: ").append(quoted(edit.piece())).append('\n');
    text.append("    after: ").append(quoted(edit.after())).append('\n');
    text.append("    text:\n");
    for (String line : edit.text().split("\n", -1)) {
      lines(line, "", text);
    }
    text.append(edit.written().isEmpty() ? "    written: []\n" : "    written:\n");
    for (DraftLine line : edit.written()) {
      lines(line.text(), line.kind().name().toLowerCase(java.util.Locale.ROOT) + " ", text);
    }
  }

  /** One line; where it is very long as several, each but the last with a mark that it goes on. */
  private static void lines(String line, String kind, StringBuilder text) {
    String left = line;
    while (left.length() > LONGEST) {
      int end = Character.isHighSurrogate(left.charAt(LONGEST - 1)) ? LONGEST - 1 : LONGEST;
      text.append("      - ").append(quoted("+" + kind + left.substring(0, end))).append('\n');
      left = left.substring(end);
    }
    text.append("      - ").append(quoted("." + kind + left)).append('\n');
  }

  private static String list(List<String> all) {
    return all.stream().map(LetterNoteText::quoted).collect(Collectors.joining(", ", "[", "]"));
  }

  private static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c == '"' || c == '\\') {
                quoted.append('\\').appendCodePoint(c);
              } else if (isPlain(c)) {
                quoted.appendCodePoint(c);
              } else {
                quoted
                    .append("\\U")
                    .append(Integer.toHexString(c | 1 << 28).replaceFirst("1", "0"));
              }
            });
    return quoted.append('"').toString();
  }

  private static boolean isPlain(int c) {
    boolean text = !Character.isISOControl(c) && c != 0x2028 && c != 0x2029 && c != 0xFEFF;
    return text && (c < 0xD800 || c > 0xDFFF) && c < 0xFFFE;
  }
}
