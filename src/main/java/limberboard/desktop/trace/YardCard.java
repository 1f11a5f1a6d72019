package limberboard.desktop.trace;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JButton;
import limberboard.desktop.parts.Buttons;
import limberboard.desktop.parts.Column;
import limberboard.desktop.parts.Docked;
import limberboard.desktop.parts.RaisedColumn;
import limberboard.desktop.parts.Row;
import limberboard.desktop.parts.Text;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep.CallYard;
import limberboard.trace.RankedCause;
import limberboard.trace.Trace;
import limberboard.words.PerCent;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** The fault goes to the yard, with everything that has been found so far. */
final class YardCard extends Docked {
  private static final int LIKELY = 3;
  private final transient TraceModel model;
  private final transient Consumer<String> copy;
  private final RaisedColumn sheet = RaisedColumn.readable(10);
  private final JButton copyButton;
  private final transient OtherSteps others;
  private String report = "";

  /**
   * A card.
   *
   * @param model the trace
   * @param copy puts a text where other programs can take it from
   */
  YardCard(TraceModel model, Consumer<String> copy) {
    super(10);
    this.model = model;
    this.copy = copy;
    this.others = new OtherSteps(model);
    copyButton = Buttons.main("Copy what was found", "copy-report", () -> this.copy.accept(report));
    JButton mended = Buttons.plain("The yard has mended it", "yard-mended", this::mended);
    Column foot = new Column(0).padded(0, 2, 2, 2);
    foot.add(Row.wrapping(10, copyButton, mended, others.button()));
    dock(sheet, foot);
  }

  JButton first() {
    return copyButton;
  }

  private void mended() {
    List<RankedCause> ranking = model.trace().map(Trace::ranking).orElse(List.of());
    Optional<FaultCause> likeliest =
        ranking.stream()
            .map(RankedCause::cause)
            .filter(cause -> !cause.isSomethingElse())
            .findFirst();
    model.itIsMended(likeliest);
  }

  void show(Trace trace, CallYard step) {
    report = new YardReport(trace).text();
    others.offer(trace, step);
    sheet.removeAll();
    sheet.add(Text.title("Hand it to the yard"));
    sheet.add(Text.reading(step.why()));
    RemarkBox.addTo(sheet, trace);
    sheet.add(Text.caption("Likeliest so far"));
    for (RankedCause ranked :
        trace.ranking().subList(0, Math.min(LIKELY, trace.ranking().size()))) {
      Column cause = new Column(1);
      cause.add(Text.strong(ranked.cause().title()));
      cause.add(Text.plain(line(ranked)));
      sheet.add(cause);
    }
    sheet.add(
        Text.quiet(
            "Copy what was found into an e-mail or read it out on the telephone: it saves the yard"
                + " asking the same questions again."));
    revalidate();
    repaint();
  }

  private static String line(RankedCause ranked) {
    String chance = Sentences.capital(ranked.word()) + ", " + PerCent.words(ranked.chance()) + ".";
    FaultCause cause = ranked.cause();
    return cause.isSomethingElse()
        ? chance
        : chance + " " + cause.mendTitle() + ": " + SkillWords.whose(cause.mendSkill()) + ".";
  }
}
