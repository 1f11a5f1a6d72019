package limberboard.desktop.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import limberboard.desktop.support.Steps;
import org.junit.jupiter.api.Test;

class BackgroundTest {
  private final Steps worker = new Steps();
  private final Steps eventThread = new Steps();
  private final Activity activity = new Activity();
  private final Notices notices = new Notices();
  private final Background background = new Background(worker, eventThread, activity, notices);
  private final List<Object> done = new ArrayList<>();

  @Test
  void workRunsOnTheWorkerAndItsOutcomeComesBackOnTheEventThread() {
    background.run("Counting", () -> 42, done::add);
    assertThat(worker.waiting()).isEqualTo(1);
    worker.next();
    assertThat(done).isEmpty();
    eventThread.next();
    assertThat(done).containsExactly(42);
  }

  @Test
  void whatIsBeingDoneIsToldUntilItIsOver() {
    background.run("Counting", () -> 42, done::add);
    assertThat(activity.now()).contains("Counting");
    worker.all();
    eventThread.all();
    assertThat(activity.now()).isEmpty();
  }

  @Test
  void aFailureBecomesANoticeThatSaysWhatFailedAndWhy() {
    background.run(
        "Reading the library",
        () -> {
          throw new IOException("the folder articles is missing");
        },
        done::add);
    worker.all();
    eventThread.all();
    assertThat(done).isEmpty();
    assertThat(activity.now()).isEmpty();
    assertThat(notices.current())
        .contains(
            new Notices.Notice(
                "Reading the library did not work: the folder articles is missing", true));
  }

  @Test
  void whatWaitedForTheOutcomeIsPutRightBeforeTheFailureIsShown() {
    background.run(
        "Weighing",
        () -> {
          throw new IOException("no");
        },
        done::add,
        () -> done.add(notices.current().isPresent() ? "too late" : "put right"));
    worker.all();
    eventThread.all();
    assertThat(done).containsExactly("put right");
    assertThat(notices.current()).isPresent();
  }

  @Test
  void endlessRecursionBecomesANoticeToo() {
    background.run("Laying out", () -> endless(1), done::add);
    worker.all();
    eventThread.all();
    assertThat(notices.current().map(Notices.Notice::failure)).contains(true);
  }

  private static int endless(int depth) {
    return endless(depth + 1) + 1;
  }

  @Test
  void ofSeveralOnlyTheNewestOutcomeCountsWhicheverIsReadyLast() {
    Latest latest = new Latest(background);
    latest.run("first", () -> "old", done::add);
    latest.run("second", () -> "new", done::add);
    worker.last();
    worker.last();
    eventThread.all();
    assertThat(done).containsExactly("new");
  }

  @Test
  void outcomesOfDroppedWorkDoNotCome() {
    Latest latest = new Latest(background);
    latest.run("first", () -> "old", done::add);
    latest.drop();
    worker.all();
    eventThread.all();
    assertThat(done).isEmpty();
  }
}
