package limberboard.desktop.write.symptom;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import limberboard.desktop.base.Observed;
import limberboard.desktop.tree.TreeModel;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.trace.Fault;
import limberboard.trace.Trace;
import limberboard.trace.review.TriedCause;
import limberboard.writing.PageText;
import limberboard.writing.symptom.OutlinedPage;
import limberboard.writing.symptom.SymptomRead;
import limberboard.writing.symptom.SymptomTable;

/**
 * A symptom that is being written as a table, without Swing: its text, the table of it, and what
 * comes of it: findings, the tree for the chosen boat, and how each cause is traced. For the event
 * thread only; everything slow is done in the background, and of that only the newest counts.
 */
public final class SymptomModel extends Observed {
  private static final int MOST_STEPS_BACK = 500;
  private final SymptomTools tools;
  private final Consumer<PageText> changed;
  private final SymptomWork work;
  private final TreeModel tree;
  private final Deque<PageText> before = new ArrayDeque<>();
  private PageText page = PageText.NONE;
  private SymptomRead read = new SymptomRead.Unreadable("No page is open.", "Open a symptom.");
  private boolean tableWanted;
  private int turn;
  private String shown = "";
  private String said = "";

  /**
   * An editor without a page.
   *
   * @param changed takes the page after each change that is made here
   */
  public SymptomModel(SymptomTools tools, Consumer<PageText> changed) {
    this.tools = tools;
    this.changed = changed;
    this.tree = new TreeModel(tools.trees());
    this.work = new SymptomWork(tools, this::worked);
    tools.session().onChange(this::readAgain);
  }

  /**
   * Shows a page, or the same one after it was changed elsewhere.
   *
   * @param id the page's id
   * @param text its text
   * @param reading reads texts of this page against the others as they are now
   */
  public void show(String id, PageText text, SymptomReading reading) {
    boolean renewed = work.reads(reading);
    boolean other = !id.equals(shown);
    shown = id;
    if (other) {
      before.clear();
      tableWanted = false;
      turn++;
      said = "";
    }
    if (other || !text.equals(page)) {
      take(text);
    } else if (renewed) {
      readAgain();
    }
  }

  private void take(PageText text) {
    page = text;
    read = SymptomTable.read(text);
    readAgain();
    tell();
  }

  private void readAgain() {
    work.begin(page, read);
  }

  /** After a round of work in the background. */
  private void worked() {
    tree.follow(work.fault().map(Trace::begin));
    tell();
  }

  /** The page. */
  public PageText page() {
    return page;
  }

  /** The table, or why there is none. */
  public SymptomRead read() {
    return read;
  }

  /** The table; empty while the header cannot be read. */
  public Optional<SymptomTable> table() {
    return read instanceof SymptomTable table ? Optional.of(table) : Optional.empty();
  }

  /** Counts the pages that were opened: another number, another page. */
  int turn() {
    return turn;
  }

  /** What it is made with. */
  SymptomTools tools() {
    return tools;
  }

  /** The tree for the chosen boat. */
  public TreeModel tree() {
    return tree;
  }

  /** The symptom on the chosen boat; empty while it cannot be traced there. */
  public Optional<Fault> fault() {
    return work.fault();
  }

  /** Why there is no tree, or what it takes for granted; empty when there is nothing to say. */
  public String treeNote() {
    return work.note();
  }

  /** What is wrong, or could be better. */
  List<SymptomFinding> findings() {
    return work.findings();
  }

  /** How many findings there are. */
  public int findingCount() {
    return work.findings().size();
  }

  /** Every cause as it is traced on the chosen boat. */
  public List<TriedCause> tried() {
    return work.tried();
  }

  /** Whether something is still being worked out. */
  public boolean isWorking() {
    return work.isWorking();
  }

  /** What became of the last change, where there is something to say: why it was refused. */
  public String said() {
    return said;
  }

  /** A change to the table. */
  @FunctionalInterface
  interface Edit {
    /** The page with the change. */
    PageText of(CellEdits edits) throws Unchangeable;
  }

  /** Makes a change; whether it was made. Where it was refused, {@link #said} says why. */
  boolean edit(Edit edit) {
    if (table().isEmpty()) {
      return false;
    }
    try {
      change(edit.of(new CellEdits(table().get())));
      return true;
    } catch (Unchangeable e) {
      say(e.getMessage());
      return false;
    }
  }

  private void say(String words) {
    said = words;
    tell();
  }

  private void change(PageText now) {
    said = "";
    if (now.equals(page)) {
      tell();
      return;
    }
    before.push(page);
    if (before.size() > MOST_STEPS_BACK) {
      before.removeLast();
    }
    take(now);
    changed.accept(now);
  }

  /** Takes the last change back that was made here; without effect when there is none. */
  public void undo() {
    if (!before.isEmpty()) {
      PageText was = before.pop();
      said = "Taken back.";
      take(was);
      changed.accept(was);
    }
  }

  /** Whether an outline is typed rather than the table filled: there is no table yet. */
  public boolean isOutlining() {
    return table().filter(SymptomTable::isEmpty).isPresent() && !tableWanted;
  }

  /** Fills the empty table instead of typing an outline. */
  public void wantTable() {
    tableWanted = true;
    tell();
  }

  /** The outline, as it stands in the page's body. */
  public OutlinedPage outlined() {
    return new OutlinedPage(page);
  }

  /** Takes the lines of the outline. */
  public void outline(String lines) {
    if (!lines.strip().equals(outlined().lines())) {
      PageText now = outlined().typed(lines);
      page = now;
      read = SymptomTable.read(now);
      changed.accept(now);
      tell();
    }
  }

  /** Makes the table of the outline; whether that was possible. */
  public boolean makeTable() {
    try {
      List<String> left = new ArrayList<>();
      outlined().outline().problems().forEach(each -> left.add(each.wrong()));
      change(outlined().table());
      say(left.isEmpty() ? "" : "Left out: " + String.join("; ", left) + ".");
      return true;
    } catch (Unchangeable e) {
      say(e.getMessage());
      return false;
    }
  }
}
