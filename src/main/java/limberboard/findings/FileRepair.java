package limberboard.findings;

import java.util.Optional;
import limberboard.library.file.SharedTextFile;
import limberboard.library.file.TextFile;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.problem.Problem;

/** A repair within one file, also of a text of it that is not saved yet. Immutable. */
public sealed interface FileRepair extends Repair permits LinkRepair, HeaderRepair {
  /** The file, relative to the workspace. */
  String file();

  /** What it does, without where: “Adds torch to tools”. */
  String deed();

  /** What is said where it can no longer be made. */
  Problem gone();

  /**
   * A text of the file with the repair made, all else to the letter; empty where it can no longer
   * be made.
   */
  Optional<String> in(String text);

  /**
   * Makes it in the file.
   *
   * @return why it could not be made; the file is then as it was
   */
  @Override
  default Optional<Problem> make(WorkspaceFolders folders) {
    return new SharedTextFile(folders, folders.root().resolve(file()), TextFile.LARGEST)
        .edit(this::in, () -> Optional.of(gone()));
  }
}
