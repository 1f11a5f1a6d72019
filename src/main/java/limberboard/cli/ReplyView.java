package limberboard.cli;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.recognise.Recognised;
import limberboard.letters.recognise.Recognition;
import limberboard.letters.recognise.Recognition.Suspect;
import limberboard.letters.recognise.Recognition.Words;
import limberboard.letters.reply.KeptLetter;
import limberboard.letters.reply.Reply;
import limberboard.letters.reply.ToldAnswer;
import limberboard.letters.reply.ToldFault;
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
    Optional<String> draft,
    ConversationView conversation,
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

  /**
   * What the letter goes on from.
   *
   * @param letters the earlier letters, the earliest first
   * @param told all that was told of the faults, in all letters
   */
  record ConversationView(List<String> letters, List<ToldView> told) {
    static ConversationView of(Reply reply) {
      List<ToldView> told = new ArrayList<>();
      for (ToldFault fault : reply.faults()) {
        fault.told().forEach(each -> told.add(ToldView.of(fault.symptom(), each)));
      }
      return new ConversationView(reply.earlier().stream().map(KeptLetter::name).toList(), told);
    }
  }

  /**
   * An answer to a check.
   *
   * @param answer null when it could not be told
   * @param letter the earlier letter that says so; null for this one
   * @param before what an earlier letter had said instead, or null
   */
  record ToldView(
      String symptom,
      String check,
      Optional<String> answer,
      Optional<String> letter,
      Optional<String> before) {
    static ToldView of(String symptom, ToldAnswer told) {
      return new ToldView(
          symptom,
          told.check(),
          told.answer(),
          Optional.of(told.letter()).filter(name -> !name.isEmpty()),
          told.before());
    }
  }

  static ReplyView of(LetterReplies.Answered answered) {
    Reply reply = answered.reply();
    Recognition recognition = reply.recognition();
    return new ReplyView(
        reply.boat().map(Recognised::id),
        reply.boat().map(Recognised::why).orElse(""),
        reply.model().map(Recognised::id),
        recognition.urgent().isPresent(),
        recognition.urgent().map(u -> new UrgentView(u.what(), WordsView.of(u.words()))),
        reply.isFault() ? "fault" : "other",
        reply.symptoms().stream().map(SuspectView::of).toList(),
        answers(reply),
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
        reply.traces().stream().map(NextView::of).toList(),
        answered.draft().map(AnswerDraft::text),
        ConversationView.of(reply),
        recognition.text(),
        answered.letter().remarks());
  }

  /** The answers of this letter: those that were read in it, and those of the conversation. */
  private static Map<String, Map<String, String>> answers(Reply reply) {
    Map<String, Map<String, String>> answers = new LinkedHashMap<>();
    reply
        .recognition()
        .answers()
        .forEach(
            (symptom, given) ->
                given.forEach(each -> put(answers, symptom, each.check(), each.answer())));
    for (ToldFault fault : reply.faults()) {
      fault.told().stream()
          .filter(ToldAnswer::isNow)
          .forEach(
              told ->
                  told.answer()
                      .ifPresent(answer -> put(answers, fault.symptom(), told.check(), answer)));
    }
    return answers;
  }

  private static void put(
      Map<String, Map<String, String>> answers, String symptom, String check, String answer) {
    answers.computeIfAbsent(symptom, unseen -> new LinkedHashMap<>()).put(check, answer);
  }
}
