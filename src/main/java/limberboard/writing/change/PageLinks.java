package limberboard.writing.change;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import limberboard.library.file.FileBytes;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.writing.PageText;
import limberboard.writing.change.NamingFiles.NamingFile;

/**
 * Where a page is named in all of a workspace: links and headers of pages, boats, logs, stock,
 * cases, letters and drills.
 *
 * @param folders the workspace
 */
public record PageLinks(WorkspaceFolders folders) {
  /**
   * A place that names the page.
   *
   * @param file relative to the workspace
   * @param line from 1
   */
  public record Link(String file, int line) {}

  /**
   * All places that name a page, in order; its own file is left out.
   *
   * @throws IOException when a folder of the workspace cannot be looked into
   */
  public List<Link> to(Page<?> page) throws IOException {
    PageNaming naming = new PageNaming(folders, new Renaming(page.kind(), page.id(), page.id()));
    List<Link> links = new ArrayList<>();
    for (NamingFile file : new NamingFiles(folders).all()) {
      String path = folders.relative(file.path());
      if (!path.equals(page.path())) {
        for (PageNaming.Place place : naming.places(file, text(file))) {
          links.add(new Link(path, place.line()));
        }
      }
    }
    return links;
  }

  /** What a file holds; nothing when it cannot be read, which validate tells. */
  static String text(NamingFile file) {
    try {
      return PageText.of(FileBytes.read(file.path(), file.largest())).text();
    } catch (IOException e) {
      return "";
    }
  }
}
