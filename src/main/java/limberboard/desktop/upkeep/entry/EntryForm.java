package limberboard.desktop.upkeep.entry;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import limberboard.boat.LogCount;
import limberboard.boat.LogEntry;
import limberboard.boat.LogHours;
import limberboard.boat.LogNote;
import limberboard.boat.Typed;
import limberboard.words.DayText;
import limberboard.words.Sentences;

/**
 * Entries for the log while they are typed: what is in the fields and what is wrong with it,
 * without Swing. Several pieces of work done on one day share the day, the hour meter's reading and
 * what was counted; each has a note of its own. For the event thread only.
 */
public final class EntryForm {
  private final List<Doing> doings;
  private final LocalDate today;
  private final List<String> uses;
  private final Map<Field, String> begun = new LinkedHashMap<>();
  private final Map<Field, String> texts = new LinkedHashMap<>();

  /**
   * What was done.
   *
   * @param work a procedure id or an event
   * @param of the work that was looked at again, if that is what was done
   * @param title what a person reads
   */
  public record Doing(String work, Optional<String> of, String title) {
    private String key() {
      return work + of.map(id -> " " + id).orElse("");
    }
  }

  /**
   * A field.
   *
   * @param kind what is typed
   * @param of of a count, what is counted; of a note to one of several works, that work; otherwise
   *     empty
   */
  public record Field(Kind kind, String of) {
    public static final Field DAY = new Field(Kind.DAY, "");
    public static final Field HOURS = new Field(Kind.HOURS, "");
    public static final Field NOTE = new Field(Kind.NOTE, "");

    public static Field count(String use) {
      return new Field(Kind.COUNT, use);
    }
  }

  /** What is typed into a field. */
  public enum Kind {
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
   * @param doings what was done; at least one
   * @param today the last day that can be logged
   * @param uses what is counted on the boat
   */
  public EntryForm(List<Doing> doings, LocalDate today, List<String> uses) {
    this.doings = List.copyOf(doings);
    this.today = today;
    this.uses = List.copyOf(uses);
    begin(Field.DAY, DayText.written(today));
  }

  /** A form for one piece of work. */
  public EntryForm(String work, Optional<String> of, LocalDate today, List<String> uses) {
    this(List.of(new Doing(work, of, "")), today, uses);
  }

  /** A form filled with an entry, to correct it. */
  public static EntryForm of(LogEntry entry, LocalDate today, List<String> uses) {
    List<String> counted = new ArrayList<>(uses);
    entry.uses().keySet().stream().filter(use -> !uses.contains(use)).forEach(counted::add);
    EntryForm form = new EntryForm(entry.work(), entry.of(), today, counted);
    form.begin(Field.DAY, DayText.written(entry.date()));
    form.begin(Field.HOURS, EntryWords.hours(entry.engineHours()));
    entry.uses().forEach((use, count) -> form.begin(Field.count(use), count.toString()));
    form.begin(Field.NOTE, entry.note());
    return form;
  }

  private void begin(Field field, String text) {
    begun.put(field, text);
    texts.put(field, text);
  }

  /** Fills a note in, to be read over before it is written. */
  public EntryForm noting(String note) {
    begin(Field.NOTE, note);
    return this;
  }

  public String work() {
    return doings.get(0).work();
  }

  /** The work that was looked at again. */
  public Optional<String> of() {
    return doings.get(0).of();
  }

  /** What was done. */
  public List<Doing> doings() {
    return doings;
  }

  /** Whether anything was typed that is not there from the beginning. */
  public boolean isTouched() {
    return texts.entrySet().stream()
        .anyMatch(
            typed -> !typed.getValue().strip().equals(begun.getOrDefault(typed.getKey(), "")));
  }

  /** Its fields, from the top. */
  public List<Field> fields() {
    List<Field> fields = new ArrayList<>(List.of(Field.DAY, Field.HOURS));
    uses.forEach(use -> fields.add(Field.count(use)));
    doings.forEach(doing -> fields.add(note(doing)));
    return List.copyOf(fields);
  }

  private Field note(Doing doing) {
    return doings.size() == 1 ? Field.NOTE : new Field(Kind.NOTE, doing.key());
  }

  /** What a person reads beside a field. */
  public String label(Field field) {
    return switch (field.kind()) {
      case DAY -> "Day";
      case HOURS -> "Engine hours";
      case COUNT -> Sentences.capital(field.of());
      case NOTE ->
          doings.stream()
              .filter(doing -> doing.key().equals(field.of()))
              .map(Doing::title)
              .findFirst()
              .orElse("Note");
    };
  }

  public String text(Field field) {
    return texts.getOrDefault(field, "");
  }

  public void set(Field field, String text) {
    texts.put(field, text);
  }

  /** The same with other work, keeping what was typed. */
  public EntryForm with(String otherWork, Optional<String> otherOf) {
    EntryForm other = new EntryForm(otherWork, otherOf, today, uses);
    other.begun.putAll(begun);
    other.texts.putAll(texts);
    return other;
  }

  /** What is wrong in a field, and what would be right; empty when nothing is. */
  public String problem(Field field) {
    String text = text(field);
    return switch (field.kind()) {
      case DAY -> dayProblem(text);
      case HOURS -> text.isBlank() ? "" : wrong(LogHours.typed(text));
      case COUNT -> text.isBlank() ? "" : wrong(LogCount.read(text));
      case NOTE -> wrong(LogNote.read(text));
    };
  }

  private static String wrong(Typed<?> typed) {
    return typed
        .bad()
        .map(bad -> Sentences.capital(bad.wrong() + ": " + bad.right()) + ".")
        .orElse("");
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
    LocalDate on = day();
    return DayText.written(on).equals(text(field).strip())
        ? ""
        : "Read as " + DayText.written(on) + ".";
  }

  private LocalDate day() {
    return new DayText(today).read(text(Field.DAY)).day().orElseThrow();
  }

  /** The entry of a form for one piece of work; empty while something is wrong. */
  public Optional<LogEntry> entry() {
    return entries().stream().findFirst();
  }

  /** The entries, what was counted standing in the first; none while something is wrong. */
  public List<LogEntry> entries() {
    if (fields().stream().anyMatch(field -> !problem(field).isEmpty())) {
      return List.of();
    }
    Map<String, Integer> counts = new LinkedHashMap<>();
    uses.forEach(
        use ->
            LogCount.read(text(Field.count(use)))
                .good()
                .ifPresent(number -> counts.put(use, number)));
    List<LogEntry> entries = new ArrayList<>();
    for (Doing doing : doings) {
      entries.add(
          new LogEntry(
              day(),
              doing.work(),
              hours(),
              entries.isEmpty() ? counts : Map.of(),
              LogNote.read(text(note(doing))).good().orElse(""),
              doing.of(),
              0));
    }
    return List.copyOf(entries);
  }

  private OptionalDouble hours() {
    return LogHours.typed(text(Field.HOURS))
        .good()
        .map(OptionalDouble::of)
        .orElseGet(OptionalDouble::empty);
  }
}
