package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import limberboard.boat.Workspace;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.Drafter;
import limberboard.letters.answer.ToAnswer;
import limberboard.letters.mail.LetterHead;
import limberboard.letters.mail.MailWriter;
import limberboard.letters.mail.Mailbox;
import limberboard.letters.mail.OutgoingLetter;
import limberboard.letters.mail.OutgoingLetter.SentFile;
import limberboard.library.page.Page;
import limberboard.print.cut.PageCutter;
import limberboard.trace.Trace;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code draft}: drafts an answer to an owner. */
@Command(
    name = "draft",
    mixinStandardHelpOptions = true,
    description = {
      "Drafts an answer to an owner about a symptom: what cannot wait first, what it may be, the"
          + " cautions, and at most three checks or the mend."
    })
final class DraftCommand implements Callable<Integer> {
  private final CommandContext session;
  @Mixin private TraceOptions asked;

  @Option(
      names = "--urgent",
      paramLabel = "WHAT",
      description = "What is dangerous now, such as \"gas can be smelt\"; may be repeated.")
  private List<String> urgent = List.of();

  @Option(names = "--owner", paramLabel = "NAME", description = "How the owner is addressed.")
  private String owner = "";

  @Option(names = "--html", description = "Print HTML instead of text.")
  private boolean html;

  @Option(
      names = "--out",
      paramLabel = "FILE.eml",
      description = "Save the draft as a letter that a mail program opens.")
  private Optional<Path> out = Optional.empty();

  @Option(names = "--to", paramLabel = "ADDRESS", description = "To whom, with --out.")
  private Optional<String> to = Optional.empty();

  @Option(
      names = "--from",
      paramLabel = "ADDRESS",
      description = "From whom, with --out; if not given an address that leads nowhere.")
  private String from = "yard@example.invalid";

  @Option(
      names = "--attach",
      paramLabel = "PAGE",
      description = "Send a page cut to the boat as PDF, with --out; may be repeated.")
  private List<String> attach = List.of();

  DraftCommand(CommandContext session) {
    this.session = session;
  }

  @Override
  public Integer call() throws IOException {
    Workspace read = asked.workspace(session);
    Trace trace = asked.trace(new TraceMaker(session, read));
    AnswerDraft draft =
        new Drafter(read.library())
            .draft(
                new ToAnswer(
                    owner,
                    Optional.of(trace.fault().fitting()),
                    urgent,
                    new ToAnswer.Faults(List.of(trace))));
    if (out.isPresent()) {
      save(draft, trace, read);
    } else {
      session.out().print(html ? draft.html() : draft.text());
    }
    return ExitCode.OK;
  }

  private void save(AnswerDraft draft, Trace trace, Workspace read) {
    OutFiles files = new OutFiles(session, asked.folders(session), false);
    LetterHead head =
        new LetterHead(
            to.map(address -> new Mailbox(owner, address)),
            Optional.empty(),
            trace.fault().page().title(),
            Optional.empty(),
            Optional.empty(),
            List.of(),
            false);
    OutgoingLetter letter =
        OutgoingLetter.answering(
            head,
            new Mailbox("", from),
            OffsetDateTime.now(),
            "<" + UUID.randomUUID() + "@limberboard.invalid>",
            draft.text(),
            draft.html(),
            attached(files, trace, read));
    files.bytes(out.orElseThrow(), MailWriter.write(letter));
  }

  private List<SentFile> attached(OutFiles files, Trace trace, Workspace read) {
    PageCutter cutter = new PageCutter(read.library());
    List<SentFile> sent = new ArrayList<>();
    for (String id : attach) {
      Page<?> page =
          read.library()
              .page(id)
              .orElseThrow(() -> new Failure(ExitCode.NOT_FOUND, "there is no page " + id));
      byte[] pdf = files.pdf(cutter.cut(page, Optional.of(trace.fault().fitting())));
      sent.add(new SentFile(id + ".pdf", "application/pdf", pdf));
    }
    return sent;
  }
}
