package limberboard.desktop.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.ContentTest;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.desktop.look.Palette;
import limberboard.desktop.look.Theme;
import limberboard.desktop.look.ThemeChoice;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.print.picture.Pictures;
import limberboard.print.text.InlineText;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * That the first step of every procedure is in sight after one press of Page Down at most, in a
 * window of 1280×800, for every boat, with no caution folded. The pages are laid out as the window
 * lays them out, without a window for each; {@code TraceRoomTest} holds that the window has the
 * room reckoned with here.
 */
@ContentTest
class OnePageDownTest {
  private static final LocalDate ON = LocalDate.of(2026, 3, 15);

  /** What Page Down leaves in sight of what was there. */
  private static final int KEPT = 48;

  private static final int LETTERS = 12;

  @BeforeAll
  static void fonts() {
    Theme.apply(ThemeChoice.LIGHT, 100);
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource({"every page in Pages, false, 600, 660", "an owner's mends in Trace, true, 750, 540"})
  void theFirstStepIsInSightAfterOnePageDown(String place, boolean mends, int width, int height)
      throws IOException {
    WorkspaceFolders folders = new WorkspaceFolders(Path.of(""));
    Workspace workspace = new WorkspaceReader(folders).read();
    PageRenderer renderer = new PageRenderer(Pictures.in(folders));
    List<String> lower = new ArrayList<>();
    int looked = 0;
    for (Boat boat : workspace.boats()) {
      Fitting fitting = new Fitting(boat, ON);
      for (Page<Procedure> page : workspace.library().all(Procedure.class)) {
        if (fitting.fits(page.head().fits()) && (!mends || isOwnersMend(workspace, page))) {
          Rendered rendered =
              renderer.screen(
                  new PageRenderer.Order(workspace.library(), page, Optional.of(fitting), false),
                  false,
                  new ScreenStyle(colours(), 100));
          Optional<String> step = step(rendered);
          if (step.isPresent()) {
            int foot = foot(PageLayout.of(rendered, width).text(), step.get());
            looked++;
            if (foot > 2 * height - KEPT) {
              lower.add(page.id() + " for " + boat.id() + ": " + foot);
            }
          } else {
            assertThat(page.details().skill().word()).isEqualTo("licensed");
          }
        }
      }
    }
    assertThat(lower).as(place).isEmpty();
    assertThat(looked).isGreaterThan(workspace.library().all(Symptom.class).size());
  }

  /** Whether an owner comes to the page at the end of a trace. */
  private static boolean isOwnersMend(Workspace workspace, Page<Procedure> page) {
    return page.details().skill().ownerMay()
        && workspace.library().all(Symptom.class).stream()
            .flatMap(symptom -> symptom.details().causes().stream())
            .anyMatch(cause -> cause.mend().equals(page.id()));
  }

  private static Map<Palette, String> colours() {
    Map<Palette, String> colours = new EnumMap<>(Palette.class);
    for (Palette colour : Palette.values()) {
      colours.put(colour, "#123456");
    }
    return colours;
  }

  /** The first words of the first step, without the names of cautions that stand before them. */
  private static Optional<String> step(Rendered rendered) {
    return rendered.cut().part(Part.Role.BODY).stream()
        .flatMap(part -> part.blocks().stream())
        .filter(Block.Items.class::isInstance)
        .map(Block.Items.class::cast)
        .filter(Block.Items::numbered)
        .findFirst()
        .map(
            steps ->
                InlineText.of(
                    ((Block.Paragraph) steps.items().get(0).get(0))
                        .text().stream()
                            .filter(run -> !(run instanceof Inline.CautionName))
                            .limit(1)
                            .toList()));
  }

  /** How far down the first line of these words ends, in pixels. */
  private static int foot(LaidOutText text, String words) {
    String plain = text.text().replaceAll("[\\s\\u00a0]", " ");
    String sought = words.replaceAll("[\\s\\u00a0]+", " ").strip();
    int at =
        plain.indexOf(sought.substring(0, Math.min(LETTERS, sought.length())), plain.indexOf("1."));
    Rectangle caret = at < 0 ? null : text.caret(at).orElse(null);
    return caret == null ? Integer.MAX_VALUE : caret.y + caret.height;
  }
}
