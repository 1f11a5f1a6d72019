package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Skill;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;

/**
 * Cuts a procedure: the cautions in two lines each, who, how long and what it takes in a line each,
 * and then the steps that are for the boat, so that the first of them is soon reached; amounts,
 * packs and the rest come after the work.
 */
final class ProcedureCutter {
  private static final String STEPS_NOT_PRINTED =
      "A person licensed for it does this work, so its steps are not printed here.";

  private final CutContext cutting;
  private final PageParts parts;
  private final AccessPart way;

  ProcedureCutter(CutContext cutting) {
    this.cutting = cutting;
    this.parts = new PageParts(cutting);
    this.way = new AccessPart(cutting);
  }

  List<Part> cut(Page<Procedure> written) {
    Page<Procedure> page = cutting.timed(written);
    Procedure procedure = page.details();
    boolean licensed = procedure.skill() == Skill.LICENSED;
    List<ToolUse> tools =
        procedure.tools().stream()
            .filter(tool -> cutting.shows(tool.fits(), cutting.title(tool.use())))
            .toList();
    List<MaterialUse> materials =
        procedure.materials().stream()
            .filter(use -> cutting.shows(use.fits(), cutting.title(use.use())))
            .toList();
    List<WorkCaution> cautions = cutting.cautions().of(page);
    ProcedureFacts facts = new ProcedureFacts(cutting, way);
    MaterialsTable amounts = new MaterialsTable(cutting);
    List<Part> cut = new ArrayList<>();
    Cautions.inShort(cautions).ifPresent(cut::add);
    parts.fit(page).ifPresent(cut::add);
    notice(procedure.skill()).ifPresent(cut::add);
    cut.add(new Part(Part.Role.FACTS, "", List.of(facts.inBrief(page))));
    way.inBrief(procedure.access())
        .ifPresent(line -> cut.add(new Part(Part.Role.ACCESS, "", List.of(line))));
    List<Block> takes = new ArrayList<>();
    if (!licensed) {
      tools(tools).ifPresent(takes::add);
      amounts.inBrief(materials).ifPresent(takes::add);
    }
    if (!takes.isEmpty()) {
      cut.add(new Part(Part.Role.TOOLS, "", takes));
    }
    cut.addAll(licensed ? ownersPart(page, cautions) : steps(page, cautions));
    new RoundPart(cutting).part(procedure).ifPresent(cut::add);
    procedure.lookFor().map(ProcedureCutter::lookFor).ifPresent(cut::add);
    facts.again(page).ifPresent(cut::add);
    if (!licensed) {
      amounts.part(materials).ifPresent(cut::add);
      new SumsPart(cutting).part(procedure.workings()).ifPresent(cut::add);
    }
    parts.leftOut().ifPresent(cut::add);
    related(page).ifPresent(cut::add);
    parts.sources(page).ifPresent(cut::add);
    Cautions.inFull(cautions).ifPresent(cut::add);
    return cut;
  }

  private Optional<Block> tools(List<ToolUse> tools) {
    List<List<Inline>> each = new ArrayList<>();
    for (ToolUse tool : tools) {
      List<Inline> one = new ArrayList<>(List.of(cutting.link(tool.use())));
      cutting.onlyFor(tool.fits()).ifPresent(words -> one.add(new Inline.Text(" (" + words + ")")));
      each.add(one);
    }
    return InBrief.line("Tools", each);
  }

  private static Part lookFor(Procedure.LookFor lookFor) {
    return new Part(
        Part.Role.LOOK_FOR,
        "What to look for",
        List.of(
            new Block.Facts(
                List.of(
                    Block.Fact.of("Good", lookFor.good()), Block.Fact.of("Bad", lookFor.bad())))));
  }

  private List<Part> steps(Page<Procedure> page, List<WorkCaution> cautions) {
    List<Block> work = work(new BodyCutter(cutting).cut(page), cautions);
    return BodyCutter.part("The work", work).stream().toList();
  }

  private List<Part> ownersPart(Page<Procedure> page, List<WorkCaution> cautions) {
    List<Part> cut = new ArrayList<>();
    List<Block> owners = work(new BodyCutter(cutting).ownersPart(page), cautions);
    BodyCutter.part(BodyCutter.OWNERS_PART, owners).ifPresent(cut::add);
    cut.add(PageParts.notice("The work", STEPS_NOT_PRINTED));
    return cut;
  }

  private static List<Block> work(List<Block> text, List<WorkCaution> cautions) {
    return StepsFirst.of(new CautionedSteps(cautions).named(text));
  }

  private Optional<Part> related(Page<Procedure> page) {
    List<Block.Fact> facts = new ArrayList<>();
    List<String> symptoms =
        cutting.library().all(Symptom.class).stream()
            .filter(
                symptom ->
                    symptom.details().causes().stream()
                        .anyMatch(cause -> cause.mend().equals(page.id())))
            .map(Page::id)
            .toList();
    Links links = new Links(cutting);
    links.fact("Puts right", symptoms).ifPresent(facts::add);
    links.fact("Counts also as", page.details().resets()).ifPresent(facts::add);
    links.fact("Comes before", page.details().before()).ifPresent(facts::add);
    return facts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.RELATED, "Belongs to", List.of(new Block.Facts(facts))));
  }

  /** The notice that comes before everything else for work that is not the owner's. */
  private static Optional<Part> notice(Skill skill) {
    return switch (skill) {
      case OWNER, HANDY -> Optional.empty();
      case YARD ->
          Optional.of(
              PageParts.notice(
                  "Who may do this",
                  "This is work for the yard. Read here what will be done, and leave the doing to"
                      + " them."));
      case LICENSED ->
          Optional.of(
              PageParts.notice(
                  "Who may do this",
                  "Only a person licensed for this work may do it. Local codes and the licensed"
                      + " trade come before anything on this page."));
    };
  }
}
