package limberboard.desktop.trace;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import limberboard.desktop.base.Session;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.trace.TrailStep;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ToldAnswersTest {
  private static final String SYMPTOM = "wet-locker";
  private final Steps steps = new Steps();
  private final Session session = new Session(SmallWorkspace.clock(), Optional.of("knot"));
  private final TraceModel model = new TraceModel(session, steps.background());
  private final ToldAnswers told = new ToldAnswers(model);

  @BeforeEach
  void open() {
    session.replace(SmallWorkspace.read());
    steps.all();
  }

  private List<TrailStep> trail() {
    return model.trace().orElseThrow().trail().stream().map(entry -> entry.step()).toList();
  }

  @Test
  void answersAreAddedOnceTheTraceIsThere() {
    List<TrailStep> given =
        List.of(new TrailStep.Answered("when", "after-rain"), new TrailStep.CouldNotTell("strip"));
    assertThat(told.start(SYMPTOM, given)).isTrue();
    assertThat(model.trace()).isEmpty();
    steps.all();
    assertThat(trail()).containsExactlyInAnyOrderElementsOf(given);
    model.undo();
    steps.all();
    assertThat(trail()).isEmpty();
  }

  @Test
  void whatTheTraceHasStays() {
    told.start(SYMPTOM, List.of());
    steps.all();
    model.answer("clip", "firm");
    steps.all();
    told.start(SYMPTOM, List.of(new TrailStep.Answered("when", "always")));
    steps.all();
    assertThat(model.trace().orElseThrow().answers())
        .containsEntry("clip", "firm")
        .containsEntry("when", "always");
  }

  @Test
  void whatIsNoCheckOrNoAnswerIsLeftOut() {
    told.start(
        SYMPTOM,
        List.of(new TrailStep.Answered("no-such", "a"), new TrailStep.Answered("when", "no-such")));
    steps.all();
    assertThat(trail()).isEmpty();
  }

  @Test
  void aSymptomThatTheBoatCannotHaveIsNotTraced() {
    session.choose(Optional.of("stint"));
    assertThat(told.start("gas-smell", List.of())).isFalse();
  }
}
