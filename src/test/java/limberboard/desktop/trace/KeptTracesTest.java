package limberboard.desktop.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;
import limberboard.trace.CautionsRead;
import limberboard.trace.NextStep;
import limberboard.trace.TrailStep;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Traces from one opening of the window to the next, through real files. */
class KeptTracesTest {
  @TempDir Path folder;
  @TempDir Path state;
  private final Notices notices = new Notices();
  private final Session session = session("knot");

  private static Session session(String boat) {
    return new Session(SmallWorkspace.clock(), Optional.of(boat));
  }

  private TraceFiles files() {
    return new TraceFiles(new UserFolders(state, state, state), new WorkspaceFolders(folder));
  }

  /** A window opened now. */
  private TraceModel opened(Session on) {
    TraceModel model =
        new TraceModel(
            on,
            Steps.atOnce(),
            new KeptTraces(files(), Steps.atOnce(notices), notices),
            notices,
            work -> {});
    on.replace(SmallWorkspace.read(new WorkspaceFolders(folder)));
    return model;
  }

  private void answered() {
    SmallWorkspace.copyTo(folder);
    TraceModel model = opened(session);
    model.start("wet-locker");
    model.cautionsRead();
    model.answer("when", "after-rain");
    model.cantTell("strip");
    model.didNotHelp("gasket");
  }

  private List<Path> kept() throws IOException {
    try (Stream<Path> found = Files.walk(state)) {
      return found.filter(Files::isRegularFile).toList();
    }
  }

  @Test
  void aTraceIsOfferedBackNextTimeAndGoesOnWhereItWas() {
    answered();
    Session next = session("knot");
    TraceModel model = opened(next);
    assertThat(model.stage()).isEqualTo(Stage.CHOOSING);
    assertThat(model.keptTraces())
        .singleElement()
        .satisfies(
            trace -> {
              assertThat(trace.symptom()).isEqualTo("wet-locker");
              assertThat(trace.started()).isEqualTo(SmallWorkspace.TODAY);
              assertThat(trace.steps()).hasSize(3);
            });
    assertThat(model.answersGiven("wet-locker")).isEqualTo(3);
    assertThat(model.start("wet-locker")).isTrue();
    assertThat(model.trace().orElseThrow().trail())
        .extracting(entry -> entry.step())
        .containsExactly(
            new TrailStep.Answered("when", "after-rain"),
            new TrailStep.CouldNotTell("strip"),
            new TrailStep.MendFailed("gasket"));
    assertThat(model.stage()).as("the cautions had been read").isNotEqualTo(Stage.CAUTIONS);
    assertThat(model.keptTraces()).isEmpty();
  }

  @Test
  void nothingIsKeptInTheWorkspaceAndAnotherBoatIsOfferedNothing() throws IOException {
    answered();
    try (Stream<Path> found = Files.walk(folder)) {
      assertThat(found).noneMatch(file -> file.toString().endsWith(".trace"));
    }
    assertThat(kept()).hasSize(1);
    assertThat(opened(session("stint")).keptTraces()).isEmpty();
  }

  @Test
  void whatIsMendedOrStartedAgainOrDroppedIsNotOfferedBack() throws IOException {
    answered();
    TraceModel model = opened(session("knot"));
    model.start("wet-locker");
    model.itIsMended(Optional.empty());
    assertThat(kept()).isEmpty();
    model.undo();
    assertThat(kept()).as("mended after all not").hasSize(1);
    model.startAgain();
    assertThat(kept()).isEmpty();
    model.undo();
    TraceModel later = opened(session("knot"));
    later.drop(later.keptTraces().get(0));
    assertThat(kept()).isEmpty();
    assertThat(later.keptTraces()).isEmpty();
  }

  @Test
  void aDamagedFileIsToldAndTheOthersAreOffered() throws IOException {
    answered();
    Path good = kept().get(0);
    Path broken = good.resolveSibling("knot--gas-smell.trace");
    Files.writeString(broken, "kept-trace=1\nboat=knot\nsymptom=gas-smell\nstarted=soon\n");
    Path other = good.resolveSibling("x.trace");
    Files.write(other, new byte[] {0, 1, 2});
    TraceModel model = opened(session("knot"));
    assertThat(model.keptTraces()).hasSize(1);
    assertThat(notices.current().orElseThrow().text())
        .contains("\"soon\"", broken.toString(), other.toString());
  }

  @Test
  void anAnswerThatIsNoLongerPossibleIsLeftOutAndTold() throws IOException {
    answered();
    Path page = folder.resolve("articles/symptoms/wet-locker.md");
    Files.writeString(page, Files.readString(page).replace("after-rain", "after-a-shower"));
    TraceModel model = opened(session("knot"));
    model.start("wet-locker");
    assertThat(model.trace().orElseThrow().trail()).hasSize(2);
    assertThat(notices.current().orElseThrow().text()).contains("1 of your answers fits no check");
  }

  @Test
  void whatWasSaidForSafetyIsAskedAgainNextTime() throws IOException {
    SmallWorkspace.copyTo(folder);
    Path page = folder.resolve("articles/symptoms/wet-locker.md");
    Files.writeString(
        page,
        Files.readString(page)
            .replace(
                "    minutes: 5\n",
                "    minutes: 5\n    comes-first: true\n    make-safe: Prop the lid.\n"));
    TraceModel model = opened(session);
    model.start("wet-locker");
    model.cautionsRead();
    model.answer("strip", "slips");
    model.madeSafe("strip");
    model.answer("when", "after-rain");
    assertThat(model.step().orElseThrow()).isNotInstanceOf(NextStep.MakeSafe.class);
    TraceModel later = opened(session("knot"));
    later.start("wet-locker");
    assertThat(later.trace().orElseThrow().trail())
        .extracting(entry -> entry.step())
        .containsExactly(new TrailStep.Answered("when", "after-rain"));
    assertThat(later.step().orElseThrow())
        .isInstanceOf(NextStep.DoCheck.class)
        .extracting(NextStep::id)
        .isEqualTo("strip");
    assertThat(notices.current()).as("nothing is told as left out").isEmpty();
  }

  @Test
  void whatIsWrittenIsReadBack() throws IOException {
    KeptTrace odd =
        new KeptTrace(
            "a tarnwick-30 of 2017 with mast-carbon",
            "wet-locker",
            LocalDate.of(2026, 3, 1),
            false,
            Optional.of(
                Set.of(
                    new CautionsRead.Read("solvents", "Open it: = \u00e9 \\ #1"),
                    new CautionsRead.Read("solvents", ""))),
            List.of(
                new TrailStep.Answered("which", " a = b: \u00e9\u2013 \\ #1\n"),
                new TrailStep.MendFailed("hose"),
                new TrailStep.CouldNotTell("clip")),
            Optional.of(new NextStep.Which("check", "strip")));
    assertThat(KeptTraceText.read(KeptTraceText.write(odd))).isEqualTo(odd);
    files().keep(odd);
    assertThat(files().read().traces()).containsExactly(odd);
    files().drop(odd.boat(), odd.symptom());
    assertThat(files().read().traces()).isEmpty();
  }
}
