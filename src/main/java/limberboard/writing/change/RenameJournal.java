package limberboard.writing.change;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import limberboard.library.file.FileBytes;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.SharedTextFile.Rewrite;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.header.HeaderSource;
import limberboard.library.header.YamlScalar;
import limberboard.library.page.Kind;
import limberboard.library.problem.Problem;

/**
 * What is being renamed, written down before the first file is touched and taken away after the
 * last. It says the renaming and not the files, since renaming again what is renamed already
 * changes nothing.
 *
 * @param folders the workspace
 */
record RenameJournal(WorkspaceFolders folders) {
  private static final String FILE = ".renaming";

  private Path file() {
    return folders.root().resolve(FILE);
  }

  /** Whether a renaming has not come to its end. */
  boolean isThere() {
    return FileBytes.isThere(file());
  }

  /** The renaming that has not come to its end; empty when there is none that can be read. */
  Optional<Renaming> read() {
    return read(TextFile.read(folders, file(), TextFile.LARGEST).text());
  }

  private static Optional<Renaming> read(String text) {
    HeaderSource keys = new HeaderSource(text);
    String folder = text(keys, "kind");
    String from = text(keys, "from");
    String to = text(keys, "to");
    return Arrays.stream(Kind.values())
        .filter(kind -> kind.folder().equals(folder) && !from.isEmpty() && !to.isEmpty())
        .findFirst()
        .map(kind -> new Renaming(kind, from, to));
  }

  private static String text(HeaderSource keys, String key) {
    return keys.value(key).orElse(null) instanceof HeaderSource.One one ? one.text() : "";
  }

  /** Writes a renaming down, in the place of the one that is there if it is this one. */
  Optional<Problem> write(Renaming renaming, Optional<Renaming> insteadOf) {
    return change(insteadOf, Optional.of(text(renaming)));
  }

  /** Says that a renaming has come to its end. */
  Optional<Problem> end(Renaming renaming) {
    return change(Optional.of(renaming), Optional.empty());
  }

  private Optional<Problem> change(Optional<Renaming> was, Optional<String> is) {
    return new SharedTextFile(folders, file(), TextFile.LARGEST)
        .change(
            now ->
                now.flatMap(RenameJournal::read).equals(was)
                    ? Rewrite.<Optional<Problem>>write(is, Optional.empty())
                    : Rewrite.leave(is.isEmpty() ? Optional.empty() : Optional.of(busy())),
            Optional::of);
  }

  private static Problem busy() {
    return Problem.error(
        FILE,
        0,
        "",
        "says that another page is being renamed",
        "try again when that has come to its end; nothing was changed");
  }

  private static String text(Renaming renaming) {
    return "# a page is being renamed; this goes when it is done, and opening goes on with it\n"
        + "kind: "
        + renaming.kind().folder()
        + "\nfrom: "
        + YamlScalar.word(renaming.from())
        + "\nto: "
        + YamlScalar.word(renaming.to())
        + "\n";
  }
}
