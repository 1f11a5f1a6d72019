package limberboard.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.drawing.TreeDrawing;
import limberboard.print.drawing.TreeSheet;
import limberboard.print.drawing.TreeText;
import limberboard.trace.DiagnosticTree;
import limberboard.trace.Trace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

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
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;
  @Mixin private AnswersOption answers;

  @Parameters(paramLabel = "SYMPTOM", description = "The symptom's id.")
  private String symptom;

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

  TreeCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() {
    if (!(rarest >= 0 && rarest <= 1)) {
      throw new Failure(ExitCode.USAGE, "--rarest is a share from 0 to 1, such as 0.01");
    }
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Trace trace = new TraceMaker(session, read).trace(answers.request(symptom, boat));
    DiagnosticTree tree = DiagnosticTree.of(trace, rarest);
    svg.ifPresent(
        file -> write(file, new TreeDrawing().whole(tree).getBytes(StandardCharsets.UTF_8)));
    pdf.ifPresent(file -> write(file, Paper.pdf(new TreeSheet().of(tree), folders)));
    if (json) {
      new JsonOutput(session.out()).print(TreeView.of(tree));
    } else if (svg.isEmpty() && pdf.isEmpty()) {
      session.out().print(new TreeText().render(tree, WIDTH));
    }
    return ExitCode.OK;
  }

  /** With {@code --json} only JSON goes to the output, so that it can be read by a program. */
  private void write(Path asked, byte[] bytes) {
    OutFile.write(session, asked, bytes, json);
  }
}
