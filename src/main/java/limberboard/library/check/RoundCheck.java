package limberboard.library.check;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import limberboard.library.page.Kind;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.problem.Report;

/** Checks rounds: each piece of work is in one round only, and no round in another. */
final class RoundCheck {
  private final Map<String, Set<String>> roundsOf = new HashMap<>();
  private final Set<String> rounds = new HashSet<>();

  RoundCheck(Collection<ParsedPage> pages) {
    pages.forEach(parsed -> parsed.page().ifPresent(this::add));
  }

  private void add(Page<?> page) {
    if (page.details() instanceof Procedure procedure && procedure.isRound()) {
      rounds.add(page.id());
      procedure
          .round()
          .forEach(
              each -> roundsOf.computeIfAbsent(each.work(), id -> new TreeSet<>()).add(page.id()));
    }
  }

  void check(Page<Procedure> page, KnownNames names, Report report) {
    List<Procedure.RoundWork> round = page.details().round();
    Set<String> seen = new HashSet<>();
    for (int i = 0; i < round.size(); i++) {
      String id = round.get(i).work();
      String at = "/round/" + i;
      names.page(Kind.PROCEDURE, id, at + "/do", report);
      if (id.equals(page.id())) {
        report.error(at, "names the round itself", "take it out");
      } else if (rounds.contains(id)) {
        report.error(at, "is a round itself", "name the work of " + id + " here, or take it out");
      }
      if (!seen.add(id)) {
        report.error(at, "stands in this round already", "take it out");
      }
      Set<String> all = roundsOf.get(id);
      if (all.size() > 1 && !all.iterator().next().equals(page.id())) {
        report.error(
            at,
            "is in the round " + all.iterator().next() + " too",
            "keep it in the one with which it is really done");
      }
    }
  }
}
