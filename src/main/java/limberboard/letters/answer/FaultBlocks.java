package limberboard.letters.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import limberboard.boat.Fitting;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.letters.answer.AnswerDraft.AskedCheck;
import limberboard.letters.answer.Visit.Asked;
import limberboard.library.Library;
import limberboard.library.page.Check;
import limberboard.library.page.Model.Access;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.ToolUse;
import limberboard.library.value.LetterPart;
import limberboard.library.value.Skill;
import limberboard.print.cut.CheckCutter;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.Part;
import limberboard.trace.Contradiction;
import limberboard.trace.FaultCause;
import limberboard.trace.NextStep;
import limberboard.trace.RankedCause;
import limberboard.trace.SecondFault;
import limberboard.trace.Trace;
import limberboard.words.AccessWords;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** The pieces of a draft about one fault, from what has been found to what to do next. */
final class FaultBlocks {
  private static final int LIKELIEST = 3;
  private static final double WORTH_NAMING = 0.05;
  private static final double LEADING = 0.4;
  private static final String CANT_TELL = "cannot tell";
  private static final Set<Part.Role> OF_A_MEND =
      Set.of(Part.Role.NOTICE, Part.Role.FACTS, Part.Role.ACCESS, Part.Role.TOOLS, Part.Role.BODY);

  private final Library library;
  private final Wordings words;
  private final Trace trace;
  private final Fitting fitting;
  private final List<DraftBlock> blocks = new ArrayList<>();
  private final List<AskedCheck> questions = new ArrayList<>();
  private final int asked;
  private final NextStep next;

  /**
   * The pieces.
   *
   * @param several whether the letter tells of other faults too
   * @param asked how many checks the letter asks for before
   */
  FaultBlocks(Library library, Wordings words, Trace trace, boolean several, int asked) {
    this.library = library;
    this.words = words;
    this.trace = trace;
    this.asked = asked;
    fitting = trace.fault().fitting();
    next = trace.next();
    if (several) {
      Map<String, String> filled = filled("symptom", lowered(trace.fault().page().title()));
      add("fault", words.of(LetterPart.FAULT, filled));
    }
    told();
    likely();
    clash();
    if (next instanceof NextStep.DoCheck check) {
      checks(Visit.of(trace, check));
    } else if (next instanceof NextStep.DoMend mend) {
      mend(mend);
    } else if (next instanceof NextStep.MakeSafe safe) {
      cautions(List.of(safe.cautions()));
      add("safe", joined(words.of(LetterPart.MAKE_SAFE), DraftLine.paragraph(safe.how())));
    } else {
      yard();
    }
  }

  /** The id of the page that says what to do: the mend's, or the symptom's. */
  String page() {
    return next instanceof NextStep.DoMend mend && library.procedure(mend.id()).isPresent()
        ? mend.id()
        : trace.fault().page().id();
  }

  List<DraftBlock> blocks() {
    return List.copyOf(blocks);
  }

  List<AskedCheck> questions() {
    return List.copyOf(questions);
  }

  private void add(String id, List<DraftLine> lines) {
    blocks.add(new DraftBlock(trace.fault().page().id() + "/" + id, lines));
  }

  private static List<DraftLine> joined(List<DraftLine> words, DraftLine... more) {
    List<DraftLine> all = new ArrayList<>(words);
    all.addAll(List.of(more));
    return all;
  }

  private Map<String, String> filled(String name, String value) {
    Map<String, String> filled = new HashMap<>(Map.of("boat", fitting.boat().name()));
    filled.put(name, value);
    return filled;
  }

  private static String lowered(String title) {
    return Sentences.lowered(title);
  }

  private void told() {
    if (!trace.trail().isEmpty()) {
      List<DraftLine> lines = new ArrayList<>(words.of(LetterPart.TOLD));
      trace
          .trail()
          .forEach(entry -> lines.add(DraftLine.item(entry.text() + " " + entry.answer() + ".")));
      add("told", lines);
    }
  }

  private void likely() {
    List<DraftLine> lines = new ArrayList<>(words.of(LetterPart.LIKELY));
    List<RankedCause> ranking = trace.ranking();
    for (RankedCause ranked : ranking.subList(0, Math.min(LIKELIEST, ranking.size()))) {
      if (ranked.chance() >= WORTH_NAMING) {
        lines.add(
            DraftLine.item(
                ranked.cause().title()
                    + ": "
                    + ranked.word()
                    + ", "
                    + PerCent.words(ranked.chance())
                    + "."));
      }
    }
    lines.addAll(words.of(LetterPart.HOW_SURE, filled("from", trace.fault().chancesFrom())));
    add("likely", lines);
  }

  private void clash() {
    Optional<String> clash = trace.contradiction().map(Contradiction::text);
    Optional<String> second = trace.secondFault().map(SecondFault::text);
    clash
        .or(() -> second)
        .ifPresent(text -> add("clash", words.of(LetterPart.CLASH, filled("clash", text))));
  }

  /** Every caution of these works and of the symptom, each a piece by itself. */
  private void cautions(List<List<WorkCaution>> works) {
    List<WorkCaution> all = trace.fault().first();
    for (List<WorkCaution> work : works) {
      all = WorkCautions.ofStep(all, work);
    }
    List<WorkCaution> brief = all.stream().filter(caution -> !caution.emergency()).toList();
    if (!brief.isEmpty()) {
      add("cautions", words.of(LetterPart.CAUTIONS));
    }
    Map<String, Integer> counts = new HashMap<>();
    for (WorkCaution caution : brief) {
      int count = counts.merge(caution.id(), 1, Integer::sum);
      String text = "Caution: " + caution.title() + ". " + caution.danger() + " " + caution.rule();
      add(
          "caution/" + caution.id() + (count == 1 ? "" : "/" + count),
          List.of(DraftLine.item(text)));
    }
  }

  private void checks(List<Asked> visit) {
    cautions(visit.stream().map(each -> each.step().cautions()).toList());
    add("checks", words.of(LetterPart.CHECKS));
    for (Asked each : visit) {
      Check check = each.step().check().check();
      questions.add(new AskedCheck(trace.fault().page().id(), check.id(), check.answers()));
      add("check/" + check.id(), check(each, check, asked + questions.size()));
    }
    add("write-back", words.of(LetterPart.WRITE_BACK));
  }

  private List<DraftLine> check(Asked each, Check check, int number) {
    List<DraftLine> lines = new ArrayList<>();
    lines.add(DraftLine.heading(number + ". " + check.ask()));
    CheckCutter.safety(check).map(DraftLine::paragraph).ifPresent(lines::add);
    if (!each.toOpen().isEmpty()) {
      lines.add(DraftLine.paragraph("Open first: " + AccessWords.opened(each.toOpen()) + "."));
    }
    lines.add(DraftLine.paragraph(CheckCutter.how(check)));
    String takes = "It takes about " + Minutes.words(each.minutes()) + ".";
    String tools = check.skill() == Skill.LICENSED ? "" : tools(check.tools());
    String who =
        check.skill() == Skill.OWNER ? "" : " For whom: " + SkillWords.of(check.skill()) + ".";
    lines.add(DraftLine.paragraph(takes + tools + who));
    List<String> answers = new ArrayList<>();
    check.answers().forEach(answer -> answers.add(Sentences.quoted(Sentences.spoken(answer))));
    answers.add(Sentences.quoted(CANT_TELL));
    lines.add(
        DraftLine.paragraph(
            "Write back: " + number + " and " + Sentences.list(answers, "or") + "."));
    return lines;
  }

  private String tools(List<ToolUse> uses) {
    List<String> tools =
        uses.stream()
            .filter(tool -> fitting.fits(tool.fits()))
            .map(tool -> library.page(tool.use()).map(Page::title).orElse(tool.use()))
            .map(Sentences::lowered)
            .toList();
    return tools.isEmpty() ? "" : " Take with you: " + Sentences.list(tools, "and") + ".";
  }

  private void mend(NextStep.DoMend mend) {
    cautions(List.of(mend.cautions()));
    add("mend", words.of(LetterPart.MEND, filled("mend", lowered(mend.text()))));
    library.procedure(mend.id()).ifPresent(page -> work(page, mend.toOpen()));
    add("after-mend", words.of(LetterPart.AFTER_MEND));
  }

  /** The work as it is on the boat: who, how long, what it takes with amounts, the steps. */
  private void work(Page<Procedure> page, List<Access> toOpen) {
    List<Part> parts = new PageCutter(library).cut(page, Optional.of(fitting)).parts();
    for (Part part : parts) {
      if (OF_A_MEND.contains(part.role())
          && !(part.role() == Part.Role.ACCESS && toOpen.isEmpty())) {
        addPart("work/" + part.role().name().toLowerCase(Locale.ROOT), part);
      } else if (part.role() == Part.Role.AGAIN) {
        addPart("again", part);
      }
    }
  }

  private void addPart(String id, Part part) {
    List<DraftLine> lines = new ArrayList<>();
    if (!part.title().isEmpty()) {
      lines.add(DraftLine.heading(part.title()));
    }
    lines.addAll(BlockLines.of(part.blocks()));
    String whole = trace.fault().page().id() + "/" + id;
    long before = blocks.stream().filter(block -> block.id().startsWith(whole)).count();
    add(before == 0 ? id : id + "/" + (before + 1), lines);
  }

  /** The yard looks next; where a mend leads the list it is named, with who does it. */
  private void yard() {
    FaultCause leading = trace.ranking().get(0).cause();
    boolean named =
        !leading.isSomethingElse()
            && !leading.mendedByOwner()
            && trace.ranking().get(0).chance() >= LEADING;
    cautions(named ? List.of(leading.mendCautions()) : List.of());
    add("yard", words.of(LetterPart.YARD, filled("why", next.why())));
    if (named && leading.mendSkill() == Skill.LICENSED) {
      add("licensed", words.of(LetterPart.LICENSED, filled("mend", lowered(leading.mendTitle()))));
    } else if (named) {
      add(
          "yard-work",
          List.of(DraftLine.paragraph("The work would be: " + lowered(leading.mendTitle()) + ".")));
    }
  }
}
