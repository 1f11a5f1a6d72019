package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import limberboard.boat.Boat;
import limberboard.boat.Fitting;
import limberboard.boat.NotEntered;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.Caution;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Skill;
import limberboard.print.cut.CheckCutter;
import limberboard.print.drawing.Markup;
import limberboard.trace.NextStep;
import limberboard.trace.RankedCause;
import limberboard.trace.StepOutcome;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.SkillWords;

/**
 * Where a trace stands and what to do next, in words for a letter: what may be an emergency first
 * and in full, every other caution in two lines, then the step, how it is done, what it takes and
 * what each answer will mean; the whole text of the cautions at the end. Immutable; any thread,
 * best not the event thread.
 */
public final class ReplyText {
  private static final int LIKELIEST = 3;
  private final Library library;
  private final List<Line> lines = new ArrayList<>();

  /** What a line is. */
  private enum Kind {
    HEADING,
    PARAGRAPH,
    ITEM
  }

  private record Line(Kind kind, String text) {}

  /**
   * Words about a trace.
   *
   * @param library where procedures and tools are looked up
   * @param trace the trace as it stands
   * @param step what is to be done next
   */
  public ReplyText(Library library, Trace trace, NextStep step) {
    this.library = library;
    Fitting fitting = trace.fault().fitting();
    heading(trace.fault().page().title() + ", on " + named(fitting.boat()));
    List<WorkCaution> cautions = TraceSheet.cautions(trace, step);
    cautions.stream().filter(WorkCaution::emergency).forEach(this::caution);
    List<WorkCaution> others = cautions.stream().filter(each -> !each.emergency()).toList();
    others.forEach(each -> item(named(each) + ". " + each.danger() + " " + each.rule()));
    found(trace);
    if (step instanceof NextStep.DoCheck check) {
      check(check, fitting);
      meanings(trace, step);
    } else if (step instanceof NextStep.DoMend mend) {
      mend(mend, fitting);
    } else {
      heading("Next: " + step.text());
      step.safety().ifPresent(this::paragraph);
      paragraph(step.why());
    }
    List<WorkCaution> toTell = WorkCautions.toTellInFull(cautions);
    if (!toTell.isEmpty()) {
      heading("The cautions in full");
      toTell.forEach(this::caution);
    }
  }

  private static String named(Boat boat) {
    String hull = boat.hull() == NotEntered.NO_HULL ? "" : ", hull " + boat.hull();
    return boat.name() + " (" + boat.model().title() + hull + ", built " + boat.built() + ")";
  }

  private void heading(String text) {
    lines.add(new Line(Kind.HEADING, text));
  }

  private void paragraph(String text) {
    if (!text.isBlank()) {
      lines.add(new Line(Kind.PARAGRAPH, text.strip()));
    }
  }

  private void item(String text) {
    lines.add(new Line(Kind.ITEM, text.strip()));
  }

  private static String named(WorkCaution caution) {
    return "Caution: "
        + caution.title()
        + (caution.because().isEmpty() ? "" : " (for " + caution.because() + ")");
  }

  private void caution(WorkCaution caution) {
    Caution told = caution.page().details();
    caution.question().ifPresent(asked -> paragraph(asked + " If so, or if you cannot tell:"));
    heading(named(caution));
    paragraph(told.danger());
    told.act().forEach(this::item);
    paragraph(told.seek());
  }

  private void found(Trace trace) {
    List<TrailEntry> trail = trace.trail();
    if (!trail.isEmpty()) {
      heading("What has been found so far");
      trail.forEach(entry -> item(entry.text() + " " + entry.answer()));
    }
    heading("Likeliest causes now");
    List<RankedCause> ranking = trace.ranking();
    ranking.subList(0, Math.min(LIKELIEST, ranking.size())).forEach(ranked -> item(likely(ranked)));
    paragraph(
        "The chances are worked out from "
            + trace.fault().chancesFrom()
            + ", and from the answers.");
  }

  private static String likely(RankedCause ranked) {
    return ranked.cause().title()
        + ": "
        + ranked.word()
        + " ("
        + PerCent.words(ranked.chance())
        + ")";
  }

  private void check(NextStep.DoCheck step, Fitting fitting) {
    Check check = step.check().check();
    heading("Next, please check: " + check.ask());
    first(step);
    paragraph(CheckCutter.how(check));
    CheckCutter.safety(check).ifPresent(this::paragraph);
    if (check.skill() != Skill.LICENSED) {
      tools(check.tools(), fitting);
    }
    paragraph("Time: about " + Minutes.words(step.minutes()) + ".");
    paragraph("Who: " + SkillWords.of(check.skill()) + ".");
  }

  private void first(NextStep step) {
    if (!step.toOpen().isEmpty()) {
      paragraph(
          "First: "
              + step.toOpen().stream()
                  .map(access -> access.title())
                  .collect(Collectors.joining("; then "))
              + ".");
    }
  }

  private void tools(List<ToolUse> tools, Fitting fitting) {
    String named =
        tools.stream()
            .filter(tool -> fitting.fits(tool.fits()))
            .map(tool -> library.page(tool.use()).map(Page::title).orElse(tool.use()))
            .collect(Collectors.joining(", "));
    if (!named.isEmpty()) {
      paragraph("Tools: " + named + ".");
    }
  }

  private void meanings(Trace trace, NextStep step) {
    heading("What the answer will mean");
    for (StepOutcome outcome : trace.outcomes(step)) {
      Optional<RankedCause> leading = outcome.then().map(then -> then.ranking().get(0));
      leading.ifPresent(
          ranked -> item(outcome.finding().words() + ": most likely then, " + likely(ranked)));
    }
  }

  private void mend(NextStep.DoMend step, Fitting fitting) {
    heading("Next, please do this work: " + step.text());
    first(step);
    library
        .procedure(step.id())
        .ifPresent(
            page -> {
              paragraph(page.head().summary());
              tools(page.details().tools(), fitting);
              paragraph("Who: " + SkillWords.of(page.details().skill()) + ".");
            });
    paragraph("Time: about " + Minutes.words(step.minutes()) + ".");
    paragraph(step.why());
    paragraph("The steps are on the page of this work; read it to the end before beginning.");
  }

  /** As plain text, without line breaks inside paragraphs, as letters want it. */
  public String plain() {
    StringBuilder text = new StringBuilder();
    Kind before = Kind.PARAGRAPH;
    for (Line line : lines) {
      if (text.length() > 0 && !(line.kind() == Kind.ITEM && before != Kind.PARAGRAPH)) {
        text.append('\n');
      }
      text.append(line.kind() == Kind.ITEM ? "- " : "").append(line.text()).append('\n');
      before = line.kind();
    }
    return text.toString();
  }

  /** As a piece of HTML, without anything that is loaded from elsewhere. */
  public String html() {
    Markup html = new Markup();
    boolean listed = false;
    for (Line line : lines) {
      boolean item = line.kind() == Kind.ITEM;
      if (item && !listed) {
        html.open("ul");
      } else if (listed && !item) {
        html.close("ul");
      }
      listed = item;
      switch (line.kind()) {
        case HEADING -> html.open("p").element("b", line.text()).close("p");
        case PARAGRAPH -> html.element("p", line.text());
        case ITEM -> html.element("li", line.text());
      }
    }
    return (listed ? html.close("ul") : html).toString();
  }
}
