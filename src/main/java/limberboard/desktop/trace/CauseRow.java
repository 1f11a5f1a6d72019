package limberboard.desktop.trace;

import javax.swing.JButton;
import javax.swing.JLabel;
import limberboard.desktop.base.FigureWords;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.library.value.Skill;
import limberboard.trace.FaultCause;
import limberboard.trace.RankedCause;

/** One cause: its title, a bar, its chance in words and per cent; more on request. */
final class CauseRow extends Column {

  CauseRow(RankedCause ranked, boolean open, Runnable toggle, Runnable openMend) {
    super(3);
    FaultCause cause = ranked.cause();
    JLabel percent = new JLabel(FigureWords.percent(ranked.chance()));
    percent.putClientProperty("FlatLaf.styleClass", "h4");
    add(Row.growing(10, 0, Text.strong(cause.title()), percent));
    add(new ChanceBar(ranked.chance(), ranked.before()));
    JButton more = Buttons.link(open ? "Less" : "More", toggle);
    more.getAccessibleContext()
        .setAccessibleName((open ? "Less about: " : "More about: ") + cause.title());
    add(Row.growing(6, 0, Text.quiet(FigureWords.chance(ranked)), more));
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
            "Before any answer " + FigureWords.percent(cause.prior()) + ": " + cause.from() + "."));
    if (cause.isSomethingElse()) {
      add(Text.plain("Something the library does not list. No list is ever complete."));
      return;
    }
    add(Text.quiet(who(cause.mendSkill())));
    add(Row.wrapping(4, Buttons.link(cause.mendTitle(), openMend)));
  }

  private static String who(Skill skill) {
    return "Mended by: " + FigureWords.who(skill) + ".";
  }
}
