package limberboard.print.cut;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fit;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.Page;
import limberboard.library.page.Symptom;
import limberboard.library.value.Interval;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.SkillWords;

/** Cuts a symptom: cautions, what to do at once, the causes and the checks in words. */
final class SymptomCutter {
  private final CutContext cutting;
  private final PageParts parts;

  SymptomCutter(CutContext cutting) {
    this.cutting = cutting;
    this.parts = new PageParts(cutting);
  }

  List<Part> cut(Page<Symptom> page) {
    Symptom symptom = page.details();
    List<Cause> causes =
        symptom.causes().stream()
            .filter(cause -> cutting.shows(cause.fits(), cause.title()))
            .toList();
    List<Check> checks =
        symptom.checks().stream()
            .filter(check -> cutting.shows(check.fits(), check.ask()))
            .toList();
    List<Part> cut = new ArrayList<>();
    List<WorkCaution> cautions = cutting.cautions().of(page);
    Cautions.inShort(cautions).ifPresent(cut::add);
    parts.fit(page).ifPresent(cut::add);
    facts(page).ifPresent(cut::add);
    BodyCutter.part("", new BodyCutter(cutting).cut(page)).ifPresent(cut::add);
    causes(causes).ifPresent(cut::add);
    checks(page, checks, causes).ifPresent(cut::add);
    parts.leftOut().ifPresent(cut::add);
    parts.sources(page).ifPresent(cut::add);
    Cautions.inFull(cautions).ifPresent(cut::add);
    return cut;
  }

  private Optional<Part> facts(Page<Symptom> page) {
    return parts
        .zones(page)
        .map(
            zones ->
                new Part(
                    Part.Role.FACTS,
                    "",
                    List.of(new Block.Facts(List.of(Block.Fact.of("Noticed", zones))))));
  }

  private Optional<Part> causes(List<Cause> causes) {
    List<List<Block>> items = new ArrayList<>();
    causes.stream()
        .sorted(Comparator.comparingDouble(Cause::weight).reversed())
        .forEach(cause -> items.add(cause(cause)));
    return items.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.CAUSES,
                "Causes",
                List.of(
                    Block.Paragraph.of("The commonest first, by the workshop's estimate."),
                    new Block.Items(true, 1, false, items))));
  }

  private List<Block> cause(Cause cause) {
    List<Inline> text = new ArrayList<>();
    text.add(new Inline.Strong(Inline.text(cause.title() + ".")));
    if (!cause.about().isEmpty()) {
      text.add(new Inline.Text(" " + cause.about()));
    }
    cutting
        .onlyFor(cause.fits())
        .ifPresent(words -> text.add(new Inline.Text(" This is " + words + ".")));
    likelier(cause).forEach(words -> text.add(new Inline.Text(" " + words)));
    List<Inline> mend = new ArrayList<>();
    mend.add(new Inline.Text("Mend: "));
    mend.add(cutting.link(cause.mend()));
    cutting
        .library()
        .procedure(cause.mend())
        .ifPresent(
            page -> mend.add(new Inline.Text(" (" + SkillWords.of(page.details().skill()) + ")")));
    return List.of(new Block.Paragraph(text), new Block.Paragraph(mend));
  }

  /** What makes a cause more or less likely: on this boat, or, without one, on which boats. */
  private List<String> likelier(Cause cause) {
    List<String> sentences = new ArrayList<>();
    for (Interval.Factor factor : cause.moreLikely()) {
      String how = factor.times() < 1 ? "Less likely" : "More likely";
      Optional<Fit> fit = cutting.fitting().map(boat -> boat.judge(factor.when()));
      if (fit.isEmpty()) {
        sentences.add(how + " on " + cutting.words().of(factor.when()) + ".");
      } else if (fit.get().fits()) {
        sentences.add(how + " on " + cutting.boatName() + ": " + fit.get().reason() + ".");
      }
    }
    return sentences;
  }

  private Optional<Part> checks(Page<Symptom> page, List<Check> checks, List<Cause> causes) {
    CheckCutter cutter = new CheckCutter(cutting, page.path());
    List<Block> blocks = new ArrayList<>();
    checks.stream()
        .sorted(Comparator.comparing(Check::comesFirst).reversed())
        .forEach(check -> blocks.addAll(cutter.cut(check, causes)));
    return blocks.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.CHECKS, "Checks", blocks));
  }
}
