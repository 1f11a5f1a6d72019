package limberboard.desktop.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.library.Library;
import org.junit.jupiter.api.Test;

class ContentsTest {
  private final Workspace workspace = SmallWorkspace.read();

  private static List<String> lines(List<Contents.Node> nodes, String indent) {
    List<String> lines = new ArrayList<>();
    for (Contents.Node node : nodes) {
      if (node instanceof Contents.Group group) {
        lines.add(indent + group.title() + " " + group.pages());
        lines.addAll(lines(group.nodes(), indent + "  "));
      } else if (node instanceof Contents.Leaf leaf) {
        lines.add(indent + leaf.title() + (leaf.fits() ? "" : " -"));
      }
    }
    return lines;
  }

  @Test
  void pagesAreFiledBySystemAndThenByKindAndOthersByKind() {
    assertThat(lines(Contents.of(workspace.library(), "", Optional.empty()), ""))
        .containsExactly(
            "Deck 3",
            "  Symptoms 1",
            "    Water in the locker",
            "  Procedures 2",
            "    Replace the locker gasket",
            "    Seal the vent",
            "Plumbing 1",
            "  Procedures 1",
            "    Tighten the drain hose",
            "Gas 2",
            "  Symptoms 1",
            "    A smell of gas",
            "  Procedures 1",
            "    Mend the gas line",
            "Materials and tools 2",
            "  Gasket strip",
            "  Torch",
            "Boat models 2",
            "  Barge 30",
            "  Dinghy 18",
            "Cautions 2",
            "  Gas",
            "  The boat takes on water",
            "Background 1",
            "  How water travels");
  }

  @Test
  void whatIsForOtherBoatsIsSaidSo() {
    Fitting stint = new Fitting(workspace.boat("stint").orElseThrow(), SmallWorkspace.TODAY);
    assertThat(lines(Contents.of(workspace.library(), "gas", Optional.of(stint)), ""))
        .contains("    A smell of gas -", "  Gas");
  }

  @Test
  void theFilterLooksAtTitlesSummariesAndWhatPeopleCallIt() {
    assertThat(lines(Contents.of(workspace.library(), " Puddle lid ", Optional.empty()), ""))
        .containsExactly("Deck 1", "  Symptoms 1", "    Water in the locker");
    assertThat(Contents.of(workspace.library(), "zeppelin", Optional.empty())).isEmpty();
  }

  @Test
  void anEmptyLibraryHasNoContents() {
    assertThat(Contents.of(Library.empty(), "", Optional.empty())).isEmpty();
  }
}
