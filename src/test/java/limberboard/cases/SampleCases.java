package limberboard.cases;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import limberboard.boat.CaseBoat;
import limberboard.boat.CaseEnd;
import limberboard.boat.CaseOutcome;
import limberboard.boat.Fitting;
import limberboard.boat.RecordedCase;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.value.Use;
import limberboard.library.value.Water;

/** Cases of the little workspace {@code leak}, and its boats. */
public final class SampleCases {
  /** The day that counts as today. */
  public static final LocalDate TODAY = LocalDate.of(2026, 5, 1);

  private static final Workspace WORKSPACE = read();

  private SampleCases() {}

  private static Workspace read() {
    try {
      Path root = Path.of(SampleCases.class.getResource("/limberboard/trace/leak").toURI());
      return new WorkspaceReader(new WorkspaceFolders(root)).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (java.net.URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The workspace. */
  public static Workspace workspace() {
    return WORKSPACE;
  }

  /** One of its boats, eleven years old. */
  public static Fitting on(String boat) {
    return new Fitting(WORKSPACE.boat(boat).orElseThrow(), TODAY);
  }

  /** A mended case of the same boat as Knot and Ruff. */
  public static RecordedCase mended(String id, String cause, Map<String, String> answers) {
    return of(id, cause, facts("sample-24", 2015, Water.SALT, Use.PRIVATE), answers);
  }

  /** A mended case of some boat. */
  public static RecordedCase of(
      String id, String cause, CaseBoat boat, Map<String, String> answers) {
    return new RecordedCase(
        id,
        "water-forward",
        Optional.of(cause),
        LocalDate.of(2026, 4, 1),
        boat,
        answers,
        List.of(),
        CaseEnd.UNKNOWN.with(CaseOutcome.MENDED),
        "");
  }

  /** Facts of a boat. */
  public static CaseBoat facts(String model, int built, Water water, Use use) {
    return new CaseBoat(
        model,
        OptionalInt.of(built),
        Map.of(),
        Optional.of(water),
        Optional.of(use),
        Optional.empty());
  }
}
