package limberboard.desktop.workspace.findings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Workspace;
import limberboard.desktop.base.Latest;
import limberboard.desktop.base.Observed;
import limberboard.desktop.workspace.findings.FindingsSearch.Round;
import limberboard.findings.Repair;
import limberboard.library.problem.Problem;
import limberboard.proofread.file.TradeWords;
import limberboard.proofread.file.TradeWordsFile;

/**
 * Everything found in the workspace, in one list: what reading it says, what the planner says, and
 * what to write next. Without Swing; for the event thread only.
 */
public final class FindingsModel extends Observed {
  private final FindingsOutside outside;
  private final Latest looking;
  private final Latest wanted;
  private List<WorkspaceFinding> all = List.of();
  private String filter = "";
  private TradeWordsFile words = new TradeWordsFile(TradeWords.NOTHING, List.of());
  private Optional<FindingKind> kind = Optional.empty();
  private Optional<Workspace> looked = Optional.empty();
  private Optional<Round> under = Optional.empty();
  private final Map<Round, List<WorkspaceFinding>> rounds = new EnumMap<>(Round.class);

  /** A model that has not looked yet. */
  public FindingsModel(FindingsOutside outside) {
    this.outside = outside;
    this.looking = new Latest(outside.looking());
    this.wanted = new Latest(outside.looking());
  }

  /** What is being done while it is looked for. */
  Optional<String> looking() {
    return under.map(Round::doing);
  }

  /** Whether it has been looked for at all. */
  boolean hasLooked() {
    return looked.isPresent();
  }

  /** All findings, those first that do not work. */
  public List<WorkspaceFinding> all() {
    return all;
  }

  /** Those that the filter lets through. */
  public List<WorkspaceFinding> shown() {
    return all.stream()
        .filter(each -> kind.map(only -> only == each.kind()).orElse(each.kind().isAmongAll()))
        .filter(each -> filter.isBlank() || each.has(filter))
        .toList();
  }

  /** How many there are in all, without those that are listed by themselves. */
  int count() {
    return (int) all.stream().filter(each -> each.kind().isAmongAll()).count();
  }

  /** How many there are of a kind. */
  public int count(FindingKind of) {
    return (int) all.stream().filter(each -> each.kind() == of).count();
  }

  /** The kind that is shown; empty for all. */
  Optional<FindingKind> kind() {
    return kind;
  }

  /** Lets only this kind through, or all. */
  public void kind(Optional<FindingKind> only) {
    kind = only;
    tell();
  }

  /** Lets only those through in which these words stand. */
  public void filter(String text) {
    filter = text;
    tell();
  }

  /** Looks, unless the workspace and what is looked for are as they were. */
  public void look() {
    Workspace now = outside.session().workspace();
    if (!outside.session().isRead()) {
      return;
    }
    boolean same = looked.filter(before -> before == now).isPresent();
    wanted.run(
        "Reading what is looked for",
        () -> TradeWordsFile.read(outside.folders(), now.library()),
        file -> {
          if (!same || !words.equals(file)) {
            words = file;
            looked = Optional.of(now);
            look(new FindingsSearch(outside.folders(), now, outside.session().today(), file), 0);
          }
        });
  }

  /** Goes through the rounds, each of which is shown as soon as it is done. */
  private void look(FindingsSearch search, int at) {
    Round[] rounds = Round.values();
    under = at < rounds.length ? Optional.of(rounds[at]) : Optional.empty();
    tell();
    under.ifPresent(
        round ->
            looking.run(
                round.doing(),
                () -> found(search, round),
                found -> {
                  take(round, found);
                  look(search, at + 1);
                },
                this::failed));
  }

  private List<WorkspaceFinding> found(FindingsSearch search, Round round) {
    outside.guard().begins("looking for findings");
    return search.found(round);
  }

  private void take(Round round, List<WorkspaceFinding> found) {
    rounds.put(round, found);
    List<WorkspaceFinding> sorted = new ArrayList<>();
    rounds.values().forEach(sorted::addAll);
    sorted.sort(Comparator.comparing(WorkspaceFinding::kind));
    all = List.copyOf(sorted);
  }

  private void failed() {
    under = Optional.empty();
    looked = Optional.empty();
    tell();
  }

  /** Mends a finding by its one step; without effect where there is none. */
  public void repair(WorkspaceFinding finding) {
    finding
        .repair()
        .ifPresent(
            step ->
                outside
                    .writing()
                    .run("Writing a repair", () -> repair(step), wrong -> repaired(step, wrong)));
  }

  private Optional<Problem> repair(Repair step) {
    outside.guard().begins("writing a repair");
    return step.make(outside.folders());
  }

  private void repaired(Repair step, Optional<Problem> wrong) {
    wrong.ifPresentOrElse(
        problem -> outside.notices().warn(problem.toString() + "."),
        () -> outside.notices().tell("Mended: " + step.words()));
    outside.changed().run();
  }
}
