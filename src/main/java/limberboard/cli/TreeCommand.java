package limberboard.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.concurrent.Callable;
import java.util.regex.Pattern;
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
  private static final Pattern LEVELS = Pattern.compile("0*[1-9][0-9]*");

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
  private Optional<String> depth = Optional.empty();

  TreeCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (!(rarest >= 0 && rarest <= 1)) {
      throw new Failure(ExitCode.USAGE, "--rarest is a share from 0 to 1, such as 0.01");
    }
    OptionalInt levels = levels();
    if (card && levels.isPresent()) {
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
    TreeCut cut = cut(tree, levels);
    svg.ifPresent(file -> files.text(file, new TreeDrawing().of(cut)));
    pdf.ifPresent(file -> files.pdf(file, new TreeSheet().of(cut)));
    if (json) {
      new JsonOutput(session.out())
          .print(levels.isPresent() ? DepthView.of(cut) : TreeView.of(tree));
    } else if (svg.isEmpty() && pdf.isEmpty()) {
      session.out().print(new TreeText().render(cut, WIDTH));
    }
    return ExitCode.OK;
  }

  /** How many levels are asked for; empty for all there are. */
  private OptionalInt levels() {
    if (depth.isEmpty()) {
      return OptionalInt.empty();
    }
    if (!LEVELS.matcher(depth.get()).matches()) {
      throw new Failure(
          ExitCode.USAGE,
          "--depth is a whole number of levels from 1, such as 2, not “" + depth.get() + "”");
    }
    return OptionalInt.of((int) Double.parseDouble(depth.get()));
  }

  /** The tree to the depth that is asked for; where it has not so many levels, that is said. */
  private TreeCut cut(DiagnosticTree tree, OptionalInt levels) {
    int deep = tree.depth();
    if (levels.orElse(deep) > deep) {
      session
          .err()
          .println(
              "The tree has only " + CountWords.of(deep, "level") + "; this is the whole of it.");
    }
    return levels.isPresent() ? TreeCut.levels(tree, levels.getAsInt()) : TreeCut.all(tree);
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
