package limberboard.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;
import limberboard.library.file.WorkspaceFolders;
import limberboard.print.page.CutPage;
import picocli.CommandLine.Option;

/** The options {@code --pdf}, {@code --csv} and {@code --json}, shared by commands that list. */
final class ListOutput {
  @Option(names = "--pdf", paramLabel = "FILE", description = "Write the list as A4 PDF.")
  private Optional<Path> pdf = Optional.empty();

  @Option(names = "--csv", paramLabel = "FILE", description = "Write the list as CSV (RFC 4180).")
  private Optional<Path> csv = Optional.empty();

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  /**
   * Writes the files that were asked for. With {@code --json} only JSON goes to the output, so that
   * it can be read by a program; the text is printed when nothing else is asked for.
   */
  void write(
      CommandContext session,
      WorkspaceFolders folders,
      Supplier<CutPage> paper,
      Supplier<String> table,
      Supplier<Object> data,
      Supplier<String> text) {
    pdf.ifPresent(file -> OutFile.write(session, file, Paper.pdf(paper.get(), folders), json));
    csv.ifPresent(
        file -> OutFile.write(session, file, table.get().getBytes(StandardCharsets.UTF_8), json));
    if (json) {
      new JsonOutput(session.out()).print(data.get());
    } else if (pdf.isEmpty() && csv.isEmpty()) {
      session.out().print(text.get());
    }
  }
}
