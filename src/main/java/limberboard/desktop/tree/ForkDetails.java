package limberboard.desktop.tree;

import java.awt.BorderLayout;
import java.awt.Rectangle;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JPanel;
import limberboard.boat.WorkCaution;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Text;
import limberboard.trace.DiagnosticTree.Branch;
import limberboard.trace.DiagnosticTree.Fork;
import limberboard.trace.NextStep;
import limberboard.trace.RankedCause;
import limberboard.trace.TrailEntry;
import limberboard.words.AccessWords;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** The selected step in full: cautions first, then what it is, the causes there, its outcomes. */
final class ForkDetails extends JPanel {
  private static final int LEADING = 3;
  private final transient TreePanel.Cautions cautions;
  private final Column column = new Column(8).padded(2, 2, 8, 10);
  private int shownFork;
  private boolean shownHere;

  ForkDetails(TreePanel.Cautions cautions) {
    super(new BorderLayout());
    this.cautions = cautions;
    setOpaque(false);
    column.setName("tree-step");
    column.setFocusable(true);
    column.getAccessibleContext().setAccessibleName("The selected step");
    add(column.scrolling(), BorderLayout.CENTER);
  }

  /** Puts something below everything else, or takes it away again. */
  void foot(JComponent foot, boolean shown) {
    if (shown) {
      add(foot, BorderLayout.SOUTH);
    } else {
      remove(foot);
    }
    revalidate();
  }

  JComponent region() {
    return column;
  }

  void show(TreeWalk walk) {
    Fork fork = walk.selected();
    column.removeAll();
    List<WorkCaution> dangers = cautions.of(fork.step());
    if (!dangers.isEmpty()) {
      column.add(new StepCautionsBox(dangers, cautions::isRead));
    }
    boolean here = walk.isHere(fork);
    column.add(Text.quiet(ForkWords.kind(fork) + (here ? ". You are here." : "")));
    column.add(Text.heading(fork.step().text()));
    column.add(Text.plain(effort(fork)));
    fork.at().contradiction().ifPresent(clash -> column.add(Text.plain(clash.text())));
    fork.at().secondFault().ifPresent(second -> column.add(Text.plain(second.text())));
    addWay(fork);
    addCauses(fork);
    addOutcomes(fork);
    column.getAccessibleContext().setAccessibleDescription(ForkWords.spoken(walk, fork));
    column.revalidate();
    column.repaint();
    if (fork.number() != shownFork || here != shownHere) {
      shownFork = fork.number();
      shownHere = here;
      column.scrollRectToVisible(new Rectangle(0, 0, 1, 1));
    }
  }

  private static String effort(Fork fork) {
    NextStep step = fork.step();
    String first =
        step.toOpen().isEmpty() ? "" : " First: " + AccessWords.opened(step.toOpen()) + ".";
    return "Takes "
        + Minutes.words(step.minutes())
        + ". On average "
        + ForkWords.minutes(fork)
        + ", until it is mended or with the yard."
        + first
        + who(step);
  }

  private static String who(NextStep step) {
    if (step instanceof NextStep.DoCheck check) {
      return " " + Sentences.capital(SkillWords.whose(check.check().check().skill())) + ".";
    }
    return step instanceof NextStep.DoMend mend
        ? " " + Sentences.capital(SkillWords.whose(mend.cause().mendSkill())) + "."
        : "";
  }

  private void addWay(Fork fork) {
    List<TrailEntry> trail = fork.at().trail();
    column.add(Text.caption("How you come here"));
    if (trail.isEmpty()) {
      column.add(Text.quiet("It is the first step."));
    }
    for (TrailEntry entry : trail) {
      column.add(
          Text.plain(
              entry.text() + " " + Sentences.capital(Sentences.spoken(entry.answer())) + "."));
    }
  }

  private void addCauses(Fork fork) {
    column.add(Text.caption("Likeliest causes here"));
    List<RankedCause> ranking = fork.at().ranking();
    for (RankedCause ranked : ranking.subList(0, Math.min(LEADING, ranking.size()))) {
      column.add(
          Text.plain(
              ranked.cause().title()
                  + ": "
                  + ranked.word()
                  + ", "
                  + PerCent.words(ranked.chance())
                  + "."));
    }
  }

  private void addOutcomes(Fork fork) {
    if (fork.branches().isEmpty()) {
      column.add(Text.plain(fork.step().why()));
      return;
    }
    column.add(Text.caption("How it can turn out"));
    for (Branch branch : fork.branches()) {
      column.add(Text.plain(ForkWords.branch(branch)));
    }
  }
}
