package limberboard.writing.save;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import limberboard.library.file.FileBytes;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.TextFile;
import limberboard.library.file.UserFolders;
import limberboard.library.file.WorkspaceFolders;

/**
 * Keeps text that is being typed against a crash, in the person's own state folder, {@code
 * kept-texts}, in a folder for each workspace. One file a page and sitting, so that two windows on
 * one page keep a text each. Safe for several threads.
 */
public final class KeptTexts {
  private static final String ENDING = ".kept";
  private static final int SITTING = 4;
  private static final int HEAD = 1_000;

  private final Path folder;
  private final String sitting;

  /**
   * The kept texts of a workspace.
   *
   * @param user where a person's own things lie
   * @param workspace whose pages they are
   */
  public KeptTexts(UserFolders user, WorkspaceFolders workspace) {
    byte[] random = new byte[SITTING];
    new SecureRandom().nextBytes(random);
    this.folder = user.state().resolve("kept-texts").resolve(UserFolders.named(workspace));
    this.sitting = HexFormat.of().formatHex(random);
  }

  /**
   * A text that can be offered back.
   *
   * @param kept the text
   * @param file where it lies
   */
  public record Offered(KeptText kept, Path file) {}

  private Path file(String path) {
    return folder.resolve(UserFolders.fileName(path) + "--" + sitting + ENDING);
  }

  /**
   * Keeps a text in the place of what this sitting has kept of the same page.
   *
   * @throws IOException when it cannot be written; what was kept before is then still there
   */
  public void keep(KeptText text) throws IOException {
    SafeFiles.write(file(text.path()), text.bytes());
  }

  /**
   * Forgets what this sitting has kept of a page, because it is saved or thrown away.
   *
   * @throws IOException when the file cannot be taken away
   */
  public void forget(String path) throws IOException {
    Files.deleteIfExists(file(path));
  }

  /**
   * Forgets a text of an earlier sitting.
   *
   * @throws IOException when the file cannot be taken away
   */
  public void forget(Offered offered) throws IOException {
    Files.deleteIfExists(offered.file());
  }

  /**
   * What earlier sittings have left, the newest first. What a file of the workspace holds already
   * is not offered.
   *
   * @throws IOException when the folder cannot be looked into
   */
  public List<Offered> left(WorkspaceFolders workspace) throws IOException {
    List<Offered> left = new ArrayList<>();
    if (!Files.isDirectory(folder)) {
      return left;
    }
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.sorted().toList()) {
        String name = file.getFileName().toString();
        boolean other = name.endsWith(ENDING) && !name.endsWith("--" + sitting + ENDING);
        if (other && !name.startsWith(".")) {
          read(file)
              .filter(kept -> !isSaved(workspace, kept))
              .ifPresent(kept -> left.add(new Offered(kept, file)));
        }
      }
    }
    left.sort(Comparator.comparing((Offered each) -> each.kept().at()).reversed());
    return left;
  }

  private static boolean isSaved(WorkspaceFolders workspace, KeptText kept) {
    return new PageFile(workspace, kept.path()).open() instanceof PageFile.Ready ready
        && ready.page().equals(Optional.of(kept.text()));
  }

  private static Optional<KeptText> read(Path file) {
    try {
      return KeptText.read(FileBytes.read(file, TextFile.LARGEST + HEAD));
    } catch (IOException e) {
      return Optional.empty();
    }
  }
}
