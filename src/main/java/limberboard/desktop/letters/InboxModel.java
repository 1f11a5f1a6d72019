package limberboard.desktop.letters;

import java.io.IOException;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Observed;
import limberboard.desktop.base.Session;
import limberboard.letters.inbox.LetterFile;
import limberboard.letters.inbox.LetterNote;

/**
 * The inbox: first the heads of all letters are read, then the letters are recognised, the newest
 * first, in small steps in the background. Urgent letters come first, then the newest. For the
 * event thread only.
 */
final class InboxModel extends Observed {
  private static final int HEADS = 200;
  private static final int LETTERS = 50;
  private static final Comparator<InboxRow> ORDER =
      Comparator.comparing(InboxRow::isUrgent)
          .reversed()
          .thenComparing(InboxRow::when, Comparator.reverseOrder())
          .thenComparing(InboxRow::name);

  private final Session session;
  private final Background background;
  private final LetterReading reading;
  private final Map<String, InboxRow> rows = new LinkedHashMap<>();

  /** Letters of which somebody has noted something else since. */
  private final Set<String> stale = new HashSet<>();

  private List<InboxRow> shown = List.of();
  private InboxFilter filter = InboxFilter.TO_DO;
  private String words = "";
  private Optional<String> chosen = Optional.empty();
  private boolean begun;
  private boolean listed;
  private boolean stepping;
  private long listing;
  private Workspace workspace;
  private LocalDate day;

  /** What came of one step. */
  private record Step(List<InboxRow> rows, Workspace workspace, boolean again) {}

  /**
   * An inbox that reads nothing yet.
   *
   * @param background reads and recognises
   */
  InboxModel(Session session, Background background, LetterReading reading) {
    this.session = session;
    this.background = background;
    this.reading = reading;
    this.workspace = session.workspace();
    this.day = session.today();
    session.onChange(this::sessionChanged);
  }

  /** Begins to read; later calls list the folder anew. */
  void look() {
    begun = true;
    long mine = ++listing;
    background.run(
        "Looking for letters",
        reading::list,
        files -> {
          if (mine == listing) {
            take(files);
          }
        });
  }

  /** The same where it has been begun. */
  void lookAgain() {
    if (begun) {
      look();
    }
  }

  private boolean isOpen(String name) {
    return chosen.equals(Optional.of(name));
  }

  /** What has been read of a letter stays known as long as its file does not change. */
  private void take(List<LetterFile> files) {
    Map<String, InboxRow> before = new LinkedHashMap<>(rows);
    rows.clear();
    stale.clear();
    for (LetterFile file : files) {
      InboxRow known = before.get(file.name());
      boolean same = known != null && known.file().changed().equals(file.changed());
      if (same && !known.file().noted().equals(file.noted()) && !isOpen(file.name())) {
        stale.add(file.name());
      }
      rows.put(
          file.name(),
          same
              ? new InboxRow(file, known.head(), known.note(), known.summary(), known.trouble())
              : InboxRow.of(file));
    }
    listed = true;
    if (chosen.filter(name -> !rows.containsKey(name)).isPresent()) {
      chosen = Optional.empty();
    }
    changed();
    step();
  }

  /** Another boat in the strip changes nothing here. */
  private void sessionChanged() {
    boolean other = session.workspace() != workspace || !session.today().equals(day);
    workspace = session.workspace();
    day = session.today();
    if (begun && other) {
      rows.replaceAll((name, row) -> row.unrecognised());
      changed();
      step();
    }
  }

  /** The next few letters, unless some are being looked at. */
  private void step() {
    if (stepping || !session.isRead()) {
      return;
    }
    Workspace from = workspace;
    LocalDate on = day;
    List<InboxRow> heads =
        rows.values().stream().filter(row -> row.head().isEmpty()).limit(HEADS).toList();
    if (!heads.isEmpty()) {
      step("Reading letters", () -> heads(heads, from));
      return;
    }
    List<InboxRow> others =
        rows.values().stream().filter(row -> stale.contains(row.name())).limit(LETTERS).toList();
    if (!others.isEmpty()) {
      step("Reading letters", () -> letters(others, from, on, true));
      return;
    }
    List<InboxRow> left =
        rows.values().stream()
            .filter(row -> row.summary().isEmpty())
            .sorted(Comparator.comparing(InboxRow::when).reversed())
            .limit(LETTERS)
            .toList();
    if (!left.isEmpty()) {
      step("Recognising letters", () -> letters(left, from, on, false));
    }
  }

  private void step(String doing, Callable<Step> work) {
    stepping = true;
    background.run(doing, work, this::took, () -> stepping = false);
  }

  private Step heads(List<InboxRow> from, Workspace read) throws IOException {
    return new Step(TimedStep.done(from, reading::head), read, false);
  }

  private Step letters(List<InboxRow> from, Workspace read, LocalDate on, boolean again)
      throws IOException {
    return new Step(TimedStep.done(from, row -> reading.summary(row, read, on)), read, again);
  }

  /** What was noted or changed meanwhile counts more than what the step found. */
  private void took(Step step) {
    stepping = false;
    for (InboxRow row : step.rows()) {
      InboxRow now = rows.get(row.name());
      boolean same = now != null && now.file().equals(row.file());
      boolean current = row.summary().isEmpty() || step.workspace() == workspace;
      stale.remove(row.name());
      if (same && step.again()) {
        rows.put(row.name(), row);
      } else if (same && current && now.summary().isEmpty()) {
        rows.put(row.name(), now.head().isPresent() ? row.noting(now.note()) : row);
      }
    }
    changed();
    step();
  }

  private void changed() {
    String wanted = words.strip().toLowerCase(Locale.ROOT);
    shown =
        rows.values().stream()
            .filter(row -> filter.takes(row) || isOpen(row.name()))
            .filter(row -> row.has(wanted))
            .sorted(ORDER)
            .toList();
    tell();
  }

  /** The letters that are shown, in order; the open one is always among them. */
  List<InboxRow> shown() {
    return shown;
  }

  /** How many letters there are. */
  int size() {
    return rows.size();
  }

  /** Whether the folder has been looked into and has no letter. */
  boolean isEmpty() {
    return listed && rows.isEmpty();
  }

  /** Where letters lie. */
  String place() {
    return reading.place();
  }

  /** How far looking at the letters has come, in words; empty once all are known. */
  String progress() {
    long heads = rows.values().stream().filter(row -> row.head().isPresent()).count();
    long known = rows.values().stream().filter(row -> row.summary().isPresent()).count();
    if (!listed) {
      return "Looking for letters …";
    } else if (heads < rows.size()) {
      return "Reading: " + heads + " of " + rows.size() + " letters.";
    } else if (known < rows.size()) {
      return "Recognising, the newest first: " + known + " of " + rows.size() + " letters.";
    }
    return "";
  }

  /** How many of the letters are said to be urgent. */
  long urgent() {
    return rows.values().stream().filter(InboxRow::isUrgent).count();
  }

  /** Names of the letters that tell of a fault that no page covers, as far as that is known. */
  List<String> uncovered() {
    return rows.values().stream()
        .filter(row -> row.summary().filter(InboxRow.Summary::uncovered).isPresent())
        .map(InboxRow::name)
        .toList();
  }

  InboxFilter filter() {
    return filter;
  }

  /** Shows other letters. */
  void filter(InboxFilter other) {
    filter = other;
    changed();
  }

  /** Shows only letters with these words in what is known of them. */
  void words(String wanted) {
    words = wanted;
    changed();
  }

  /** The letter that is open. */
  Optional<String> chosen() {
    return chosen;
  }

  /** Opens a letter. */
  void choose(String name) {
    if (!chosen.equals(Optional.of(name))) {
      chosen = Optional.of(name);
      changed();
    }
  }

  /** Something is noted of a letter. */
  void noted(String name, LetterNote note) {
    rows.computeIfPresent(name, (same, row) -> row.noting(note));
    changed();
  }

  /** A letter is understood otherwise. */
  void understood(String name, Understanding letter) {
    rows.computeIfPresent(name, (same, row) -> row.with(SummaryWords.of(letter)));
    changed();
  }
}
