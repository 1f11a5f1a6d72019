package limberboard.desktop.trace;

import javax.swing.JButton;
import javax.swing.JLabel;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.trace.FaultCause;
import limberboard.trace.RankedCause;
import limberboard.words.PerCent;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** One cause: its title, a bar, its chance in words and per cent; more on request. */
final class CauseRow extends Column {

  CauseRow(RankedCause ranked, boolean open, Runnable toggle, Runnable openMend) {
    super(3);
    FaultCause cause = ranked.cause();
    JLabel percent = new JLabel(PerCent.words(ranked.chance()));
    percent.putClientProperty("FlatLaf.styleClass", "h4");
    add(Row.growing(10, 0, Text.strong(cause.title()), percent));
    add(new ChanceBar(ranked.chance(), ranked.before()));
    JButton more = Buttons.link(open ? "Less" : "More", toggle);
    more.getAccessibleContext()
        .setAccessibleName((open ? "Less about: " : "More about: ") + cause.title());
    add(Row.growing(6, 0, Text.quiet(chance(ranked)), more));
    if (open) {
      addMore(cause, openMend);
    }
    getAccessibleContext()
        .setAccessibleName(cause.title() + ", " + ranked.word() + ", " + percent.getText());
  }

  private void addMore(FaultCause cause, Runnable openMend) {
    if (!cause.about().isEmpty()) {
      add(Text.plain(cause.about()));
    }
    add(
        Text.quiet(
            "Before any answer " + PerCent.words(cause.prior()) + ": " + cause.from() + "."));
    if (cause.isSomethingElse()) {
      add(Text.plain("Something the library does not list. No list is ever complete."));
      return;
    }
    add(Text.quiet("Mended by: " + SkillWords.of(cause.mendSkill()) + "."));
    add(Row.wrapping(4, Buttons.link(cause.mendTitle(), openMend)));
  }

  /** In words, and what it was before the last answer when that was another one. */
  private static String chance(RankedCause ranked) {
    String word = Sentences.capital(ranked.word());
    String before = PerCent.words(ranked.before());
    return before.equals(PerCent.words(ranked.chance())) ? word : word + ", was " + before;
  }
}
