package limberboard.desktop.write.state;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import limberboard.library.file.SafeFiles;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.picture.PictureSafety;
import limberboard.writing.start.IdWords;

/**
 * Pictures that were copied into the library's folder of pictures.
 *
 * @param links what is to stand in the page; empty when none was copied
 * @param files the copies, relative to the workspace
 * @param refused which were not copied and why; empty when all were
 */
record PictureCopies(String links, List<String> files, String refused) {
  private static final String FOLDER = "articles/pictures/";

  PictureCopies {
    files = List.copyOf(files);
  }

  /**
   * Copies pictures. One that is there already with the same content is linked as it is; another of
   * the same name keeps its name, and the new one gets a number.
   *
   * @param page the path of the page's file, relative to the workspace
   * @throws IOException when the folder cannot be written
   */
  static PictureCopies into(WorkspaceFolders folders, String page, List<Path> pictures)
      throws IOException {
    List<String> links = new ArrayList<>();
    List<String> files = new ArrayList<>();
    List<String> refused = new ArrayList<>();
    for (Path picture : pictures) {
      Optional<String> wrong = PictureSafety.wrong(picture);
      if (wrong.isPresent()) {
        refused.add(picture.getFileName() + " " + wrong.get() + ".");
        continue;
      }
      String path = copied(folders, picture);
      files.add(path);
      String up = "../".repeat((int) page.chars().filter(c -> c == '/').count() - 1);
      links.add("![](" + up + path.substring("articles/".length()) + ")");
    }
    return new PictureCopies(
        String.join("\n\n", links),
        files,
        refused.isEmpty() ? "" : "Not put in: " + String.join(" ", refused));
  }

  private static String copied(WorkspaceFolders folders, Path picture) throws IOException {
    byte[] bytes = Files.readAllBytes(picture);
    String name = picture.getFileName().toString();
    int dot = name.lastIndexOf('.');
    String words = IdWords.of(name.substring(0, dot));
    String ending = name.substring(dot).toLowerCase(Locale.ROOT);
    for (int number = 1; ; number++) {
      String path = FOLDER + words + (number == 1 ? "" : "-" + number) + ending;
      Path to = folders.root().resolve(path);
      if (!Files.exists(to)) {
        Files.createDirectories(to.getParent());
        SafeFiles.write(to, bytes);
        return path;
      }
      if (Arrays.equals(Files.readAllBytes(to), bytes)) {
        return path;
      }
    }
  }
}
