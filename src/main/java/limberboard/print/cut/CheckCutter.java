package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.library.page.Cause;
import limberboard.library.page.Check;
import limberboard.library.page.ToolUse;
import limberboard.library.value.Skill;
import limberboard.print.markdown.LinkTargets;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.Inline;
import limberboard.words.Minutes;
import limberboard.words.Sentences;
import limberboard.words.SkillWords;

/** Writes one check: the question, how to do it, what it takes, and what each answer says. */
public final class CheckCutter {
  /** What stands in place of how a licensed check is made. */
  public static final String HOW_NOT_PRINTED =
      "A person licensed for it makes this check, so how it is done is not printed here.";

  private static final int LEVEL = 3;

  private final CutContext cutting;
  private final LinkTargets targets;
  private final AccessPart way;

  /** A cutter of the checks of the page with this path. */
  CheckCutter(CutContext cutting, String path) {
    this.cutting = cutting;
    this.targets = new LinkTargets(path, id -> false);
    this.way = new AccessPart(cutting);
  }

  /** How a check is made, where that may be printed. */
  public static String how(Check check) {
    return check.skill() == Skill.LICENSED ? HOW_NOT_PRINTED : check.how();
  }

  /** What a check that comes first for safety asks for, whatever its answer is. */
  public static Optional<String> safety(Check check) {
    return check
        .safety()
        .map(
            safe ->
                "This comes first for safety, and nothing else is done before it is safe. If it is"
                    + " not so, or cannot be told: "
                    + safe);
  }

  List<Block> cut(Check check, List<Cause> causes) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Heading(LEVEL, Inline.text(check.ask())));
    safety(check).map(text -> new Block.Notice(Inline.text(text))).ifPresent(blocks::add);
    List<WorkCaution> cautions = cutting.cautions().of(check);
    if (!cautions.isEmpty()) {
      blocks.add(new Block.Paragraph(Cautions.names(cautions)));
    }
    if (check.skill() == Skill.LICENSED) {
      blocks.add(new Block.Notice(Inline.text(HOW_NOT_PRINTED)));
    } else {
      blocks.add(Block.Paragraph.of(check.how()));
      check
          .picture()
          .flatMap(targets::picture)
          .map(path -> new Inline.Picture(path, check.ask()))
          .ifPresent(picture -> blocks.add(new Block.Paragraph(List.of(picture))));
    }
    blocks.add(new Block.Facts(facts(check)));
    blocks.add(answers(check, causes));
    return blocks;
  }

  private List<Block.Fact> facts(Check check) {
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(Block.Fact.of("Who", SkillWords.of(check.skill())));
    facts.add(Block.Fact.of("Time", Minutes.words(check.minutes())));
    way.inOneLine(check.access()).ifPresent(words -> facts.add(Block.Fact.of("First", words)));
    List<String> tools =
        check.tools().stream()
            .filter(tool -> cutting.against(tool.fits()).isEmpty())
            .map(ToolUse::use)
            .toList();
    if (check.skill() != Skill.LICENSED) {
      new Links(cutting).fact("Tools", tools).ifPresent(facts::add);
    }
    cutting.onlyFor(check.fits()).ifPresent(words -> facts.add(Block.Fact.of("Boats", words)));
    return facts;
  }

  private static Block answers(Check check, List<Cause> causes) {
    AnswerWords words = new AnswerWords(check, causes);
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (String answer : check.answers()) {
      rows.add(List.of(Inline.text(Sentences.spoken(answer)), words.of(answer)));
    }
    return new Block.Table(
        List.of(Side.LEFT, Side.LEFT),
        List.of(Inline.text("Answer"), Inline.text("What it says")),
        rows);
  }
}
