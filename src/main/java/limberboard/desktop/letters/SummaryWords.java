package limberboard.desktop.letters;

import java.util.List;
import limberboard.library.page.Page;
import limberboard.words.Sentences;

/** What a letter is about, in the words of one line. */
final class SummaryWords {
  private SummaryWords() {}

  static InboxRow.Summary of(Understanding letter) {
    return new InboxRow.Summary(
        String.join(", ", letter.urgent()),
        letter.fitting().map(fitting -> fitting.boat().name()).orElse(""),
        about(letter),
        letter.about().kind() == AnswerAs.Kind.NOT_COVERED);
  }

  private static String about(Understanding letter) {
    return switch (letter.about().kind()) {
      case FAULTS -> String.join(", ", titles(letter, letter.chosen()));
      case WHICH_SYMPTOM -> {
        List<String> titles = titles(letter, letter.symptoms());
        List<String> few = titles.subList(0, Math.min(2, titles.size()));
        yield "perhaps " + Sentences.list(few.stream().map(Sentences::lowered).toList(), "or");
      }
      case NOT_COVERED -> "a fault without a page";
      case NO_FAULT ->
          letter.about().matter().isEmpty() ? "no fault" : "no fault: " + letter.about().matter();
      case NOTHING -> "nothing to answer";
    };
  }

  private static List<String> titles(Understanding letter, List<String> symptoms) {
    return symptoms.stream().flatMap(id -> letter.page(id).stream()).map(Page::title).toList();
  }
}
