package limberboard.notes;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Optional;
import limberboard.library.header.HeaderSource;
import limberboard.library.header.HeaderText;
import limberboard.library.header.YamlScalar;
import limberboard.notes.QuickNote.End;
import limberboard.notes.QuickNote.How;

/** A note as its file: a header as pages have, and the text. */
final class NoteText {
  private NoteText() {}

  static String of(QuickNote note) {
    StringBuilder text = new StringBuilder("---\n");
    text.append("written: ").append(note.written().truncatedTo(ChronoUnit.MINUTES)).append('\n');
    note.page().ifPresent(id -> line(text, "page", id));
    note.boat().ifPresent(id -> line(text, "boat", id));
    note.picture().ifPresent(name -> line(text, "picture", name));
    note.end()
        .ifPresent(
            end -> {
              line(text, "ended", end.day().toString());
              line(text, "how", end.how().word());
            });
    return text.append("---\n").append(note.text().strip()).append('\n').toString();
  }

  private static void line(StringBuilder text, String key, String value) {
    text.append(key).append(": ").append(YamlScalar.text(value)).append('\n');
  }

  /** Reads a note; a file that is written otherwise is a note all the same, with all it holds. */
  static QuickNote read(String id, String text) {
    Optional<HeaderText> parts = HeaderText.part(text.replace("\r\n", "\n"));
    HeaderSource keys = new HeaderSource(parts.map(HeaderText::header).orElse(""));
    Optional<LocalDateTime> written = keys(keys, "written").flatMap(NoteText::time);
    boolean whole = parts.isPresent() && written.isPresent();
    return new QuickNote(
        id,
        written.orElse(LocalDateTime.of(LocalDate.EPOCH, java.time.LocalTime.MIDNIGHT)),
        keys(keys, "page"),
        keys(keys, "boat"),
        keys(keys, "picture").filter(NoteText::isName),
        (whole ? parts.get().body() : text).strip(),
        end(keys));
  }

  private static boolean isName(String name) {
    return !name.contains("/") && !name.contains("\\") && !name.startsWith(".");
  }

  private static Optional<End> end(HeaderSource keys) {
    Optional<LocalDate> day = keys(keys, "ended").flatMap(NoteText::day);
    Optional<How> how =
        keys(keys, "how")
            .flatMap(
                word ->
                    Arrays.stream(How.values())
                        .filter(each -> each.word().equals(word))
                        .findFirst());
    return day.isPresent() && how.isPresent()
        ? Optional.of(new End(day.get(), how.get()))
        : Optional.empty();
  }

  private static Optional<String> keys(HeaderSource keys, String key) {
    return keys.value(key).orElse(null) instanceof HeaderSource.One one && !one.text().isBlank()
        ? Optional.of(one.text())
        : Optional.empty();
  }

  private static Optional<LocalDateTime> time(String text) {
    try {
      return Optional.of(LocalDateTime.parse(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  private static Optional<LocalDate> day(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
