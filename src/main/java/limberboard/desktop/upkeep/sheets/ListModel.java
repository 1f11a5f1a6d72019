package limberboard.desktop.upkeep.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.upkeep.sheets.SheetModel.HasSheet;
import limberboard.desktop.upkeep.sheets.SheetModel.Made;
import limberboard.desktop.upkeep.state.UpkeepModel;
import limberboard.print.sheet.ListWords;
import limberboard.print.sheet.WorkListCsv;
import limberboard.print.sheet.WorkListSheet;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Due;
import limberboard.upkeep.Task;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.Why;
import limberboard.upkeep.list.ListKind;
import limberboard.upkeep.list.ListLine;
import limberboard.upkeep.list.ListPart;
import limberboard.upkeep.list.ListWork;
import limberboard.upkeep.list.WorkList;
import limberboard.upkeep.list.WorkListMaker;

/** The fitting-out or laying-up list of the chosen boat. For the event thread only. */
public final class ListModel {
  private static final int AHEAD = 2;
  private final UpkeepModel upkeep;
  private final SheetModel<Choice, Listed> sheet;

  public ListModel(UpkeepModel upkeep, Background background) {
    this.upkeep = upkeep;
    Choice first = new Choice(ListKind.FITTING_OUT, Optional.empty(), false);
    this.sheet = new SheetModel<>(upkeep, background, first, ListModel::make);
  }

  /**
   * Which list.
   *
   * @param season the year in which its season begins; empty for the usual one
   * @param everything whether what is not due stands on it too
   */
  record Choice(ListKind kind, Optional<Integer> season, boolean everything) {}

  /**
   * A line of the list that can be ticked.
   *
   * @param due the id of the due work that it stands for
   * @param page the page it is done by
   * @param part the part of the list that it begins, or empty
   * @param title its number and what it is called
   * @param facts how long it takes, and by when
   */
  public record Line(String due, String page, String part, String title, String facts) {}

  /**
   * What came of it.
   *
   * @param lines the lines, in the order of the walk
   * @param sheet the sheet
   */
  record Listed(List<Line> lines, Made sheet) implements HasSheet {
    /** Copies the list. */
    Listed {
      lines = List.copyOf(lines);
    }
  }

  /** The lines, in the order of the walk round the boat. */
  public List<Line> lines() {
    return sheet.made().map(Listed::lines).orElse(List.of());
  }

  /** The sheet. */
  public SheetModel<Choice, Listed> sheet() {
    return sheet;
  }

  /** Chooses a list; its season is then the usual one of this list. */
  void kind(ListKind kind) {
    sheet.choose(new Choice(kind, Optional.empty(), sheet.choice().everything()));
  }

  /** Chooses the season that begins in this year. */
  void season(int year) {
    sheet.choose(new Choice(sheet.choice().kind(), Optional.of(year), sheet.choice().everything()));
  }

  /** Whether what is not due stands on the list too. */
  void everything(boolean all) {
    sheet.choose(new Choice(sheet.choice().kind(), sheet.choice().season(), all));
  }

  /** The seasons there are to choose from; none before what is due has been worked out. */
  List<AfloatSeason> seasons() {
    return upkeep.upkeep().map(known -> seasons(known, sheet.choice().kind())).orElse(List.of());
  }

  /** The year in which the season of the list begins. */
  int year() {
    return upkeep.upkeep().map(known -> year(known, sheet.choice())).orElse(0);
  }

  private static List<AfloatSeason> seasons(Upkeep upkeep, ListKind kind) {
    int usual = new ListWork(upkeep).season(kind);
    return IntStream.rangeClosed(usual, usual + AHEAD).mapToObj(upkeep.seasons()::season).toList();
  }

  private static int year(Upkeep upkeep, Choice choice) {
    List<AfloatSeason> offered = seasons(upkeep, choice.kind());
    return choice
        .season()
        .filter(year -> offered.stream().anyMatch(season -> season.year() == year))
        .orElse(offered.get(0).year());
  }

  private static Listed make(Workspace workspace, Upkeep upkeep, Choice choice) {
    ListWork work = new ListWork(upkeep);
    int year = year(upkeep, choice);
    List<Task> tasks =
        choice.everything() ? work.everything(choice.kind(), year) : work.due(choice.kind(), year);
    WorkList list = new WorkListMaker(upkeep.fitting()).list(choice.kind(), tasks);
    WorkListSheet sheets = new WorkListSheet(workspace.library());
    String season = upkeep.seasons().season(year).label();
    return new Listed(
        lines(list, upkeep),
        new Made(
            choice.kind().word() + "-" + upkeep.fitting().boat().id() + "-" + year,
            sheets.inWindow(list),
            () -> sheets.onPaper(list),
            () -> new WorkListCsv(workspace.library()).render(list),
            tasks.isEmpty() ? nothing(choice, season) : ""));
  }

  private static List<Line> lines(WorkList list, Upkeep upkeep) {
    List<Line> lines = new ArrayList<>();
    for (ListPart part : list.parts()) {
      String heading = ListWords.title(part.phase());
      for (ListLine line : part.lines()) {
        Optional<String> due = due(line, upkeep);
        if (due.isPresent()) {
          lines.add(
              new Line(
                  due.get(),
                  line.work().id(),
                  heading,
                  line.number() + ". " + line.work().title(),
                  String.join(". ", ListWords.facts(line, upkeep.fitting().on()))));
          heading = "";
        }
      }
    }
    return lines;
  }

  /** The due work that a line stands for: the work itself, or the look again done with its page. */
  private static Optional<String> due(ListLine line, Upkeep upkeep) {
    boolean again = line.task().why() instanceof Why.Named;
    return upkeep.all().stream()
        .filter(due -> due.work().id().equals(line.work().id()))
        .min(Comparator.comparing(due -> due.isLookAgain() != again))
        .map(Due::id);
  }

  private static String nothing(Choice choice, String season) {
    String what = ListWords.title(choice.kind());
    return choice.everything()
        ? what
            + ": no page that fits this boat names such work with an interval. Pages of procedures"
            + " say how often their work is done, and when in the year."
        : what
            + ": nothing falls due for season "
            + season
            + ". Tick “Also what is not due” to see all such work and when it will be due.";
  }
}
