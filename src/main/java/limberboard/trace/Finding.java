package limberboard.trace;

import limberboard.words.Sentences;

/** One way a step can turn out. */
public sealed interface Finding {
  /** In words: the answer, "can't tell", "made safe", "mended", "not cured". */
  String words();

  /**
   * A check gave an answer.
   *
   * @param answer the answer, as in the file
   */
  record Answer(String answer) implements Finding {
    @Override
    public String words() {
      return Sentences.spoken(answer);
    }
  }

  /** A check could not be told. */
  record CouldNotTell() implements Finding {
    @Override
    public String words() {
      return "can't tell";
    }
  }

  /** What a check that comes first asks for was made safe. */
  record MadeSafe() implements Finding {
    @Override
    public String words() {
      return "made safe";
    }
  }

  /** A mend cured the fault; the trace ends. */
  record Mended() implements Finding {
    @Override
    public String words() {
      return "mended";
    }
  }

  /** A mend did not cure it. */
  record NotCured() implements Finding {
    @Override
    public String words() {
      return "not cured";
    }
  }
}
