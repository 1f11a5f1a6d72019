package limberboard.cli;

import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import limberboard.print.text.PlainText;
import picocli.CommandLine.Option;

/** The options {@code --pdf}, {@code --csv} and {@code --json}: where a command's list goes. */
final class ListOutput {
  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the list as A4 PDF.")
  private Optional<Path> pdf = Optional.empty();

  @Option(names = "--csv", paramLabel = "FILE", description = "Write the list as CSV (RFC 4180).")
  private Optional<Path> csv = Optional.empty();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  /**
   * A list in each of its forms; only those that are asked for are made.
   *
   * @param screen printed when nothing else is asked for
   * @param width of the screen, in characters
   */
  record Forms(
      Supplier<CutPage> paper,
      Supplier<String> table,
      Supplier<Object> view,
      Supplier<CutPage> screen,
      int width) {}

  /** Writes the list into the files asked for; with none, or with {@code --json}, prints it. */
  void put(CommandContext session, WorkspaceFolders folders, Forms list) {
    OutFiles files = new OutFiles(session, folders, json);
    pdf.ifPresent(file -> files.pdf(file, list.paper().get()));
    csv.ifPresent(file -> files.text(file, list.table().get()));
    if (json) {
      new JsonOutput(session.out()).print(list.view().get());
    } else if (pdf.isEmpty() && csv.isEmpty()) {
      session.out().print(new PlainText().render(list.screen().get(), list.width()));
    }
  }
}
