package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.cli.LetterReplies.Answered;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.AttachedPages;
import limberboard.letters.mail.OutgoingLetter.SentFile;
import limberboard.library.file.WorkspaceFolders;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code reply}: says what a letter is about, what to ask or do next, and drafts the answer. */
@Command(
    name = "reply",
    mixinStandardHelpOptions = true,
    description = {
      "Says which boat a letter is about, whether it is urgent, which symptoms it tells of and what"
          + " its writer has found out already, going on from the earlier letters of its"
          + " conversation; and drafts the answer.",
      "With - it answers one path a line from standard input by one JSON line each."
    })
final class ReplyCommand implements Callable<Integer> {
  private static final String FROM_INPUT = "-";

  private final CommandContext session;
  @Mixin private WorkspaceOption workspace;

  @Parameters(
      paramLabel = "LETTER",
      description = "A letter as a file: .eml, or .txt for text that was pasted; or -.")
  private String letter;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Option(
      names = "--draft",
      paramLabel = "FILE.eml",
      description = "Save the drafted answer as a letter that a mail program opens.")
  private Optional<Path> draft = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "ADDRESS",
      description =
          "From whom, with --draft; if not given as the file letters/from of the workspace says,"
              + " else an address that leads nowhere.")
  private Optional<String> from = Optional.empty();

  @Option(
      names = "--attach",
      description = "With --draft: send the pages that it goes by, cut to the boat, as PDF.")
  private boolean attach;

  ReplyCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    if (letter.equals(FROM_INPUT) && draft.isPresent()) {
      throw new Failure(ExitCode.USAGE, "--draft is for one letter, and - reads several");
    }
    if (draft.isEmpty() && (attach || from.isPresent())) {
      throw new Failure(ExitCode.USAGE, "--attach and --from go with --draft");
    }
    WorkspaceFolders folders = session.folders(workspace.folder());
    Workspace read = session.workspace(folders);
    LetterReplies replies = new LetterReplies(session, folders, read);
    if (letter.equals(FROM_INPUT)) {
      each(replies);
      return ExitCode.OK;
    }
    Answered answered = replies.answered(letter);
    ReplyView view = ReplyView.of(answered);
    if (json) {
      new JsonOutput(session.out()).print(view);
    } else {
      new ReplyOutput(session.out(), read.library()).print(view);
    }
    if (draft.isPresent()) {
      save(draft.get(), answered, new OutFiles(session, folders, json), read);
    }
    return ExitCode.OK;
  }

  private void save(Path file, Answered answered, OutFiles files, Workspace read)
      throws IOException {
    if (answered.draft().isEmpty()) {
      session.err().println("Nothing is to be answered; no draft was written.");
      return;
    }
    AnswerDraft written = answered.draft().orElseThrow();
    List<SentFile> pages =
        attach
            ? new AttachedPages(read.library(), files::pdf)
                .of(written.pages(), answered.reply().fitting())
            : List.of();
    if (attach && pages.isEmpty()) {
      session.err().println("The draft goes by no page; nothing is attached.");
    }
    DraftFile.of(session, files, from).save(file, written, answered.letter().head(), pages);
  }

  /** One letter that cannot be read, or that nobody foresaw, does not keep the others waiting. */
  private void each(LetterReplies replies) throws IOException {
    JsonOutput out = new JsonOutput(session.out());
    for (String line = session.in().readLine(); line != null; line = session.in().readLine()) {
      Object view;
      try {
        view = ReplyView.of(replies.answered(line));
      } catch (Failure e) {
        view = broken(line, e.getMessage());
      } catch (RuntimeException e) {
        view = broken(line, "the letter " + line + " could not be answered: " + e);
      }
      out.print(view);
    }
  }

  private static Map<String, String> broken(String path, String why) {
    Map<String, String> broken = new LinkedHashMap<>();
    broken.put("letter", path);
    broken.put("error", why);
    return broken;
  }
}
