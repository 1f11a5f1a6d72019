package limberboard.proofread.file;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import limberboard.library.Library;
import limberboard.library.file.FileBytes;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderBinder;
import limberboard.library.page.Caution;
import limberboard.library.page.Details;
import limberboard.library.page.Material;
import limberboard.library.page.Model;
import limberboard.library.page.Page;
import limberboard.library.problem.Nearest;
import limberboard.library.problem.Problem;
import limberboard.library.problem.Report;
import limberboard.proofread.file.TradeWords.Entry;

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
    return new TradeWordsFile(words.usable(), problems);
  }

  /** Whether entries have what they need, and whether the pages they name are there. */
  private record Check(Library library, Report report) {
    void check(TradeWords words) {
      complete(words.cautions(), "/cautions/");
      complete(words.needs(), "/needs/");
      complete(words.brought(), "/brought/");
      complete(words.uses(), "/uses/");
      complete(words.orders(), "/orders/");
      complete(words.back(), "/back/");
      complete(words.figures(), "/figures/");
      complete(words.names(), "/names/");
      for (int i = 0; i < words.cautions().size(); i++) {
        pages(
            Caution.class, "caution", words.cautions().get(i).carry(), "/cautions/" + i + "/carry");
        accesses(words.cautions().get(i).access(), "/cautions/" + i + "/access");
      }
      for (int i = 0; i < words.needs().size(); i++) {
        things(words.needs().get(i).tools(), "/needs/" + i + "/tools");
        accesses(words.needs().get(i).access(), "/needs/" + i + "/access");
      }
      for (int i = 0; i < words.brought().size(); i++) {
        things(words.brought().get(i).listed(), "/brought/" + i + "/listed");
      }
      for (int i = 0; i < words.uses().size(); i++) {
        things(List.of(words.uses().get(i).thing()), "/uses/" + i + "/thing");
      }
      things(words.carried(), "/carried");
      for (int i = 0; i < words.names().size(); i++) {
        things(List.of(words.names().get(i).thing()), "/names/" + i + "/thing");
      }
    }

    /** What is there and wrong has been said already. */
    private void complete(List<? extends Entry> entries, String pointer) {
      for (int i = 0; i < entries.size(); i++) {
        for (String key : entries.get(i).lacks()) {
          if (!report.lines().containsKey(pointer + i + "/" + key)) {
            report.error(pointer + i + "/" + key, "is missing", "it is required here");
          }
        }
      }
    }

    private void things(List<String> ids, String pointer) {
      pages(Material.class, "material or tool", ids, pointer);
    }

    private void pages(
        Class<? extends Details> kind, String what, List<String> ids, String pointer) {
      List<String> known = library.all(kind).stream().<String>map(Page::id).toList();
      known(ids, known, what, "name one that has a page", pointer);
    }

    private void accesses(List<String> ids, String pointer) {
      List<String> known =
          library.all(Model.class).stream()
              .flatMap(page -> page.details().access().stream())
              .map(Model.Access::id)
              .distinct()
              .toList();
      known(ids, known, "access", "name one that a model has", pointer);
    }

    private void known(
        List<String> ids, List<String> known, String what, String otherwise, String pointer) {
      for (int i = 0; i < ids.size(); i++) {
        if (!ids.get(i).isEmpty() && !known.contains(ids.get(i))) {
          report.error(
              pointer + "/" + i,
              "there is no " + what + " \"" + ids.get(i) + "\"",
              Nearest.advice(ids.get(i), known, otherwise));
        }
      }
    }
  }
}
