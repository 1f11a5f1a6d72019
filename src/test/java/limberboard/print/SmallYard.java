package limberboard.print;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.boat.Workspace;
import limberboard.boat.WorkspaceReader;
import limberboard.library.Page;
import limberboard.library.WorkspaceFolders;

/** A small workspace with two boats, Avocet (saildrive) and Knot (shaft), kept as files. */
final class SmallYard {
  private static final LocalDate DAY = LocalDate.of(2020, 4, 1);

  private final WorkspaceFolders folders;
  private final Workspace workspace;

  SmallYard() {
    try {
      folders =
          new WorkspaceFolders(
              Path.of(SmallYard.class.getResource("/limberboard/print/workspace").toURI()));
      workspace = new WorkspaceReader(folders).read();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  WorkspaceFolders folders() {
    return folders;
  }

  Workspace workspace() {
    return workspace;
  }

  Page<?> page(String id) {
    return workspace.library().page(id).orElseThrow();
  }

  Fitting boat(String id) {
    return new Fitting(workspace.boat(id).orElseThrow(), DAY);
  }

  CutPage cut(String page, String boat) {
    return new PageCutter(workspace.library()).cut(page(page), Optional.of(boat(boat)));
  }

  CutPage uncut(String page) {
    return new PageCutter(workspace.library()).cut(page(page), Optional.empty());
  }

  String text(CutPage page) {
    return new PlainText().render(page, 100);
  }

  String xhtml(CutPage page, Look look) {
    return new Xhtml(Pictures.in(folders)).render(page, look);
  }
}
