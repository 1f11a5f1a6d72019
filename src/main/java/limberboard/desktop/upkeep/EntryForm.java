package limberboard.desktop.upkeep;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import limberboard.boat.LogEntry;
import limberboard.desktop.base.Days;
import limberboard.library.DayText;

/**
 * An entry for the log while it is typed: what is in its fields and what is wrong with it, without
 * Swing. For the event thread only.
 */
final class EntryForm {
  private static final double MOST_HOURS = 1e6;
  private final String work;
  private final Optional<String> of;
  private final LocalDate today;
  private final List<String> uses;
  private final Map<Field, String> texts = new LinkedHashMap<>();

  /**
   * A field.
   *
   * @param kind what is typed
   * @param use of a count, what is counted; otherwise empty
   */
  record Field(Kind kind, String use) {
    static final Field DAY = new Field(Kind.DAY, "");
    static final Field HOURS = new Field(Kind.HOURS, "");
    static final Field NOTE = new Field(Kind.NOTE, "");

    static Field count(String use) {
      return new Field(Kind.COUNT, use);
    }

    /** What a person reads. */
    String label() {
      return switch (kind) {
        case DAY -> "Day";
        case HOURS -> "Engine hours";
        case COUNT -> use.substring(0, 1).toUpperCase(java.util.Locale.ROOT) + use.substring(1);
        case NOTE -> "Note";
      };
    }
  }

  /** What is typed into a field. */
  enum Kind {
    /** The day it was done. */
    DAY,
    /** The hour meter's reading. */
    HOURS,
    /** How often something was used since the line before. */
    COUNT,
    /** Anything to remember. */
    NOTE
  }

  /**
   * An empty form for today.
   *
   * @param work a procedure id or an event
   * @param of the work that was looked at again, if that is what it is for
   * @param today the last day that can be logged
   * @param uses what is counted on the boat
   */
  EntryForm(String work, Optional<String> of, LocalDate today, List<String> uses) {
    this.work = work;
    this.of = of;
    this.today = today;
    this.uses = List.copyOf(uses);
    texts.put(Field.DAY, Days.written(today));
  }

  String work() {
    return work;
  }

  /** The work that was looked at again. */
  Optional<String> of() {
    return of;
  }

  /** Its fields, from the top. */
  List<Field> fields() {
    List<Field> fields = new ArrayList<>(List.of(Field.DAY, Field.HOURS));
    uses.forEach(use -> fields.add(Field.count(use)));
    fields.add(Field.NOTE);
    return List.copyOf(fields);
  }

  String text(Field field) {
    return texts.getOrDefault(field, "");
  }

  void set(Field field, String text) {
    texts.put(field, text);
  }

  /** The same with other work, keeping what was typed. */
  EntryForm with(String otherWork) {
    EntryForm other = new EntryForm(otherWork, Optional.empty(), today, uses);
    other.texts.putAll(texts);
    return other;
  }

  /** What is wrong in a field, and what would be right; empty when nothing is. */
  String problem(Field field) {
    String text = text(field).strip();
    return switch (field.kind()) {
      case DAY -> dayProblem(text);
      case HOURS ->
          text.isEmpty() || hours(text).isPresent() ? "" : "Write the meter's reading: 356.5";
      case COUNT -> text.isEmpty() || count(text).isPresent() ? "" : "Write a whole number";
      case NOTE -> "";
    };
  }

  private String dayProblem(String text) {
    DayText.Read read = new DayText(today).read(text);
    return read.day().filter(on -> on.isAfter(today)).isPresent()
        ? "That lies in the future; log work once it is done."
        : read.why();
  }

  /** What a field is read as where that is not plain from what was typed; empty otherwise. */
  String told(Field field) {
    if (field.kind() != Kind.DAY || !problem(field).isEmpty()) {
      return "";
    }
    LocalDate on = new DayText(today).read(text(field)).day().orElseThrow();
    return Days.written(on).equals(text(field).strip()) ? "" : "Read as " + Days.written(on) + ".";
  }

  /** The entry; empty while something is wrong. */
  Optional<LogEntry> entry() {
    if (fields().stream().anyMatch(field -> !problem(field).isEmpty())) {
      return Optional.empty();
    }
    Map<String, Integer> counts = new LinkedHashMap<>();
    uses.forEach(
        use -> count(text(Field.count(use)).strip()).ifPresent(number -> counts.put(use, number)));
    return Optional.of(
        new LogEntry(
            new DayText(today).read(text(Field.DAY)).day().orElseThrow(),
            work,
            hours(text(Field.HOURS).strip()),
            counts,
            text(Field.NOTE).strip(),
            of,
            0));
  }

  private static OptionalDouble hours(String text) {
    try {
      double hours = Double.parseDouble(text.replace(',', '.'));
      return hours >= 0 && hours < MOST_HOURS ? OptionalDouble.of(hours) : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  private static OptionalInt count(String text) {
    try {
      int count = Integer.parseInt(text);
      return count >= 0 ? OptionalInt.of(count) : OptionalInt.empty();
    } catch (NumberFormatException e) {
      return OptionalInt.empty();
    }
  }
}
