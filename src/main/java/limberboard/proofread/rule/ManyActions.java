package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;
import limberboard.words.Sentences;

/**
 * A step that holds more than three actions. Two, and a third that goes with them such as writing
 * down what was read, are one grip of the hand.
 */
final class ManyActions implements WorkRule {
  private static final int MOST = 3;
  private static final Set<String> NOTHING = Set.of("nothing", "no", "none", "nobody");
  private static final Pattern CLAUSE = Pattern.compile("[,:;.] | and | then |, then ");

  @Override
  public String name() {
    return "many-actions";
  }

  @Override
  public List<PageRemark> in(ReadWork job, Surroundings around) {
    List<PageRemark> found = new ArrayList<>();
    Set<String> verbs = new HashSet<>(around.words().actions());
    for (TextPiece step : job.isCheck() ? List.<TextPiece>of() : job.steps()) {
      List<String> actions = actions(step, verbs);
      if (actions.size() > MOST) {
        found.add(
            PageRemark.at(
                this,
                Gravity.STUMBLES,
                job.page(),
                step.line(),
                "step " + step.step(),
                "step "
                    + step.step()
                    + " holds "
                    + actions.size()
                    + " actions: "
                    + Sentences.list(actions, "and"),
                "one action, one number"));
      }
    }
    return found;
  }

  private static List<String> actions(TextPiece step, Set<String> verbs) {
    List<String> actions = new ArrayList<>();
    for (Sentence sentence : step.sentences()) {
      for (String clause : CLAUSE.split(sentence.text())) {
        List<String> words = Sentence.one(clause).words();
        boolean nothing = words.size() > 1 && NOTHING.contains(words.get(1));
        if (!words.isEmpty() && !nothing && verbs.contains(words.get(0))) {
          actions.add(words.get(0));
        }
      }
    }
    return actions;
  }
}
