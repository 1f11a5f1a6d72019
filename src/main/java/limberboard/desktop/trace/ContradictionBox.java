package limberboard.desktop.trace;

import limberboard.desktop.parts.Text;
import limberboard.trace.Contradiction;
import limberboard.words.Sentences;

/** Says that answers do not go together, and which to check again. */
final class ContradictionBox extends RemarkBox {
  ContradictionBox(Contradiction clash) {
    super("These answers do not go together", clash.text());
    for (Contradiction.Against against : clash.against()) {
      add(
          Text.plain(
              "Look again at: "
                  + against.check().ask()
                  + " (answered: "
                  + Sentences.capital(Sentences.spoken(against.answer()))
                  + ")"));
    }
  }
}
