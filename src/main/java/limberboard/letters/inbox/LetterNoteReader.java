package limberboard.letters.inbox;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import limberboard.letters.answer.DraftLine;
import limberboard.library.header.YamlTree;
import limberboard.library.problem.Problem;
import limberboard.library.problem.Report;

/** Reads notes from YAML. What cannot be read is a problem with its line, and the rest is read. */
final class LetterNoteReader {
  private static final List<String> KEYS =
      List.of("state", "since", "boat", "about", "symptoms", "urgent", "answers", "pieces");
  private final ObjectNode root;
  private final Report report;

  private LetterNoteReader(YamlTree tree) {
    root = tree.root();
    report = tree.report();
  }

  /**
   * A note and what is wrong with its file.
   *
   * @param note the note, as far as it can be read
   * @param problems what is wrong; with any, the file must not be written over
   */
  record Read(LetterNote note, List<Problem> problems) {}

  /** Reads a note. */
  static Read read(String file, String text) {
    LetterNoteReader reader = new LetterNoteReader(YamlTree.read(file, text, 1));
    LetterNote note = reader.note();
    return new Read(note, reader.report.problems());
  }

  private LetterNote note() {
    root.fieldNames()
        .forEachRemaining(
            key -> {
              if (!KEYS.contains(key)) {
                report.error("/" + key, "is no key of a letter's state", "take it away");
              }
            });
    LetterSaid said =
        new LetterSaid(
            text(root, "boat"),
            text(root, "about"),
            list(root, "symptoms"),
            list(root, "urgent"),
            answers());
    return new LetterNote(state(), since(), said, edits());
  }

  private LetterState state() {
    String word = text(root, "state").orElse(LetterState.NEW.word());
    return Arrays.stream(LetterState.values())
        .filter(state -> state.word().equals(word))
        .findFirst()
        .orElseGet(
            () -> {
              report.error(
                  "/state", "is not a state of a letter", "write new, waiting, answered or closed");
              return LetterState.NEW;
            });
  }

  private Optional<LocalDate> since() {
    Optional<String> day = text(root, "since");
    try {
      return day.map(LocalDate::parse);
    } catch (DateTimeException e) {
      report.error("/since", "is not a day", "write it as 2026-11-29");
      return Optional.empty();
    }
  }

  private static Optional<String> text(JsonNode node, String key) {
    return Optional.of(node.path(key)).filter(JsonNode::isTextual).map(JsonNode::asText);
  }

  private static Optional<List<String>> list(JsonNode node, String key) {
    if (!node.path(key).isArray()) {
      return Optional.empty();
    }
    List<String> all = new ArrayList<>();
    node.path(key).forEach(each -> all.add(each.asText()));
    return Optional.of(all);
  }

  private Map<String, Map<String, String>> answers() {
    Map<String, Map<String, String>> all = new LinkedHashMap<>();
    for (Map.Entry<String, JsonNode> symptom : root.path("answers").properties()) {
      Map<String, String> given = new LinkedHashMap<>();
      symptom.getValue().properties().forEach(e -> given.put(e.getKey(), e.getValue().asText()));
      all.put(symptom.getKey(), Map.copyOf(given));
    }
    return all;
  }

  private List<KeptEdit> edits() {
    List<KeptEdit> edits = new ArrayList<>();
    for (JsonNode each : root.path("pieces")) {
      Optional<String> piece = text(each, "piece");
      if (piece.isEmpty()) {
        report.error("/pieces/" + edits.size(), "does not say which piece", "add piece: its id");
        continue;
      }
      List<DraftLine> written = new ArrayList<>();
      for (String line : joined(list(each, "written").orElse(List.of()), true)) {
        written.add(line(line));
      }
      String text = String.join("\n", joined(list(each, "text").orElse(List.of()), false));
      edits.add(new KeptEdit(piece.get(), text(each, "after").orElse(""), text, written));
    }
    return edits;
  }

  /** Lines that were written as several because they are long. */
  private static List<String> joined(List<String> lines, boolean kinds) {
    List<String> all = new ArrayList<>();
    StringBuilder now = new StringBuilder();
    for (String line : lines) {
      String rest = line.isEmpty() ? "" : line.substring(1);
      boolean goesOn = !now.isEmpty() && kinds;
      now.append(goesOn ? rest.substring(rest.indexOf(' ') + 1) : rest);
      if (!line.startsWith("+")) {
        all.add(now.toString());
        now.setLength(0);
      }
    }
    return all;
  }

  private static DraftLine line(String written) {
    int space = written.indexOf(' ');
    String kind = space < 0 ? written : written.substring(0, space);
    return new DraftLine(
        Arrays.stream(DraftLine.Kind.values())
            .filter(each -> each.name().toLowerCase(Locale.ROOT).equals(kind))
            .findFirst()
            .orElse(DraftLine.Kind.PARAGRAPH),
        space < 0 ? "" : written.substring(space + 1));
  }
}
