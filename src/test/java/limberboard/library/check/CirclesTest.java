package limberboard.library.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import limberboard.library.TestWorkspace;
import limberboard.library.problem.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Circles, and what the library says of pages that come before themselves. */
class CirclesTest {
  @TempDir Path folder;

  @Test
  void findsEachCircleOnceAndLeavesTheRest() {
    Map<String, List<String>> leads =
        Map.of(
            "a", List.of("b"),
            "b", List.of("c", "x"),
            "c", List.of("a"),
            "x", List.of("y"),
            "p", List.of("q", "p"),
            "q", List.of("p"),
            "s", List.of("s"));
    assertThat(Circles.of(leads))
        .extracting(List::copyOf)
        .containsExactly(List.of("a", "b", "c"), List.of("p", "q"));
    assertThat(Circles.way("b", List.of("a", "b", "c"), leads)).containsExactly("b", "c", "a", "b");
    assertThat(Circles.way("x", List.of("x", "y"), leads)).isEmpty();
  }

  @Test
  void aLongChainIsNoTrouble() {
    Map<String, List<String>> leads = new TreeMap<>();
    for (int i = 0; i < 50_000; i++) {
      leads.put("n" + i, List.of("n" + (i + 1)));
    }
    assertThat(Circles.of(leads)).isEmpty();
    leads.put("n50000", List.of("n0"));
    assertThat(Circles.of(leads)).singleElement().satisfies(all -> assertThat(all).hasSize(50_001));
  }

  @Test
  void theLibraryReportsCirclesWithFileAndLine() {
    TestWorkspace workspace = new TestWorkspace(folder);
    workspace.write("articles/procedures/aa.md", procedure("before: [bb]"));
    workspace.write("articles/procedures/bb.md", procedure("before: [mend, cc]"));
    workspace.write("articles/procedures/cc.md", procedure("before: [aa]"));
    workspace.write("articles/procedures/dd.md", procedure("before: [aa, dd]"));
    assertThat(workspace.library().problems())
        .extracting(Problem::toString)
        .containsExactlyInAnyOrder(
            "articles/procedures/aa.md:7: before[1]: runs in a circle: aa before bb before cc"
                + " before aa; take one of them out of before, the one that may wait",
            "articles/procedures/dd.md:7: before[2]: comes before itself; take it out");
  }

  private static String procedure(String order) {
    return "---\ntitle: Work\nsystem: deck\nwork: service\nskill: owner\nminutes: 5\n"
        + order
        + "\n---\n1. Do it.\n";
  }
}
