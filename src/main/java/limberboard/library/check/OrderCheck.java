package limberboard.library.check;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.problem.Report;

/** Checks the order between procedures: nothing comes before itself, directly or in a circle. */
final class OrderCheck {
  private final Map<String, List<String>> before = new TreeMap<>();
  private final Map<String, SortedSet<String>> circles = new HashMap<>();

  OrderCheck(Collection<ParsedPage> pages) {
    for (ParsedPage parsed : pages) {
      parsed.page().ifPresent(this::add);
    }
    for (SortedSet<String> circle : Circles.of(before)) {
      circles.put(circle.first(), circle);
    }
  }

  private void add(Page<?> page) {
    if (page.details() instanceof Procedure procedure && !procedure.before().isEmpty()) {
      before.put(page.id(), procedure.before());
    }
  }

  /** Reports a page that names itself, and each circle once, at its first page. */
  void check(Page<Procedure> page, Report report) {
    Procedure procedure = page.details();
    int itself = procedure.before().indexOf(page.id());
    if (itself >= 0) {
      report.error("/before/" + itself, "comes before itself", "take it out");
    }
    SortedSet<String> circle = circles.get(page.id());
    if (circle == null) {
      return;
    }
    List<String> way = Circles.way(page.id(), circle, before);
    report.error(
        "/before/" + procedure.before().indexOf(way.get(1)),
        "runs in a circle: " + String.join(" before ", way),
        "take one of them out of before, the one that may wait");
  }
}
