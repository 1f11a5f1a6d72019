package limberboard.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.letters.mail.Letter;
import limberboard.letters.recognise.Recognised;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.GivenAnswer;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.letters.recognise.Recognition.Words;
import limberboard.trace.Trace;

/** What was recognised in a letter as {@code reply --json} prints it; the keys stay. */
@JsonInclude(JsonInclude.Include.ALWAYS)
record ReplyView(
    Optional<String> boat,
    String boatWhy,
    Optional<String> model,
    boolean urgent,
    Optional<UrgentView> urgentWhy,
    String kind,
    List<SuspectView> symptoms,
    Map<String, Map<String, String>> answers,
    List<AnswerWordsView> answerWords,
    List<NextView> next,
    String text,
    List<String> remarks) {

  private static final double THOUSAND = 1000;
  private static final double SUREST = 0.999;

  /** Why it is urgent. */
  record UrgentView(String what, WordsView words) {}

  /** Words of the letter; offsets count in {@code text}. */
  record WordsView(String written, int start, int end) {
    static WordsView of(Words words) {
      return new WordsView(words.written(), words.start(), words.end());
    }
  }

  /** A symptom with its chance, 0 to 1: an estimate. */
  record SuspectView(String id, double chance, List<WordsView> words) {
    static SuspectView of(Suspect suspect) {
      return new SuspectView(
          suspect.id(),
          Math.min(SUREST, Math.round(suspect.chance() * THOUSAND) / THOUSAND),
          suspect.words().stream().map(WordsView::of).toList());
    }
  }

  /** The words that gave an answer. */
  record AnswerWordsView(String symptom, String check, String answer, WordsView words) {}

  /** The next step of a symptom, with the symptom's own cautions. */
  record NextView(
      String symptom, List<TraceView.CautionView> first, @JsonUnwrapped TraceView.StepView step) {
    static NextView of(Trace trace) {
      return new NextView(
          trace.fault().page().id(),
          TraceView.CautionView.of(trace.fault().first()),
          TraceView.StepView.of(trace.next()));
    }
  }

  static ReplyView of(Letter letter, Recognition recognition, LetterNext next) {
    Map<String, Map<String, String>> answers = new LinkedHashMap<>();
    for (Suspect suspect : recognition.symptoms()) {
      List<GivenAnswer> given = recognition.answers().getOrDefault(suspect.id(), List.of());
      Map<String, String> of = new LinkedHashMap<>();
      given.forEach(answer -> of.put(answer.check(), answer.answer()));
      if (!of.isEmpty()) {
        answers.put(suspect.id(), of);
      }
    }
    return new ReplyView(
        recognition.boat().map(Recognised::id),
        recognition.boat().map(Recognised::why).orElse(""),
        recognition.model().map(Recognised::id),
        recognition.urgent().isPresent(),
        recognition.urgent().map(u -> new UrgentView(u.what(), WordsView.of(u.words()))),
        recognition.fault() ? "fault" : "other",
        recognition.symptoms().stream().map(SuspectView::of).toList(),
        answers,
        recognition.answers().entrySet().stream()
            .flatMap(
                each ->
                    each.getValue().stream()
                        .map(
                            given ->
                                new AnswerWordsView(
                                    each.getKey(),
                                    given.check(),
                                    given.answer(),
                                    WordsView.of(given.words()))))
            .toList(),
        next.traces(recognition).stream().map(NextView::of).toList(),
        recognition.text(),
        letter.remarks());
  }
}
