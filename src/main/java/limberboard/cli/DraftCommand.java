package limberboard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import limberboard.boat.Workspace;
import limberboard.cli.LetterReplies.Answered;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.answer.AttachedPages;
import limberboard.letters.answer.Drafter;
import limberboard.letters.answer.ToAnswer;
import limberboard.letters.mail.LetterHead;
import limberboard.letters.mail.Mailbox;
import limberboard.letters.mail.OutgoingLetter.SentFile;
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

  @Option(
      names = "--letter",
      paramLabel = "LETTER",
      description =
          "The letter that is answered: it and the earlier ones of its conversation say which boat"
              + " it is, what was found and what is dangerous, and --out answers in its thread.")
  private Optional<String> letter = Optional.empty();

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
      description =
          "From whom, with --out; if not given as the file letters/from of the workspace says, else"
              + " an address that leads nowhere.")
  private Optional<String> from = Optional.empty();

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
    Optional<Answered> answered =
        letter.isEmpty()
            ? Optional.empty()
            : Optional.of(
                new LetterReplies(session, asked.folders(session), read)
                    .answered(letter.orElseThrow()));
    Trace trace =
        asked.trace(
            new TraceMaker(session, read),
            answered.flatMap(each -> each.reply().fitting()),
            answered.map(this::told).orElse(List.of()));
    AnswerDraft draft = new Drafter(read.library()).draft(toAnswer(answered, trace));
    if (out.isPresent()) {
      OutFiles files = new OutFiles(session, asked.folders(session), false);
      DraftFile.of(session, files, from)
          .save(out.orElseThrow(), draft, head(answered, trace), attached(files, trace, read));
    } else {
      session.out().print(html ? draft.html() : draft.text());
    }
    return ExitCode.OK;
  }

  /** What the letter and the earlier ones of its conversation tell of the symptom. */
  private List<TraceRequest.Found> told(Answered answered) {
    return answered.reply().faults().stream()
        .filter(fault -> fault.symptom().equals(asked.symptom()))
        .flatMap(fault -> fault.told().stream())
        .map(
            told ->
                new TraceRequest.Found(told.check(), told.answer().orElse(TraceRequest.CANT_TELL)))
        .toList();
  }

  private ToAnswer toAnswer(Optional<Answered> answered, Trace trace) {
    Optional<ToAnswer> read = answered.map(each -> each.reply().toAnswer());
    List<String> dangers =
        Stream.concat(urgent.stream(), read.stream().flatMap(each -> each.urgent().stream()))
            .distinct()
            .toList();
    return new ToAnswer(
        owner.isEmpty() ? read.map(ToAnswer::owner).orElse("") : owner,
        Optional.of(trace.fault().fitting()),
        dangers,
        new ToAnswer.Faults(List.of(trace)),
        read.map(ToAnswer::changed).orElse(List.of()));
  }

  private LetterHead head(Optional<Answered> answered, Trace trace) {
    if (to.isEmpty() && answered.isPresent()) {
      return answered.get().letter().head();
    }
    LetterHead before = answered.map(each -> each.letter().head()).orElse(LetterHead.NONE);
    return new LetterHead(
        to.map(address -> new Mailbox(owner, address)),
        Optional.empty(),
        before.subject().isEmpty() ? trace.fault().page().title() : before.subject(),
        Optional.empty(),
        before.id(),
        before.repliesTo(),
        false);
  }

  private List<SentFile> attached(OutFiles files, Trace trace, Workspace read) throws IOException {
    for (String id : attach) {
      if (read.library().page(id).isEmpty()) {
        throw new Failure(ExitCode.NOT_FOUND, "there is no page " + id);
      }
    }
    return new AttachedPages(read.library(), files::pdf)
        .of(attach, Optional.of(trace.fault().fitting()));
  }
}
