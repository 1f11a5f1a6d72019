package limberboard.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.cases.NextPages;
import limberboard.letters.inbox.LetterFolder;
import limberboard.letters.next.NewPage;
import limberboard.letters.next.NextList;
import limberboard.letters.next.UncoveredLetters;
import limberboard.letters.recognise.Teaching;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;
import limberboard.search.MissedSearches;
import limberboard.search.TextWords;
import limberboard.words.Sentences;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code next-pages}: what an author might write or mend next. */
@Command(
    name = "next-pages",
    mixinStandardHelpOptions = true,
    description = {
      "Lists what to write or mend next by what cases, letters and searches say, with the evidence:"
          + " causes found as something else, checks that owners cannot answer, mends that do not"
          + " cure, pages that never helped, procedures whose minutes are off, letters that no page"
          + " covers, searches of no use. Each weighs how often, times what one of its kind counts;"
          + " what weighs most comes first."
    })
final class NextPagesCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(
      names = "--cases-only",
      description = "Leave out letters and searches; recognising all letters takes a while.")
  private boolean casesOnly;

  @Option(
      names = "--begin",
      paramLabel = "N",
      description = "Begin the page that number N of the list asks for, among the symptoms' pages.")
  private Optional<Integer> begin = Optional.empty();

  @Option(
      names = "--searches",
      paramLabel = "WHAT",
      description =
          "on or off: whether searches of no use are kept from now on; forget: throw away those"
              + " that are kept. Then nothing is listed.")
  private Optional<Searches> searches = Optional.empty();

  /** What can be done with the searches that are kept. */
  enum Searches {
    /** Keep them. */
    on,
    /** Keep none. */
    off,
    /** Throw them away. */
    forget
  }

  NextPagesCommand(CommandContext session) {
    this.session = session;
  }

  /** A hint as {@code --json} prints it; the keys are documented and stay. */
  record HintView(
      String kind,
      String page,
      String part,
      int cases,
      String todo,
      String evidence,
      List<String> examples,
      List<String> words,
      double weight) {
    static HintView of(NextPages.Hint hint) {
      return new HintView(
          hint.kind().word(),
          hint.page(),
          hint.part(),
          hint.cases(),
          hint.todo(),
          hint.evidence(),
          hint.examples(),
          hint.words(),
          hint.weight());
    }
  }

  @Override
  public Integer call() throws IOException {
    WorkspaceFolders folders = session.folders(workspace.folder());
    if (searches.isPresent()) {
      return searches(new MissedSearches(folders), searches.get());
    }
    List<NextPages.Hint> hints = hints(folders, session.workspace(folders));
    if (begin.isPresent()) {
      return begin(folders, hints, begin.get());
    }
    if (json) {
      new JsonOutput(session.out()).print(hints.stream().map(HintView::of).toList());
    } else {
      print(hints);
    }
    return ExitCode.OK;
  }

  private List<NextPages.Hint> hints(WorkspaceFolders folders, Workspace read) throws IOException {
    if (casesOnly) {
      return NextPages.of(read.library(), read.cases());
    }
    Teaching teaching = new Teaching(folders, read, session.today());
    UncoveredLetters letters =
        UncoveredLetters.of(new LetterFolder(folders), teaching.recogniser());
    return new NextList(read, TextWords.read(folders, List.of()))
        .of(letters.uncovered(), letters.others(), new MissedSearches(folders).all());
  }

  private int searches(MissedSearches kept, Searches what) {
    Optional<Problem> wrong =
        what == Searches.forget ? kept.forget() : kept.keep(what == Searches.on);
    if (wrong.isPresent()) {
      throw new Failure(ExitCode.IO, wrong.get().toString());
    }
    session
        .out()
        .println(
            switch (what) {
              case on -> "Searches of no use are kept from now on.";
              case off -> "No searches are kept from now on.";
              case forget -> "The searches that were kept are thrown away.";
            });
    return ExitCode.OK;
  }

  private int begin(WorkspaceFolders folders, List<NextPages.Hint> hints, int number) {
    if (number < 1 || number > hints.size()) {
      throw new Failure(ExitCode.NOT_FOUND, "the list has no number " + number);
    }
    NextPages.Hint hint = hints.get(number - 1);
    if (!hint.isNew()) {
      throw new Failure(
          ExitCode.USAGE, "number " + number + " is about the page " + hint.page() + "; edit that");
    }
    try {
      session.out().println("Written: " + NewPage.write(folders, hint));
    } catch (IOException e) {
      throw new Failure(ExitCode.IO, "the page cannot be begun: " + e.getMessage());
    }
    return ExitCode.OK;
  }

  private void print(List<NextPages.Hint> hints) {
    int number = 1;
    for (NextPages.Hint hint : hints) {
      String page = hint.isNew() ? "" : hint.page() + ": ";
      session.out().println(number++ + ". " + page + hint.todo());
      session.out().println("   " + Sentences.capital(hint.evidence()) + ".");
      if (!hint.examples().isEmpty()) {
        session.out().println("   For example " + String.join(", ", hint.examples()) + ".");
      }
    }
    if (hints.isEmpty()) {
      session.out().println("Cases, letters and searches suggest nothing.");
    }
  }
}
