package limberboard.letters.next;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import limberboard.boat.Boat;
import limberboard.boat.Workspace;
import limberboard.cases.NextPages;
import limberboard.cases.NextPages.Hint;
import limberboard.cases.NextPages.Kind;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.search.MissedSearch;
import limberboard.search.TextWords;
import limberboard.words.CountWords;
import limberboard.words.DayText;
import limberboard.words.Sentences;

/**
 * What to write next by everything that is known: cases, letters and searches, in one list. Not for
 * the event thread.
 */
public final class NextList {
  private static final int MOST_NAMED = 10;
  private final Workspace workspace;
  private final TellingWords words;

  /**
   * For a workspace.
   *
   * @param reader reads words as search does
   */
  public NextList(Workspace workspace, TextWords reader) {
    this.workspace = workspace;
    List<String> names = new ArrayList<>(workspace.boats().stream().map(Boat::name).toList());
    workspace.library().all(Model.class).stream().map(Page::title).forEach(names::add);
    this.words = new TellingWords(reader, names);
  }

  /**
   * The list, that first which weighs most. Searches for which a page has the words by now are left
   * out.
   *
   * @param uncovered letters that tell of a fault that no page covers
   * @param covered texts of other letters, to see which words tell
   * @param searches searches that were of no use
   */
  public List<Hint> of(
      List<NamedText> uncovered, List<String> covered, List<MissedSearch> searches) {
    List<Hint> all = new ArrayList<>(NextPages.of(workspace.library(), workspace.cases()));
    for (SharedWords.Group group : new SharedWords(words, covered, uncovered).of(uncovered)) {
      all.add(letters(group));
    }
    Map<String, List<MissedSearch>> alike = new LinkedHashMap<>();
    List<Set<String>> said = searches.isEmpty() ? List.of() : saidByPages();
    for (MissedSearch search : searches) {
      Set<String> keys = new TreeSet<>(words.of(search.words()).keySet());
      if (!keys.isEmpty() && said.stream().noneMatch(each -> each.containsAll(keys))) {
        alike.computeIfAbsent(String.join(" ", keys), none -> new ArrayList<>()).add(search);
      }
    }
    alike.values().forEach(group -> all.add(searches(group)));
    return NextPages.ranked(all);
  }

  /** The words of each title and each said-as of the pages. */
  private List<Set<String>> saidByPages() {
    return workspace.library().pages().stream()
        .flatMap(page -> Stream.concat(Stream.of(page.title()), page.head().saidAs().stream()))
        .map(said -> words.of(said).keySet())
        .toList();
  }

  private static Hint letters(SharedWords.Group group) {
    int many = group.letters().size();
    boolean nothingShared = group.words().isEmpty();
    List<String> said =
        nothingShared
            ? List.of(group.letters().get(0).title())
            : List.of(String.join(", ", group.words()));
    String share =
        nothingShared
            ? ""
            : " and share "
                + String.join(", ", group.words().stream().map(Sentences::quoted).toList());
    return new Hint(
        Kind.LETTERS,
        "",
        "",
        many,
        "write a page for "
            + (many == 1 ? "this letter" : "these letters")
            + " ("
            + Sentences.quoted(said.get(0))
            + "), or add their words to a page",
        CountWords.of(many, "letter")
            + (many == 1 ? " tells" : " tell")
            + " of a fault that no page covers"
            + share,
        group.letters().stream().limit(MOST_NAMED).map(NamedText::name).toList(),
        said);
  }

  private static Hint searches(List<MissedSearch> group) {
    MissedSearch latest = group.get(group.size() - 1);
    long nothing = group.stream().filter(each -> each.how() == MissedSearch.How.NOTHING).count();
    List<String> how =
        Stream.of(
                nothing == 0 ? "" : "found nothing " + CountWords.of((int) nothing, "time"),
                nothing == group.size()
                    ? ""
                    : "were left without a page opened "
                        + CountWords.of(group.size() - (int) nothing, "time"))
            .filter(part -> !part.isEmpty())
            .toList();
    List<String> written = group.stream().map(MissedSearch::words).distinct().toList();
    return new Hint(
        Kind.SEARCHES,
        "",
        "",
        group.size(),
        "write a page for " + Sentences.quoted(latest.words()) + ", or add the words to a page",
        "searches for it "
            + Sentences.list(how, "and")
            + ", last on "
            + DayText.written(latest.day()),
        List.of(),
        written);
  }
}
