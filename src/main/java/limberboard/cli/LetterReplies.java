package limberboard.cli;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.boat.Workspace;
import limberboard.letters.answer.AnswerDraft;
import limberboard.letters.mail.Letter;
import limberboard.letters.mail.LetterAsFile;
import limberboard.letters.recognise.Teaching;
import limberboard.letters.reply.Conversations;
import limberboard.letters.reply.KeptLetter;
import limberboard.letters.reply.LetterFiles;
import limberboard.letters.reply.Reply;
import limberboard.letters.reply.Replying;
import limberboard.library.file.WorkspaceFolders;

/**
 * What there is to answer to letters that are files. A letter goes on from the earlier ones of its
 * conversation that lie beside it or in the workspace's folder of letters; of a folder the letters
 * are read when one of it first needs them.
 */
final class LetterReplies {
  private final CommandContext session;
  private final WorkspaceFolders folders;
  private final Workspace workspace;
  private final Teaching teaching;
  private final Map<Path, List<KeptLetter>> kept = new HashMap<>();
  private final Map<Path, Replying> replying = new HashMap<>();
  private final Replying alone;

  /**
   * Learns from a workspace.
   *
   * @throws IOException when its letters cannot be read
   */
  LetterReplies(CommandContext session, WorkspaceFolders folders, Workspace workspace)
      throws IOException {
    this.session = session;
    this.folders = folders;
    this.workspace = workspace;
    this.teaching = new Teaching(folders, workspace, session.today());
    this.alone = new Replying(teaching, workspace, new Conversations(List.of()));
  }

  /** A letter with what there is to answer. */
  record Answered(Letter letter, Reply reply, Optional<AnswerDraft> draft) {}

  /**
   * Reads a letter and says what there is to answer.
   *
   * @throws Failure when it cannot be read
   */
  Answered answered(String name) {
    Path file = file(name);
    Letter letter = letter(name, file);
    Replying by =
        letter.head().repliesTo().isEmpty() ? alone : replying(file.toAbsolutePath().getParent());
    Reply reply = by.to(letter);
    return new Answered(letter, reply, by.draft(reply));
  }

  private Path file(String name) {
    try {
      return session.folder().resolve(name).normalize();
    } catch (InvalidPathException e) {
      throw new Failure(ExitCode.IO, "the letter " + name + " cannot be read: " + e.getMessage());
    }
  }

  private static Letter letter(String name, Path file) {
    try {
      return LetterAsFile.read(file);
    } catch (IOException e) {
      throw new Failure(ExitCode.IO, "the letter " + name + " cannot be read: " + e.getMessage());
    }
  }

  private Replying replying(Path beside) {
    return replying.computeIfAbsent(
        beside,
        folder -> {
          List<KeptLetter> all = new ArrayList<>();
          Stream.of(folder, folders.letters().toAbsolutePath().normalize())
              .distinct()
              .forEach(each -> all.addAll(kept.computeIfAbsent(each, LetterFiles::mail)));
          return new Replying(teaching, workspace, new Conversations(all));
        });
  }
}
