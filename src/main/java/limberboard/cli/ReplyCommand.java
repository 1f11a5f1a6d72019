package limberboard.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.MailReader;
import limberboard.letters.recognise.Teaching;
import limberboard.library.file.WorkspaceFolders;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code reply}: says what a letter is about, and what to ask or do next. */
@Command(
    name = "reply",
    mixinStandardHelpOptions = true,
    description = {
      "Says which boat a letter is about, whether it is urgent, which symptoms it tells of and what"
          + " its writer has found out already.",
      "With - it answers one path a line from standard input by one JSON line each."
    })
final class ReplyCommand implements Callable<Integer> {
  private static final String PASTED = ".txt";
  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(
      paramLabel = "LETTER",
      description = "A letter as a file: .eml, or .txt for text that was pasted; or -.")
  private String letter;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  ReplyCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    Teaching teaching = new Teaching(folders, read, session.today());
    LetterNext next = new LetterNext(teaching.recogniser(), read);
    if (letter.equals("-")) {
      JsonOutput out = new JsonOutput(session.out());
      for (String line = session.in().readLine(); line != null; line = session.in().readLine()) {
        try {
          out.print(view(teaching, next, line));
        } catch (Failure e) {
          out.print(Map.of("error", e.getMessage()));
        }
      }
      return ExitCode.OK;
    }
    ReplyView view = view(teaching, next, letter);
    if (json) {
      new JsonOutput(session.out()).print(view);
    } else {
      new ReplyOutput(session.out(), read.library()).print(view);
    }
    return ExitCode.OK;
  }

  private ReplyView view(Teaching teaching, LetterNext next, String path) {
    Letter read = read(path);
    return ReplyView.of(read, teaching.recogniser(read).recognise(read), next);
  }

  private Letter read(String name) {
    try {
      Path file = session.folder().resolve(name);
      if (name.toLowerCase(Locale.ROOT).endsWith(PASTED)) {
        return MailReader.pasted(new String(Files.readAllBytes(file), StandardCharsets.UTF_8));
      }
      try (InputStream in = Files.newInputStream(file)) {
        return MailReader.read(in);
      }
    } catch (IOException | InvalidPathException e) {
      throw new Failure(ExitCode.IO, "the letter " + name + " cannot be read: " + e.getMessage());
    }
  }
}
