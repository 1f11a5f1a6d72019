package limberboard.proofread.rule;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.file.TradeWords.Agreed;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.TextPiece;
import limberboard.proofread.text.TextPieces;
import limberboard.proofread.text.ThingNames;

/** What is around a page that is read: the library, and the words of the trade. For one thread. */
public final class Surroundings {
  private static final int MOST_KEPT = 1_000;
  private final Library library;
  private final TradeWords words;
  private final HeaderLines lines;
  private final ThingNames things;
  private final Map<String, List<ReadWork>> jobs = new HashMap<>();
  private final Map<String, List<TextPiece>> passages = new HashMap<>();
  private final Map<List<String>, List<Phrase>> phrases;
  private final Others others;

  /** What pages give as a figure that has to agree. */
  @FunctionalInterface
  private interface Others {
    List<Statement> of(Agreed agreed);
  }

  /**
   * Makes the surroundings of all pages of a library.
   *
   * @param words what is looked for
   * @param lines where keys of headers stand
   */
  public Surroundings(Library library, TradeWords words, HeaderLines lines) {
    this.library = library;
    this.words = words;
    this.lines = lines;
    Map<String, List<String>> more = new HashMap<>();
    words.names().forEach(each -> more.put(each.thing(), each.words()));
    this.things = new ThingNames(library, words.common(), more);
    this.phrases = new IdentityHashMap<>();
    Map<Agreed, List<Statement>> said = new HashMap<>();
    this.others =
        agreed -> {
          if (said.isEmpty()) {
            said.putAll(FiguresDiffer.statements(this));
          }
          return said.getOrDefault(agreed, List.of());
        };
  }

  private Surroundings(Surroundings around, Page<?> typed, Library library, HeaderLines lines) {
    this.library = library;
    this.words = around.words;
    this.lines = lines;
    this.things = around.things;
    this.phrases = around.phrases;
    this.others =
        agreed ->
            Stream.concat(
                    around.others.of(agreed).stream()
                        .filter(said -> !said.page().id().equals(typed.id())),
                    Statement.of(typed, agreed, this).stream())
                .toList();
  }

  /**
   * The same around a page that is being typed: what others say stays as it was gone through once.
   *
   * @param typed the page as it is now
   * @param with all pages with this one as it is now
   * @param where where the keys of its header stand now
   */
  public Surroundings around(Page<?> typed, Library with, HeaderLines where) {
    return new Surroundings(this, typed, with, where);
  }

  /** The library. */
  public Library library() {
    return library;
  }

  /** What is looked for. */
  public TradeWords words() {
    return words;
  }

  /** What materials and tools are called. */
  public ThingNames things() {
    return things;
  }

  /** The work on a page. */
  public List<ReadWork> jobs(Page<?> page) {
    forget(jobs);
    return jobs.computeIfAbsent(page.id(), none -> ReadWork.of(page, passages(page), library));
  }

  /** The passages of a page. */
  public List<TextPiece> passages(Page<?> page) {
    forget(passages);
    return passages.computeIfAbsent(page.id(), none -> TextPieces.of(page));
  }

  /** Pages that were gone through are gone through anew rather than all of them kept. */
  private static void forget(Map<String, ?> pages) {
    if (pages.size() > MOST_KEPT) {
      pages.clear();
    }
  }

  /** The phrases of a list of the words of the trade, made once. */
  List<Phrase> phrases(List<String> written) {
    return phrases.computeIfAbsent(written, Phrase::all);
  }

  /** What all pages give as a figure that has to agree. */
  List<Statement> statements(Agreed agreed) {
    return others.of(agreed);
  }

  /** The line of a header's key. */
  public int line(Page<?> page, String pointer) {
    return lines.line(page, pointer);
  }

  /** The line of a passage of work; that of the check where it stands in a header. */
  public int line(ReadWork job, TextPiece passage) {
    return job.isCheck() ? lines.line(job.page(), job.pointer() + "/how") : passage.line();
  }

  /** The title of a material, or its id where there is no such page. */
  public String title(String id) {
    return library.page(id).map(Page::title).orElse(id);
  }
}
