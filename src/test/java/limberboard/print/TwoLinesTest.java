package limberboard.print;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import limberboard.ContentTest;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.print.PdfLetters.Letter;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;
import org.junit.jupiter.api.Test;

/**
 * That a caution in its short form takes two lines at most, on paper, for every work, every symptom
 * and every boat.
 */
@ContentTest
class TwoLinesTest {
  private static final LocalDate ON = LocalDate.of(2026, 3, 15);

  /** Two lines of text at nine points, from the first's foot to the second's, with some room. */
  private static final double TWO_LINES_PT = 1.6 * 9;

  @Test
  void aCautionTakesTwoLinesAtMost() throws IOException {
    WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
    Workspace workspace = new WorkspaceReader(folders).read();
    Pdf pdf = new Pdf(Pictures.in(folders));
    Set<Block.ShortCaution> cautions = cautions(workspace);
    assertThat(cautions).hasSizeGreaterThan(workspace.library().all(Procedure.class).size() / 10);
    List<String> longer = new ArrayList<>();
    for (Block.ShortCaution caution : cautions) {
      Part part = new Part(Part.Role.CAUTIONS, "", List.of(caution));
      PdfLetters letters =
          PdfLetters.of(pdf.of(new CutPage("a", Kind.PROCEDURE, "Work", "", "", List.of(part))));
      double first = letters.where("Caution:").map(Letter::y).orElse(Double.MIN_VALUE);
      double last =
          letters
              .where(lastWord(caution.rule()), caution.danger())
              .map(Letter::y)
              .orElse(Double.MAX_VALUE);
      if (!(last - first <= TWO_LINES_PT)) {
        longer.add(caution.title() + ": " + caution.danger() + " " + caution.rule());
      }
    }
    assertThat(longer).isEmpty();
  }

  private static String lastWord(String rule) {
    return rule.substring(rule.lastIndexOf(' ') + 1);
  }

  private static Set<Block.ShortCaution> cautions(Workspace workspace) {
    PageCutter cutter = new PageCutter(workspace.library());
    Set<Block.ShortCaution> cautions = new LinkedHashSet<>();
    for (var boat : workspace.boats()) {
      Optional<Fitting> fitting = Optional.of(new Fitting(boat, ON));
      workspace.library().all(Procedure.class).stream()
          .filter(page -> fitting.get().fits(page.head().fits()))
          .forEach(page -> cautions.addAll(cutter.cut(page, fitting).shortCautions()));
      workspace.library().all(Symptom.class).stream()
          .filter(page -> fitting.get().fits(page.head().fits()))
          .forEach(page -> cautions.addAll(cutter.cut(page, fitting).shortCautions()));
    }
    return cautions;
  }
}
