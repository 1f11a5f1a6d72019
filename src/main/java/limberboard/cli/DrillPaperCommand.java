package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.IntStream;
import limberboard.boat.Workspace;
import limberboard.drill.Counsel;
import limberboard.drill.paper.PaperPack;
import limberboard.drill.paper.StudentSheet;
import limberboard.drill.paper.TrainerKey;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.pdf.Pdf;
import limberboard.print.picture.Pictures;
import limberboard.print.text.PlainText;
import limberboard.trace.Fault;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code drill paper}: a class without computers. */
@Command(
    name = "paper",
    mixinStandardHelpOptions = true,
    description = {
      "Makes drills on paper: a sheet for each student, and the trainer's key with the answer to"
          + " every number on every sheet and a marking table.",
      "As text if no PDF is asked for; the same seed makes the same pack."
    })
final class DrillPaperCommand implements Callable<Integer> {
  private static final int WIDTH = 100;

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;
  @Mixin private BoatOption boat;
  @Mixin private SeedOption seed;

  @Parameters(paramLabel = "SYMPTOM", description = "The symptom's id.")
  private String symptom;

  @Option(
      names = "--students",
      paramLabel = "N",
      required = true,
      description = "How many sheets, 1 to " + PaperPack.MOST + ".")
  private int students;

  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the students' sheets as PDF.")
  private Optional<Path> pdf = Optional.empty();

  @Option(names = "--key", paramLabel = "FILE", description = "Write the trainer's key as PDF.")
  private Optional<Path> key = Optional.empty();

  @Option(names = "--json", description = "Print JSON: the key.")
  private boolean json;

  DrillPaperCommand(CommandContext session) {
    this.session = session;
  }

  /** The key as {@code --json} prints it; the keys are documented and stay. */
  record KeyView(String symptom, String boat, List<SheetView> sheets) {}

  /** A sheet of it. */
  record SheetView(
      int sheet, long seed, String cause, List<String> letter, List<TrainerKey.Line> lines) {}

  @Override
  public Integer call() {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Fault fault = new DrillMaker(session, read).fault(symptom, boat.id());
    PaperPack pack = pack(fault);
    TrainerKey trainer = new TrainerKey(pack, new Counsel(fault));
    OutFiles files = new OutFiles(session, folders, json);
    pdf.ifPresent(file -> files.bytes(file, sheets(pack, folders)));
    key.ifPresent(file -> files.pdf(file, trainer.sheet()));
    if (json) {
      new JsonOutput(session.out()).print(view(pack, trainer));
    } else if (pdf.isEmpty() && key.isEmpty()) {
      PlainText text = new PlainText();
      all(pack).forEach(sheet -> session.out().println(text.render(sheet, WIDTH)));
      session.out().println(text.render(trainer.sheet(), WIDTH));
    }
    return ExitCode.OK;
  }

  private PaperPack pack(Fault fault) {
    try {
      return PaperPack.of(fault, seed.value(), students);
    } catch (IllegalArgumentException e) {
      throw new Failure(ExitCode.USAGE, e.getMessage());
    }
  }

  private static List<CutPage> all(PaperPack pack) {
    StudentSheet sheet = new StudentSheet(pack);
    return IntStream.rangeClosed(1, pack.drills().size()).mapToObj(sheet::of).toList();
  }

  private static byte[] sheets(PaperPack pack, WorkspaceFolders folders) {
    try {
      return new Pdf(Pictures.in(folders)).of(all(pack));
    } catch (IOException e) {
      throw new Failure(ExitCode.IO, "the sheets cannot be laid out as PDF: " + e.getMessage());
    }
  }

  private static KeyView view(PaperPack pack, TrainerKey trainer) {
    List<SheetView> sheets =
        IntStream.rangeClosed(1, pack.drills().size())
            .mapToObj(
                number ->
                    new SheetView(
                        number,
                        pack.drills().get(number - 1).order().seed(),
                        pack.drills().get(number - 1).hiddenCause().id(),
                        pack.drills().get(number - 1).letter(),
                        trainer.lines(number)))
            .toList();
    return new KeyView(pack.fault().page().id(), pack.fault().fitting().boat().id(), sheets);
  }
}
