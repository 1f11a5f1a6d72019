package limberboard.sharing;

import org.eclipse.jgit.lib.ProgressMonitor;

/** JGit's progress in plain words. */
final class HowFarMonitor implements ProgressMonitor {
  private final HowFar stage;
  private String what = "";
  private int total;
  private int done;

  HowFarMonitor(HowFar stage) {
    this.stage = stage;
  }

  @Override
  public void start(int tasks) {
    // each task tells of itself
  }

  @Override
  public void beginTask(String title, int work) {
    what = words(title);
    total = work;
    done = 0;
    stage.step(what, 0, total);
  }

  private static String words(String title) {
    if (title.contains("eceiving")) {
      return "Receiving";
    }
    if (title.contains("riting")) {
      return "Sending";
    }
    if (title.contains("esolving") || title.contains("pdating")) {
      return "Putting in order";
    }
    return "Looking what there is";
  }

  @Override
  public void update(int completed) {
    done += completed;
    stage.step(what, done, total);
  }

  @Override
  public void endTask() {
    stage.step(what, total, total);
  }

  @Override
  public boolean isCancelled() {
    return stage.isStopped();
  }

  @Override
  public void showDuration(boolean enabled) {
    // the one who is told knows how long it takes
  }
}
