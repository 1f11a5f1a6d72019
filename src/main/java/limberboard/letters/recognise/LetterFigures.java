package limberboard.letters.recognise;

import limberboard.letters.recognise.LetterText.SaidWord;

/** The few figures of a letter from which its chances are reckoned. */
final class LetterFigures {
  private final Topics topics;
  private final TopicScores scores;
  private final LetterText text;

  LetterFigures(Topics topics, TopicScores scores, LetterText text) {
    this.topics = topics;
    this.scores = scores;
    this.text = text;
  }

  /** For one symptom. */
  double[] of(int symptom, boolean excluded) {
    double whole = scores.whole(symptom);
    double next = 0;
    for (int other = 0; other < topics.symptoms().size(); other++) {
      next = other == symptom ? next : Math.max(next, scores.whole(other));
    }
    return new double[] {
      whole,
      scores.window(symptom),
      Math.max(-3, Math.min(3, whole - next)),
      scores.whole(topics.unknown()),
      scores.window(topics.unknown()),
      scores.whole(topics.noFault()),
      excluded ? 1 : 0
    };
  }

  /** For whether it tells of a fault at all. */
  double[] ofFault() {
    double most = 0;
    double window = 0;
    for (int symptom = 0; symptom < topics.symptoms().size(); symptom++) {
      most = Math.max(most, scores.whole(symptom));
      window = Math.max(window, scores.window(symptom));
    }
    double faults = text.words().stream().filter(w -> w.word().fault() && w.isSo()).count();
    double over = text.words().stream().filter(SaidWord::over).count();
    double length = Math.max(10, text.words().size());
    return new double[] {
      most,
      window,
      scores.whole(topics.unknown()),
      scores.whole(topics.noFault()),
      scores.window(topics.noFault()),
      Math.min(4, faults),
      over / length
    };
  }
}
