package limberboard.letters.recognise;

import limberboard.letters.recognise.LetterText.SaidWord;

/** The few figures of a letter from which its chances are reckoned. */
final class LetterFigures {
  private static final double LIKE = 10;
  private static final int NONE = -1;

  private final Topics topics;
  private final TopicScores scores;
  private final LetterText text;
  private final TopicChances.Said said;

  LetterFigures(Topics topics, TopicChances chances, TopicScores scores, LetterText text) {
    this.said = chances.read(text, scores);
    this.topics = topics;
    this.scores = scores;
    this.text = text;
  }

  private double most(double[] figures, int but) {
    double most = TopicChances.NOTHING;
    for (int i = 0; i < topics.symptoms().size(); i++) {
      most = i == but ? most : Math.max(most, figures[i]);
    }
    return most;
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
      excluded ? 1 : 0,
      said.whole()[symptom],
      said.window()[symptom],
      said.whole()[topics.unknown()],
      said.whole()[topics.noFault()],
      LIKE * said.like()[symptom],
      LIKE * said.like()[topics.unknown()],
      LIKE * (said.like()[symptom] - most(said.like(), symptom))
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
      over / length,
      most(said.whole(), NONE),
      said.whole()[topics.unknown()],
      said.whole()[topics.noFault()],
      LIKE * said.like()[topics.noFault()],
      Math.log(1 + text.words().size())
    };
  }
}
