package limberboard.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.print.cut.PageCutter;
import limberboard.print.text.PlainText;
import limberboard.trace.CautionsRead;
import limberboard.trace.NextStep;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.trace.TrailStep;
import limberboard.words.Sentences;

/** Traces in the terminal: asks one question at a time until the fault is mended or handed over. */
final class Interview {
  private static final int WIDTH = 80;

  private final CommandContext session;
  private final Library library;
  private final TraceText text;
  private final CautionsText said;
  private CautionsRead read = CautionsRead.NONE;
  private List<WorkCaution> shown = List.of();

  Interview(CommandContext session, Library library) {
    this.session = session;
    this.library = library;
    this.text = new TraceText(session.out());
    this.said = new CautionsText(session.out());
  }

  /** Goes on from this trace until it ends, or the person stops or the input does. */
  void run(Trace start) throws IOException {
    session
        .out()
        .println(start.fault().page().title() + ": " + start.fault().fitting().boat().name());
    session.out().println();
    for (WorkCaution caution : start.fault().first()) {
      if (read.form(caution) == CautionsRead.Form.QUESTION && !isEmergency(caution)) {
        return;
      }
    }
    said.print(start.fault().first(), read);
    shown = start.fault().first();
    Optional<Trace> going = Optional.of(start);
    while (going.isPresent()) {
      going = step(going.get());
    }
  }

  /** Asks whether there is an emergency; false when the person stops or the input ends. */
  private boolean isEmergency(WorkCaution caution) throws IOException {
    session.out().println(caution.question().orElseThrow() + " (yes, no, stop; yes if in doubt)");
    while (true) {
      String word = line().orElse("stop");
      if (word.equals("yes") || word.equals("no")) {
        read = read.answered(caution, word.equals("yes"));
        return true;
      }
      if (word.equals("stop")) {
        said.whole(caution);
        return false;
      }
      session.out().println("Type yes, no or stop.");
    }
  }

  private Optional<Trace> step(Trace trace) throws IOException {
    NextStep next = trace.next();
    if (!(next instanceof NextStep.DoMend)) {
      said.print(next.cautions(), read);
      shown = WorkCautions.ofStep(trace.fault().first(), next.cautions());
    }
    text.next(next);
    if (next instanceof NextStep.DoCheck check) {
      return ask(trace, check);
    }
    if (next instanceof NextStep.MakeSafe safe) {
      return makeSafe(trace, safe);
    }
    if (next instanceof NextStep.DoMend mend) {
      return mend(trace, mend);
    }
    text.chances(trace);
    session.out().println("Hand it to the yard with this list.");
    return Optional.empty();
  }

  private Optional<Trace> ask(Trace trace, NextStep.DoCheck check) throws IOException {
    List<String> answers = check.check().answers();
    for (int i = 0; i < answers.size(); i++) {
      session.out().println("  " + (i + 1) + "  " + Sentences.spoken(answers.get(i)));
    }
    session
        .out()
        .println(
            "  ?  can't tell    back  take back the last answer    stop"
                + (shown.isEmpty() ? "" : "    cautions  their whole text"));
    while (true) {
      Optional<String> said = prompt();
      if (said.isEmpty() || said.get().equals("stop")) {
        return Optional.empty();
      }
      Optional<Trace> after = understood(trace, check, said.get());
      if (after.isPresent()) {
        changed(after.get());
        return after;
      }
      session.out().println("Type a number from 1 to " + answers.size() + ", ?, back or stop.");
    }
  }

  private static Optional<Trace> understood(Trace trace, NextStep.DoCheck check, String said) {
    List<String> answers = check.check().answers();
    String word = said.replace(' ', '-');
    if (said.equals(TraceRequest.CANT_TELL)) {
      return Optional.of(trace.cantTell(check.id()));
    }
    if (said.equals("back")) {
      return Optional.of(withoutLast(trace));
    }
    if (answers.contains(word)) {
      return Optional.of(trace.answer(check.id(), word));
    }
    boolean number = said.matches("[1-9]") && Integer.parseInt(said) <= answers.size();
    return number
        ? Optional.of(trace.answer(check.id(), answers.get(Integer.parseInt(said) - 1)))
        : Optional.empty();
  }

  /** Goes on only once it is said to be done; there is no way past it. */
  private Optional<Trace> makeSafe(Trace trace, NextStep.MakeSafe safe) throws IOException {
    session.out().println("Is that done, and is it safe now? (done, back, stop)");
    while (true) {
      Optional<String> said = prompt();
      if (said.isEmpty() || said.get().equals("stop")) {
        return Optional.empty();
      }
      if (said.get().equals("done") || said.get().equals("back")) {
        Trace after =
            said.get().equals("done") ? trace.madeSafe(safe.id()) : trace.takeBack(safe.id());
        changed(after);
        return Optional.of(after);
      }
      session.out().println("Type done, back or stop.");
    }
  }

  private static Trace withoutLast(Trace trace) {
    List<TrailEntry> trail = trace.trail();
    if (trail.isEmpty()) {
      return trace;
    }
    TrailStep last = trail.get(trail.size() - 1).step();
    if (last instanceof TrailStep.MendFailed mend) {
      return trace.takeBackMend(mend.id());
    }
    if (last instanceof TrailStep.MadeSafe safe) {
      return trace.takeBackSafe(safe.id());
    }
    return trace.takeBack(last.id());
  }

  private void changed(Trace trace) {
    session.out().println();
    trace.explain().ifPresent(session.out()::println);
    text.chances(trace);
    session.out().println();
  }

  private Optional<Trace> mend(Trace trace, NextStep.DoMend mend) throws IOException {
    library.page(mend.id()).ifPresent(page -> show(trace, page));
    session.out().println("Did it cure the fault? (yes, no, stop)");
    while (true) {
      Optional<String> said = prompt();
      if (said.isEmpty() || said.get().equals("yes") || said.get().equals("stop")) {
        return Optional.empty();
      }
      if (said.get().equals("no")) {
        Trace after = trace.mendTried(mend.cause().id());
        changed(after);
        return Optional.of(after);
      }
      session.out().println("Type yes, no or stop.");
    }
  }

  private void show(Trace trace, Page<?> page) {
    session.out().println();
    session
        .out()
        .println(
            new PlainText()
                .render(
                    new PageCutter(library).cut(page, Optional.of(trace.fault().fitting())),
                    WIDTH));
  }

  /** What is typed next; the whole text of the cautions is printed when it is asked for. */
  private Optional<String> prompt() throws IOException {
    Optional<String> typed = line();
    while (typed.filter("cautions"::equals).isPresent()) {
      session.out().println();
      shown.forEach(said::whole);
      read = read.with(shown);
      typed = line();
    }
    return typed;
  }

  private Optional<String> line() throws IOException {
    session.out().print("> ");
    session.out().flush();
    return Optional.ofNullable(session.in().readLine())
        .map(line -> line.strip().toLowerCase(java.util.Locale.ROOT));
  }
}
