package limberboard.proofread.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import limberboard.library.Library;
import limberboard.library.file.FileBytes;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;
import limberboard.library.problem.Report;

/**
 * The library's file of what a proofreader looks for.
 *
 * @param words what could be read of it
 * @param problems what could not
 */
public record TradeWordsFile(TradeWords words, List<Problem> problems) {
  /** Its name below {@code articles/}. */
  public static final String NAME = "proofreading.yaml";

  /** Copies the list. */
  public TradeWordsFile {
    problems = List.copyOf(problems);
  }

  /** Reads the file; one that is not there looks for nothing. */
  public static TradeWordsFile read(WorkspaceFolders folders, Library library) {
    Path file = folders.articles().resolve(NAME);
    if (!FileBytes.isThere(file)) {
      return new TradeWordsFile(TradeWords.NOTHING, List.of());
    }
    TextFile.Result text = TextFile.read(folders, file, TextFile.LARGEST);
    if (!text.problems().isEmpty()) {
      return new TradeWordsFile(TradeWords.NOTHING, text.problems());
    }
    String name = folders.relative(file);
    HeaderBinder.Bound<TradeWords> bound =
        new HeaderBinder().read(name, text.text(), TradeWords.class);
    List<Problem> problems = new ArrayList<>(bound.problems());
    TradeWords words = bound.value().orElse(TradeWords.NOTHING);
    Report report = new Report(name, bound.lines());
    new Check(library, report).check(words);
    problems.addAll(report.problems());
    return new TradeWordsFile(words, problems);
  }

  /** Whether the pages it names are there. */
  private record Check(Library library, Report report) {
    void check(TradeWords words) {
      for (int i = 0; i < words.cautions().size(); i++) {
        cautions(words.cautions().get(i).carry(), "/cautions/" + i + "/carry");
      }
      for (int i = 0; i < words.needs().size(); i++) {
        TradeWords.Need need = words.needs().get(i);
        things(need.tools(), "/needs/" + i + "/tools");
        if (need.tools().isEmpty() && need.access().isEmpty()) {
          report.error("/needs/" + i, "needs nothing", "write tools or access");
        }
      }
      for (int i = 0; i < words.uses().size(); i++) {
        things(List.of(words.uses().get(i).thing()), "/uses/" + i + "/thing");
      }
    }

    private void cautions(List<String> ids, String pointer) {
      for (int i = 0; i < ids.size(); i++) {
        if (library.caution(ids.get(i)).isEmpty()) {
          List<String> known =
              library.all(limberboard.library.page.Caution.class).stream()
                  .map(limberboard.library.page.Page::id)
                  .toList();
          none("caution", ids.get(i), known, pointer + "/" + i);
        }
      }
    }

    private void things(List<String> ids, String pointer) {
      for (int i = 0; i < ids.size(); i++) {
        if (library.material(ids.get(i)).isEmpty()) {
          List<String> known =
              library.all(limberboard.library.page.Material.class).stream()
                  .map(limberboard.library.page.Page::id)
                  .toList();
          none("material or tool", ids.get(i), known, pointer + "/" + i);
        }
      }
    }

    private void none(String what, String id, List<String> known, String pointer) {
      report.error(
          pointer,
          "there is no " + what + " \"" + id + "\"",
          Nearest.advice(id, known, "name one that has a page"));
    }
  }
}
