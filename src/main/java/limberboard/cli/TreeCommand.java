package limberboard.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import limberboard.print.drawing.TreeCard;
import limberboard.print.drawing.TreeDrawing;
import limberboard.print.drawing.TreeSheet;
import limberboard.print.drawing.TreeText;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Trace;
import limberboard.trace.TreeCut;
import limberboard.words.CountWords;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code tree}: the whole strategy for a symptom on a boat, drawn and printed. */
@Command(
    name = "tree",
    mixinStandardHelpOptions = true,
    description = {
      "Shows every step from a symptom to its mend on one boat, whatever the answers are.",
      "As text if nothing else is asked for; --pdf for paper, --svg for one large drawing."
    })
final class TreeCommand implements Callable<Integer> {
  private static final int WIDTH = 100;

  private final CommandContext session;
  @Mixin private TraceOptions asked;

  @Option(names = "--svg", paramLabel = "FILE", description = "Draw the tree as SVG.")
  private Optional<Path> svg = Optional.empty();

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write it by numbers as A4 PDF.")
  private Optional<Path> pdf = Optional.empty();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(
      names = "--rarest",
      paramLabel = "SHARE",
      description = "Leave out ways taken less often than this, 0 to 1; 0.002 if not given.")
  private double rarest = DiagnosticTree.USUAL_RAREST;

  @Option(
      names = "--card",
      description = "Only as much as goes on one sheet of A4, the likeliest ways.")
  private boolean card;

  @Option(
      names = "--depth",
      paramLabel = "LEVELS",
      description = {
        "Only so many steps one after the other, 1 or more; where a way goes on,",
        "what comes next and what it may be are said there."
      })
  private OptionalInt depth = OptionalInt.empty();

  TreeCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (!(rarest >= 0 && rarest <= 1)) {
      throw new Failure(ExitCode.USAGE, "--rarest is a share from 0 to 1, such as 0.01");
    }
    if (depth.orElse(1) < 1) {
      throw new Failure(ExitCode.USAGE, "--depth is a number of levels from 1, such as 2");
    }
    if (card && depth.isPresent()) {
      throw new Failure(
          ExitCode.USAGE,
          "--card chooses itself which steps go on its sheet; leave --depth or --card away");
    }
    Trace trace = asked.trace(new TraceMaker(session, asked.workspace(session)));
    DiagnosticTree tree = DiagnosticTree.of(trace, rarest);
    OutFiles files = new OutFiles(session, asked.folders(session), json);
    if (card) {
      return card(tree, files);
    }
    TreeCut cut = cut(tree);
    svg.ifPresent(file -> files.text(file, new TreeDrawing().of(cut)));
    pdf.ifPresent(file -> files.pdf(file, new TreeSheet().of(cut)));
    if (json) {
      new JsonOutput(session.out())
          .print(depth.isPresent() ? DepthView.of(cut) : TreeView.of(tree));
    } else if (svg.isEmpty() && pdf.isEmpty()) {
      session.out().print(new TreeText().render(cut, WIDTH));
    }
    return ExitCode.OK;
  }

  /** The tree to the depth that is asked for; where it has not so many levels, that is said. */
  private TreeCut cut(DiagnosticTree tree) {
    if (depth.isEmpty()) {
      return TreeCut.all(tree);
    }
    int levels = tree.depth();
    if (depth.getAsInt() > levels) {
      session
          .err()
          .println(
              "The tree has only " + CountWords.of(levels, "level") + "; this is the whole of it.");
    }
    return TreeCut.levels(tree, depth.getAsInt());
  }

  private int card(DiagnosticTree tree, OutFiles files) {
    if (svg.isPresent()) {
      throw new Failure(ExitCode.USAGE, "--card is written with --pdf, not with --svg");
    }
    TreeCard cards = new TreeCard();
    TreeCut cut = cards.cut(tree);
    pdf.ifPresent(file -> files.pdf(file, cards.of(cut)));
    if (json) {
      new JsonOutput(session.out()).print(CardView.of(cut));
    } else if (pdf.isEmpty()) {
      session.out().print(cards.text(cut, WIDTH));
    }
    return ExitCode.OK;
  }
}
