package limberboard.cli;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import limberboard.boat.Typed;
import limberboard.upkeep.Due;
import limberboard.upkeep.start.AnswerText;
import limberboard.upkeep.start.Start;
import limberboard.upkeep.start.StartAnswer;
import limberboard.upkeep.start.StartQuestion;

/** Asks in the terminal what is known of a bought boat, one question after another. */
final class StartInterview {
  private final CommandContext session;
  private final Start start;
  private final StartText text;
  private final AnswerText reader;
  private final Map<String, StartAnswer> answers = new LinkedHashMap<>();
  private String heard = "";

  StartInterview(CommandContext session, Start start, StartText text) {
    this.session = session;
    this.start = start;
    this.text = text;
    this.reader = new AnswerText(start.upkeep().fitting().boat(), session.today());
  }

  /** The answers; empty when it was stopped, or the input ended before its end. */
  Optional<Map<String, StartAnswer>> ask() throws IOException {
    List<StartQuestion> questions = start.questions();
    text.begin(questions.size());
    int at = 0;
    while (at < questions.size()) {
      StartQuestion question = questions.get(at);
      text.question(question, at + 1, questions.size());
      switch (hear(question.id(), true)) {
        case ANSWERED -> at++;
        case BACK -> at = Math.max(0, at - 1);
        case EACH -> at = each(question) ? at + 1 : at;
        case DONE -> at = questions.size();
        case STOP -> {
          return Optional.empty();
        }
      }
      if (heard.equals("done")) {
        at = questions.size();
      } else if (heard.equals("stop")) {
        return Optional.empty();
      }
    }
    return Optional.of(answers);
  }

  /** What a person wants. */
  private enum Wants {
    ANSWERED,
    BACK,
    EACH,
    DONE,
    STOP
  }

  /** Goes through the work of a question; says whether it came to its end. */
  private boolean each(StartQuestion question) throws IOException {
    answers.put(question.id(), StartAnswer.NOT_KNOWN);
    for (Due due : question.works()) {
      if (!due.work().id().equals(question.id())) {
        session.out().println("    " + due.work().title() + ":");
        Wants wants = hear(due.work().id(), false);
        if (wants != Wants.ANSWERED) {
          return false;
        }
      }
    }
    return true;
  }

  private Wants hear(String what, boolean whole) throws IOException {
    while (true) {
      session.out().print("> ");
      session.out().flush();
      String line = session.in().readLine();
      heard = line == null ? "stop" : line.strip().toLowerCase(Locale.ROOT);
      switch (heard) {
        case "stop" -> {
          return Wants.STOP;
        }
        case "done" -> {
          return Wants.DONE;
        }
        case "back" -> {
          return Wants.BACK;
        }
        default -> {
          if (whole && heard.equals("each")) {
            return Wants.EACH;
          }
        }
      }
      Typed<StartAnswer> read = reader.read(heard);
      if (read.good().isPresent()) {
        answers.put(what, read.good().get());
        return Wants.ANSWERED;
      }
      Typed.Bad<StartAnswer> bad = read.bad().orElseThrow();
      session.out().println(bad.wrong() + "; " + bad.right());
    }
  }
}
