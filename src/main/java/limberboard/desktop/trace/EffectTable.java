package limberboard.desktop.trace;

import java.util.List;
import limberboard.desktop.parts.WordTable;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;

/** What each answer would do, one row an answer; text in cells wraps. */
final class EffectTable extends WordTable {
  private static final List<String> HEADS =
      List.of("Answer", "Chance", "Likeliest cause then", "What comes next", "From there");

  EffectTable() {
    super("effects", "What each answer would do", HEADS, List.of(18, 10, 30, 30, 12));
  }

  /** Shows the effects of a step of this kind. */
  void show(String kind, List<Effect> effects) {
    String head = kind.equals("mend") ? "Outcome" : HEADS.get(0);
    getColumnModel().getColumn(0).setHeaderValue(head);
    getTableHeader().repaint();
    rows(effects.stream().map(EffectTable::row).toList());
  }

  private static List<String> row(Effect effect) {
    return List.of(
        effect.found(),
        PerCent.words(effect.chance()),
        effect
            .leading()
            .map(ranked -> ranked.cause().title() + ", " + PerCent.words(ranked.chance()))
            .orElse("The fault is mended"),
        effect.next().map(next -> Sentences.capital(next.kind()) + ": " + next.text()).orElse(""),
        effect.next().map(next -> Minutes.words(effect.minutes())).orElse(""));
  }
}
