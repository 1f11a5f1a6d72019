package limberboard.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.findings.FigureRepair;
import limberboard.library.Library;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.ReadInFull;
import limberboard.library.problem.Problem;
import limberboard.proofread.FullReadings;
import limberboard.proofread.Proofreader;
import limberboard.proofread.file.TradeWordsFile;
import limberboard.proofread.mark.ReadingAge;
import limberboard.proofread.rule.PageRemark;
import limberboard.words.CountWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code proofread}: says what is wrong with what pages say. */
@Command(
    name = "proofread",
    mixinStandardHelpOptions = true,
    description = {
      "Reads pages as a proofreader does: things on no list, cautions that are missing, figures"
          + " that differ, what makes safe and stands too late.",
      "Prints one line a finding (file, line, how grave, rule, what it is about, what is wrong,"
          + " what would be right); what an author has answered in the page's header is counted"
          + " alone. The exit code is 1 when anything is found.",
      "With --unread it lists pages instead that nobody has read in full, that have changed since"
          + " or were read long ago; --read-by notes in the header of the pages named that somebody"
          + " has.",
      "With --write-figures it writes what figures say now on all pages that quote them and say"
          + " another."
    })
final class ProofreadCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(paramLabel = "PAGE", arity = "0..*", description = "Ids of pages; all if not given.")
  private List<String> ids = new ArrayList<>();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(names = "--unread", description = "List pages that are unread as they stand.")
  private boolean unread;

  @Option(
      names = "--read-by",
      paramLabel = "READER",
      description = "Note that such a reader has read the pages named in full, today.")
  private Optional<String> readBy = Optional.empty();

  @Option(
      names = "--write-figures",
      description = "Write quoted figures anew on all pages that say another.")
  private boolean writeFigures;

  ProofreadCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    WorkspaceFolders folders =
        readBy.isPresent() || writeFigures
            ? session.foldersToWrite(workspace.folder())
            : session.folders(workspace.folder());
    Library library = session.workspace(folders).library();
    if (writeFigures) {
      return write(folders, FigureRepair.all(library));
    }
    List<Page<?>> pages = pages(library);
    if (readBy.isPresent()) {
      if (ids.isEmpty()) {
        throw new Failure(ExitCode.USAGE, "name the pages that were read");
      }
      return new ReadNotes(session, folders).note(pages, readBy.get());
    }
    return unread ? unread(folders, library, pages) : findings(folders, library, pages);
  }

  private int write(WorkspaceFolders folders, List<FigureRepair> repairs) {
    int failed = 0;
    for (FigureRepair repair : repairs) {
      Optional<Problem> wrong = repair.make(folders);
      wrong.ifPresentOrElse(session.err()::println, () -> session.out().println(repair.words()));
      failed += wrong.isPresent() ? 1 : 0;
    }
    session.out().println(CountWords.of(repairs.size() - failed, "figure") + " written anew");
    return failed == 0 ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  private List<Page<?>> pages(Library library) {
    if (ids.isEmpty()) {
      return List.copyOf(library.pages());
    }
    List<String> known = library.pages().stream().<String>map(Page::id).toList();
    List<Page<?>> pages = new ArrayList<>();
    for (String id : ids) {
      pages.add(library.page(id).orElseThrow(() -> Failure.unknown("page", id, known, "try find")));
    }
    return pages;
  }

  private int findings(WorkspaceFolders folders, Library library, List<Page<?>> pages) {
    TradeWordsFile words = TradeWordsFile.read(folders, library);
    Proofreader reader = new Proofreader(folders, library, words.words());
    List<PageRemark> open = new ArrayList<>();
    int answered = 0;
    for (Page<?> page : pages) {
      Proofreader.Proof proof = reader.read(page);
      open.addAll(proof.open());
      answered += proof.answered().size();
    }
    if (json) {
      List<View> views = open.stream().map(View::of).toList();
      new JsonOutput(session.out())
          .print(new Views(views, answered, ValidateCommand.JsonProblem.all(words.problems())));
    } else {
      words.problems().forEach(session.err()::println);
      open.forEach(session.out()::println);
      session
          .out()
          .println(
              CountWords.of(open.size(), "finding") + ", " + answered + " answered by authors");
    }
    boolean errors =
        words.problems().stream().anyMatch(one -> one.severity() == Problem.Severity.ERROR);
    return open.isEmpty() && !errors ? ExitCode.OK : ExitCode.PROBLEMS;
  }

  private int unread(WorkspaceFolders folders, Library library, List<Page<?>> pages) {
    TradeWordsFile words = TradeWordsFile.read(folders, library);
    FullReadings readings = new FullReadings(folders, words.words(), session.today());
    List<ReadingAge> found =
        pages.stream().<ReadingAge>flatMap(page -> readings.due(page).stream()).toList();
    if (json) {
      new JsonOutput(session.out()).print(found.stream().map(UnreadView::of).toList());
    } else {
      words.problems().forEach(session.err()::println);
      found.stream().map(ReadingAge::line).forEach(session.out()::println);
      session
          .out()
          .println(CountWords.of(found.size(), "page") + " of " + pages.size() + " to be read");
    }
    return ExitCode.OK;
  }

  /** What {@code --json} prints. */
  record Views(List<View> findings, int answered, List<ValidateCommand.JsonProblem> problems) {}

  /** A finding as {@code --json} prints it. */
  record View(
      String rule,
      String gravity,
      String page,
      String file,
      int line,
      String about,
      String wrong,
      String right) {
    static View of(PageRemark one) {
      return new View(
          one.rule(),
          one.gravity().word(),
          one.page(),
          one.file(),
          one.line(),
          one.about(),
          one.wrong(),
          one.right());
    }
  }

  /** A page to be read, as {@code --unread --json} prints it. */
  @JsonInclude(JsonInclude.Include.NON_ABSENT)
  record UnreadView(
      String page, String file, String because, Optional<String> readOn, Optional<String> readBy) {
    static UnreadView of(ReadingAge one) {
      return new UnreadView(
          one.page(),
          one.file(),
          one.because().word(),
          one.read().map(read -> read.on().toString()),
          one.read().map(ReadInFull::by));
    }
  }
}
