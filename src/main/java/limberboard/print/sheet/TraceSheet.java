package limberboard.print.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.WorkCaution;
import limberboard.boat.WorkCautions;
import limberboard.library.Library;
import limberboard.library.page.Model.Access;
import limberboard.print.cut.Cautions;
import limberboard.print.cut.CheckCutter;
import limberboard.print.cut.CutContext;
import limberboard.print.cut.PageCutter;
import limberboard.print.cut.PageParts;
import limberboard.print.page.Block;
import limberboard.print.page.Block.Side;
import limberboard.print.page.CutPage;
import limberboard.print.page.Inline;
import limberboard.print.page.Part;
import limberboard.trace.Contradiction;
import limberboard.trace.NextStep;
import limberboard.trace.RankedCause;
import limberboard.trace.SecondFault;
import limberboard.trace.Trace;
import limberboard.trace.TrailEntry;
import limberboard.words.Minutes;
import limberboard.words.PerCent;
import limberboard.workings.QuantityWords;

/**
 * Where a trace stands, as a sheet that any output can render: cautions first, what to do next, the
 * causes with their chances, and the trail of answers. Immutable; any thread.
 */
public final class TraceSheet {
  private final Library library;

  /** Sheets whose cautions and procedures are looked up in this library. */
  public TraceSheet(Library library) {
    this.library = library;
  }

  /** The sheet for a trace as it stands, with the step that is proposed. */
  public CutPage of(Trace trace) {
    return of(trace, trace.next());
  }

  /**
   * The sheet for a trace as it stands.
   *
   * @param trace the trace
   * @param next the step to do next: the one proposed, or another that somebody chose
   */
  public CutPage of(Trace trace, NextStep next) {
    CutContext cutting =
        new CutContext(library, Optional.of(trace.fault().fitting()), QuantityWords.METRIC);
    List<Part> parts = new ArrayList<>();
    List<WorkCaution> cautions = cautions(trace, next);
    Cautions.inShort(cautions).ifPresent(parts::add);
    trace
        .contradiction()
        .map(Contradiction::text)
        .map(text -> PageParts.notice("These answers do not go together", text))
        .ifPresent(parts::add);
    trace
        .secondFault()
        .map(SecondFault::text)
        .map(text -> PageParts.notice("There may be a second fault", text))
        .ifPresent(parts::add);
    parts.add(next(trace, next, cutting));
    parts.add(causes(trace, cutting));
    trail(trace).ifPresent(parts::add);
    Cautions.inFull(cautions).ifPresent(parts::add);
    return new CutPage(
        trace.fault().page().id(),
        trace.fault().page().kind(),
        trace.fault().page().title(),
        "Where the trace stands",
        PageCutter.cutFor(trace.fault().fitting().boat()),
        parts);
  }

  static List<WorkCaution> cautions(Trace trace, NextStep next) {
    String because = next instanceof NextStep.DoMend ? next.text() : "";
    return WorkCautions.ofStep(
        trace.fault().first(),
        next.cautions().stream().map(caution -> caution.because(because)).toList());
  }

  private static Part next(Trace trace, NextStep next, CutContext cutting) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Block.Paragraph(List.of(new Inline.Strong(asked(next, cutting)))));
    if (next instanceof NextStep.DoCheck check) {
      blocks.add(Block.Paragraph.of(CheckCutter.how(check.check().check())));
      CheckCutter.safety(check.check().check()).map(Block.Paragraph::of).ifPresent(blocks::add);
    } else if (next instanceof NextStep.MakeSafe safe) {
      blocks.add(Block.Paragraph.of(safe.how()));
    }
    List<Block.Fact> facts = new ArrayList<>();
    List<String> open = next.toOpen().stream().map(Access::title).toList();
    if (!open.isEmpty()) {
      facts.add(Block.Fact.of("First", String.join("; then ", open)));
    }
    facts.add(Block.Fact.of("Time", Minutes.words(next.minutes())));
    facts.add(Block.Fact.of("Why", next.why()));
    facts.add(
        Block.Fact.of(
            "From here",
            "no more than about "
                + Minutes.words(trace.expectedMinutes())
                + " on average until it is mended or with the yard, by estimate"));
    blocks.add(new Block.Facts(facts));
    return new Part(Part.Role.CHECKS, "Next", blocks);
  }

  private static List<Inline> asked(NextStep next, CutContext cutting) {
    return next instanceof NextStep.DoMend
        ? List.of(cutting.link(next.id()))
        : Inline.text(next.text());
  }

  private static Part causes(Trace trace, CutContext cutting) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (RankedCause ranked : trace.ranking()) {
      String mend = ranked.cause().mend();
      rows.add(
          List.of(
              Inline.text(ranked.cause().title()),
              Inline.text(ranked.word()),
              Inline.text(PerCent.number(ranked.chance())),
              mend.isEmpty() ? List.of() : List.of(cutting.link(mend))));
    }
    return new Part(
        Part.Role.CAUSES,
        "Causes",
        List.of(
            Block.Paragraph.of(
                "The chances before any answer: " + trace.fault().chancesFrom() + "."),
            new Block.Table(
                List.of(Side.LEFT, Side.LEFT, Side.RIGHT, Side.LEFT),
                List.of(
                    Inline.text("Cause"),
                    Inline.text("Chance"),
                    Inline.text("Per cent"),
                    Inline.text("Mend")),
                rows)));
  }

  private static Optional<Part> trail(Trace trace) {
    List<List<List<Inline>>> rows = new ArrayList<>();
    for (TrailEntry entry : trace.trail()) {
      rows.add(
          List.of(
              Inline.text(entry.text()),
              Inline.text(entry.answer()),
              Inline.text(entry.changed())));
    }
    return rows.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Part(
                Part.Role.TABLES,
                "What was found",
                List.of(
                    new Block.Table(
                        List.of(Side.LEFT, Side.LEFT, Side.LEFT),
                        List.of(
                            Inline.text("Check"),
                            Inline.text("Answer"),
                            Inline.text("What it changed")),
                        rows))));
  }
}
