package limberboard.desktop.write.state;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.desktop.base.Observed;
import limberboard.findings.FileRepair;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.writing.PageText;
import limberboard.writing.save.SaveOutcome;
import limberboard.writing.typing.MarkedProblem;
import limberboard.writing.typing.PageTyping;

/** A page that is being written: its text, and what its file held. For the event thread only. */
public final class OpenPage extends Observed {
  private final Kind kind;
  private String path;
  private Optional<PageText> saved;
  private PageText text;
  private Optional<Typist> typist = Optional.empty();
  private OptionalInt wanted = OptionalInt.empty();
  private Optional<PageTyping> typing = Optional.empty();
  private Optional<Checked> checked = Optional.empty();
  private Proofread proofread = Proofread.NOTHING;
  private Optional<SaveOutcome.Changed> clash = Optional.empty();

  /**
   * A page.
   *
   * @param path of its file, relative to the workspace
   * @param kind its kind
   * @param saved what its file holds; empty when it is not there yet
   * @param text what is typed
   */
  OpenPage(String path, Kind kind, Optional<PageText> saved, PageText text) {
    this.path = path;
    this.kind = kind;
    this.saved = saved;
    this.text = text;
  }

  /** The path of its file, relative to the workspace. */
  public String path() {
    return path;
  }

  /** Its kind. */
  public Kind kind() {
    return kind;
  }

  /** Its id. */
  public String id() {
    return path.substring(path.lastIndexOf('/') + 1).replaceFirst("\\.md$", "");
  }

  /** Its title as it is typed; its id while it has none. */
  public String title() {
    return page().map(Page::title).orElse(id());
  }

  /** What its file held when it was last read or saved; empty when it was not there. */
  public Optional<PageText> saved() {
    return saved;
  }

  /** Its text to the letter. */
  public PageText text() {
    return text;
  }

  /** Whether there is something to be saved. */
  public boolean isChanged() {
    return !saved.equals(Optional.of(text));
  }

  /** What was found in the text when it was last looked at. */
  public Optional<Checked> checked() {
    return checked;
  }

  /** The page as it is typed; empty while something that it must have is missing or wrong. */
  public Optional<Page<?>> page() {
    return checked.flatMap(found -> found.read().page());
  }

  /** What is wrong with it. */
  public List<MarkedProblem> problems() {
    return checked.map(found -> found.read().problems()).orElse(List.of());
  }

  /** What is wrong with it, and what a proofreader finds in it. */
  public List<TextFinding> findings() {
    List<TextFinding> all = new ArrayList<>();
    for (MarkedProblem each : problems()) {
      Optional<FileRepair> repair = Optional.ofNullable(proofread.repairs().get(each.problem()));
      all.add(new TextFinding(each, Optional.empty(), repair));
    }
    all.addAll(proofread.remarks());
    return all;
  }

  /** What stands in its file, and differs from the text, where somebody else has changed it. */
  public Optional<SaveOutcome.Changed> clash() {
    return clash;
  }

  /** Says where its text is typed. */
  public void typedIn(Typist where) {
    typist = Optional.of(where);
    wanted.ifPresent(at -> where.goTo(at, at));
    wanted = OptionalInt.empty();
  }

  /** Where the caret is; at the beginning while the text is not shown. */
  public int caret() {
    return typist.map(Typist::caret).orElseGet(() -> wanted.orElse(0));
  }

  /** Goes to a stretch of the text, as far as it is still there. */
  public void goTo(int from, int to) {
    int length = text.plain().length();
    int begin = Math.min(from, length);
    if (typist.isPresent()) {
      typist.get().goTo(begin, Math.max(begin, Math.min(to, length)));
    } else {
      wanted = OptionalInt.of(begin);
    }
  }

  /** Takes what is typed. */
  void typed(String plain) {
    text = text.edited(plain);
    tell();
  }

  /** Takes what its file holds now. */
  void saved(Optional<PageText> held) {
    saved = held;
    clash = Optional.empty();
    tell();
  }

  /** Where its text is typed, once it is shown. */
  Optional<Typist> typist() {
    return typist;
  }

  /** Takes a text to the letter, of which the plain text is there already. */
  void exactly(PageText other) {
    text = other;
    tell();
  }

  void clash(Optional<SaveOutcome.Changed> other) {
    clash = other;
    tell();
  }

  void checked(Checked found) {
    checked = Optional.of(found);
    tell();
  }

  void proofread(Proofread found) {
    if (!found.equals(proofread)) {
      proofread = found;
      tell();
    }
  }

  /** Takes the path that its file has got. */
  void moved(String other) {
    path = other;
    typing = Optional.empty();
    tell();
  }

  Optional<PageTyping> typing() {
    return typing;
  }

  void typing(Optional<PageTyping> reader) {
    typing = reader;
  }
}
