package limberboard.print.cut;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.library.page.Page;
import limberboard.library.page.Procedure;
import limberboard.print.page.Block;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.words.Minutes;
import limberboard.words.SkillWords;
import limberboard.words.TimeWords;

/** The facts of a procedure: who, how long and where; how often, and when to look again. */
final class ProcedureFacts {
  private final CutContext cutting;
  private final AccessPart way;

  ProcedureFacts(CutContext cutting, AccessPart way) {
    this.cutting = cutting;
    this.way = way;
  }

  /** Who, how long and where, in one line. */
  Block inBrief(Page<Procedure> page) {
    Procedure procedure = page.details();
    List<Block.Fact> facts = new ArrayList<>();
    facts.add(Block.Fact.of("Who", SkillWords.of(procedure.skill())));
    facts.add(Block.Fact.of("Time", time(procedure)));
    new PageParts(cutting).zones(page).ifPresent(zones -> facts.add(Block.Fact.of("Where", zones)));
    return InBrief.named(facts);
  }

  /** When it is done again; empty where the page does not say. */
  Optional<Part> again(Page<Procedure> page) {
    Procedure procedure = page.details();
    List<Block.Fact> facts = new ArrayList<>();
    procedure
        .interval()
        .map(new IntervalWords(cutting)::of)
        .ifPresent(words -> facts.add(Block.Fact.of("How often", words)));
    procedure.lookAgain().map(this::lookAgain).ifPresent(facts::add);
    return facts.isEmpty()
        ? Optional.empty()
        : Optional.of(new Part(Part.Role.AGAIN, "Again", List.of(new Block.Facts(facts))));
  }

  /** How long it takes somebody practised. */
  private String time(Procedure procedure) {
    int with = new RoundPart(cutting).minutes(procedure);
    String work =
        Minutes.words(procedure.minutes())
            + (with == 0
                ? ""
                : ", with its round up to " + Minutes.words(procedure.minutes() + with));
    Optional<Double> opening = way.minutes(procedure.access());
    if (opening.isEmpty()) {
      return procedure.access().isEmpty() ? work : work + ", besides what it takes to get there";
    }
    return opening.get() == 0
        ? work
        : work
            + ", and "
            + Minutes.words(opening.get())
            + " to get there: "
            + Minutes.words(procedure.minutes() + with + opening.get())
            + " in all";
  }

  private Block.Fact lookAgain(Procedure.LookAgain again) {
    List<Inline> value = new ArrayList<>();
    value.add(new Inline.Text("after " + TimeWords.period(again.after())));
    again
        .with()
        .ifPresent(
            id -> {
              value.add(new Inline.Text(": "));
              value.add(cutting.link(id));
            });
    return new Block.Fact("Look again", value);
  }
}
