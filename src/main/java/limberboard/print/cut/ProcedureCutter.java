package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.MaterialUse;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.library.page.Symptom;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Skill;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;

/** Cuts a procedure: cautions, who, when, what it takes, and the steps that are for the boat. */
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

  List<Part> cut(Page<Procedure> page) {
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
    List<Part> cut = new ArrayList<>();
    Cautions.part(cutting.cautions().of(page)).ifPresent(cut::add);
    parts.fit(page).ifPresent(cut::add);
    notice(procedure.skill()).ifPresent(cut::add);
    cut.add(new ProcedureFacts(cutting, way).part(page));
    way.part(procedure.access()).ifPresent(cut::add);
    if (!licensed) {
      tools(tools).ifPresent(cut::add);
      new MaterialsTable(cutting).part(materials).ifPresent(cut::add);
    }
    procedure.lookFor().map(ProcedureCutter::lookFor).ifPresent(cut::add);
    cut.addAll(licensed ? ownersPart(page) : steps(page));
    if (!licensed) {
      new SumsPart(cutting).part(procedure.workings()).ifPresent(cut::add);
    }
    parts.leftOut().ifPresent(cut::add);
    related(page).ifPresent(cut::add);
    parts.sources(page).ifPresent(cut::add);
    return cut;
  }

  private Optional<Part> tools(List<ToolUse> tools) {
    List<List<Inline>> lines = new ArrayList<>();
    for (ToolUse tool : tools) {
      List<Inline> line = new ArrayList<>();
      line.add(cutting.link(tool.use()));
      cutting
          .onlyFor(tool.fits())
          .ifPresent(words -> line.add(new Inline.Text(" (" + words + ")")));
      lines.add(line);
    }
    return lines.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.TOOLS, "Tools", List.of(Block.Items.dotted(lines))));
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

  private List<Part> steps(Page<Procedure> page) {
    return BodyCutter.part("The work", new BodyCutter(cutting).cut(page)).stream().toList();
  }

  private List<Part> ownersPart(Page<Procedure> page) {
    List<Part> cut = new ArrayList<>();
    BodyCutter.part(BodyCutter.OWNERS_PART, new BodyCutter(cutting).ownersPart(page))
        .ifPresent(cut::add);
    cut.add(PageParts.notice("The work", STEPS_NOT_PRINTED));
    return cut;
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
                      + " people who have the gear and the practice."));
      case LICENSED ->
          Optional.of(
              PageParts.notice(
                  "Who may do this",
                  "Only a person licensed for this work may do it. Local codes and the licensed"
                      + " trade come before anything on this page."));
    };
  }
}
