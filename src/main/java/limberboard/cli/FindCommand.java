package limberboard.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.search.Hit;
import limberboard.search.MissedSearch;
import limberboard.search.MissedSearches;
import limberboard.search.SearchIndex;
import limberboard.search.SearchQuery;
import limberboard.search.SearchResults;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code find}: searches all pages in everyday words. */
@Command(
    name = "find",
    mixinStandardHelpOptions = true,
    description = {
      "Searches all pages in everyday words; typing mistakes are forgiven.",
      "With - instead of words, answers one query a line from standard input by one JSON line each."
    })
final class FindCommand implements Callable<Integer> {
  private static final int USUAL_LIMIT = 10;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;

  @Parameters(paramLabel = "WORDS", arity = "1..*", description = "What to look for, or -.")
  private List<String> words;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(names = "--only-fitting", description = "Leave out what does not fit the boat.")
  private boolean onlyFitting;

  @Option(
      names = "--limit",
      paramLabel = "N",
      description = "At most so many results; " + USUAL_LIMIT + " if not given.")
  private int limit = USUAL_LIMIT;

  FindCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    if (limit < 1) {
      throw new Failure(ExitCode.USAGE, "--limit is at least 1");
    }
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Optional<Fitting> fitting = session.fitting(read, boat.id());
    try (SearchIndex index = SearchIndex.open(folders)) {
      index.update(read.library());
      if (words.equals(List.of("-"))) {
        for (String line = session.in().readLine(); line != null; line = session.in().readLine()) {
          new JsonOutput(session.out()).print(View.of(line, find(index, fitting, line)));
        }
      } else {
        String query = String.join(" ", words);
        SearchResults results = find(index, fitting, query);
        print(query, results);
        if (results.hits().isEmpty() && !onlyFitting) {
          keep(folders, query);
        }
      }
    }
    return ExitCode.OK;
  }

  /** A search that found nothing is kept for whoever writes pages; one that cannot be is not. */
  private void keep(WorkspaceFolders folders, String query) {
    MissedSearch.of(session.today(), MissedSearch.How.NOTHING, query)
        .ifPresent(search -> new MissedSearches(folders).add(search));
  }

  private SearchResults find(SearchIndex index, Optional<Fitting> fitting, String text)
      throws IOException {
    SearchQuery query = SearchQuery.of(text).forBoat(fitting).atMost(limit);
    return index.find(onlyFitting ? query.fittingOnly() : query);
  }

  private void print(String query, SearchResults results) {
    if (json) {
      new JsonOutput(session.out()).print(View.of(query, results));
      return;
    }
    results.didYouMean().ifPresent(words -> session.out().println("Also looked for: " + words));
    if (results.hits().isEmpty()) {
      session.out().println("Nothing found. Try other words, or fewer.");
    }
    for (Hit hit : results.hits()) {
      session.out().printf("%-10s %s  (%s)%n", hit.kind().word(), hit.title(), hit.id());
      session.out().println("           " + hit.passage().text().replaceAll("\\s+", " "));
      if (!hit.fit().fits()) {
        session.out().println("           not for this boat: " + hit.fit().reason());
      }
    }
  }

  /** What {@code --json} prints. */
  record View(String query, Optional<String> alsoLookedFor, List<Result> results) {
    static View of(String query, SearchResults results) {
      return new View(
          query, results.didYouMean(), results.hits().stream().map(Result::of).toList());
    }
  }

  /** One result as {@code --json} prints it. */
  record Result(
      String id,
      String kind,
      String title,
      double score,
      String passage,
      boolean fits,
      String why) {
    static Result of(Hit hit) {
      return new Result(
          hit.id(),
          hit.kind().word(),
          hit.title(),
          hit.score(),
          hit.passage().text(),
          hit.fit().fits(),
          hit.fit().reason());
    }
  }
}
