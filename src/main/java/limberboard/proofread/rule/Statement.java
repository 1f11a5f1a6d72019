package limberboard.proofread.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.proofread.file.TradeWords.Agreed;
import limberboard.proofread.text.Figure;
import limberboard.proofread.text.Phrase;
import limberboard.proofread.text.ReadWork;
import limberboard.proofread.text.Sentence;
import limberboard.proofread.text.TextPiece;

/**
 * A figure that a page gives for something.
 *
 * @param page the page
 * @param line the line of the file
 * @param figure the figure
 */
record Statement(Page<?> page, int line, Figure figure) {

  /** What a page says of it; nothing on most pages. */
  static List<Statement> of(Page<?> page, Agreed agreed, Surroundings around) {
    List<Phrase> words = around.phrases(agreed.words());
    List<Phrase> unless = around.phrases(agreed.unless());
    List<Statement> said = new ArrayList<>();
    for (TextPiece passage : around.passages(page)) {
      said(page, passage, passage.line(), agreed, words, unless, said);
    }
    if (page.details() instanceof Symptom) {
      for (ReadWork job : around.jobs(page)) {
        for (TextPiece passage : job.passages()) {
          said(page, passage, around.line(job, passage), agreed, words, unless, said);
        }
      }
    }
    return said;
  }

  private static void said(
      Page<?> page,
      TextPiece passage,
      int line,
      Agreed agreed,
      List<Phrase> words,
      List<Phrase> unless,
      List<Statement> said) {
    for (Sentence sentence : passage.sentences()) {
      if (unless.stream().noneMatch(sentence::has)) {
        words.stream()
            .filter(sentence::has)
            .findFirst()
            .flatMap(phrase -> figure(sentence, agreed))
            .ifPresent(figure -> said.add(new Statement(page, line, figure)));
      }
    }
  }

  private static Optional<Figure> figure(Sentence sentence, Agreed agreed) {
    return Figure.in(sentence).stream()
        .filter(
            figure -> agreed.measure().filter(measure -> measure == figure.measure()).isPresent())
        .filter(figure -> figure.least() >= agreed.least().orElse(0.0))
        .filter(figure -> figure.most() <= agreed.most().orElse(Double.MAX_VALUE))
        .findFirst();
  }
}
