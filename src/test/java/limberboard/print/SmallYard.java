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
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Page;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.CutPage;
import limberboard.print.picture.Look;
import limberboard.print.picture.Pictures;
import limberboard.print.text.PlainText;
import limberboard.print.xhtml.Xhtml;

/** A small workspace with two boats, Avocet (saildrive) and Knot (shaft), kept as files. */
public final class SmallYard {
  private static final LocalDate DAY = LocalDate.of(2020, 4, 1);

  private final WorkspaceFolders folders;
  private final Workspace workspace;

  public SmallYard() {
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

  public WorkspaceFolders folders() {
    return folders;
  }

  public Workspace workspace() {
    return workspace;
  }

  Page<?> page(String id) {
    return workspace.library().page(id).orElseThrow();
  }

  public Fitting boat(String id) {
    return new Fitting(workspace.boat(id).orElseThrow(), DAY);
  }

  public CutPage cut(String page, String boat) {
    return new PageCutter(workspace.library()).cut(page(page), Optional.of(boat(boat)));
  }

  public CutPage uncut(String page) {
    return new PageCutter(workspace.library()).cut(page(page), Optional.empty());
  }

  public String text(CutPage page) {
    return new PlainText().render(page, 100);
  }

  public String xhtml(CutPage page, Look look) {
    return new Xhtml(Pictures.in(folders)).render(page, look);
  }
}
