package limberboard.desktop.upkeep;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Background;
import limberboard.desktop.upkeep.SheetModel.Made;
import limberboard.print.ListWords;
import limberboard.print.WorkListCsv;
import limberboard.print.WorkListSheet;
import limberboard.upkeep.AfloatSeason;
import limberboard.upkeep.Task;
import limberboard.upkeep.Upkeep;
import limberboard.upkeep.list.ListKind;
import limberboard.upkeep.list.ListWork;
import limberboard.upkeep.list.WorkList;
import limberboard.upkeep.list.WorkListMaker;

/** The fitting-out or laying-up list of the chosen boat. For the event thread only. */
final class ListModel {
  private static final int AHEAD = 2;
  private final UpkeepModel upkeep;
  private final SheetModel<Choice, Made> sheet;

  ListModel(UpkeepModel upkeep, Background background) {
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

  /** The sheet. */
  SheetModel<Choice, Made> sheet() {
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

  private static Made make(Workspace workspace, Upkeep upkeep, Choice choice) {
    ListWork work = new ListWork(upkeep);
    int year = year(upkeep, choice);
    List<Task> tasks =
        choice.everything() ? work.everything(choice.kind(), year) : work.due(choice.kind(), year);
    WorkList list = new WorkListMaker(upkeep.fitting()).list(choice.kind(), tasks);
    WorkListSheet sheets = new WorkListSheet(workspace.library());
    String season = upkeep.seasons().season(year).label();
    return new Made(
        choice.kind().word() + "-" + upkeep.fitting().boat().id() + "-" + year,
        sheets.inWindow(list),
        () -> sheets.onPaper(list),
        () -> new WorkListCsv(workspace.library()).render(list),
        tasks.isEmpty() ? nothing(choice, season) : "");
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
