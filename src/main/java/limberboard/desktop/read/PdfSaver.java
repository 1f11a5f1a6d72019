package limberboard.desktop.read;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.library.SafeFiles;
import limberboard.library.WorkspaceFolders;
import limberboard.print.Pdf;

/** Saves pages as PDF, for printing with whatever prints. For the event thread only. */
public final class PdfSaver {
  private final WorkspaceFolders folders;
  private final PageRenderer renderer;
  private final Background background;
  private final Notices notices;
  private final Function<String, Optional<Path>> ask;

  /**
   * A saver.
   *
   * @param folders where pictures lie
   * @param renderer makes pages ready for paper
   * @param background writes the file
   * @param notices is told where the file went
   * @param ask asks where to, suggesting a file name; empty means not at all
   */
  public PdfSaver(
      WorkspaceFolders folders,
      PageRenderer renderer,
      Background background,
      Notices notices,
      Function<String, Optional<Path>> ask) {
    this.folders = folders;
    this.renderer = renderer;
    this.background = background;
    this.notices = notices;
    this.ask = ask;
  }

  /** Asks where to and saves. */
  public void save(PageRenderer.Order order) {
    ask.apply(order.page().id() + ".pdf").ifPresent(file -> write(order, file));
  }

  private void write(PageRenderer.Order order, Path file) {
    background.run(
        "Saving the PDF",
        () -> {
          ByteArrayOutputStream out = new ByteArrayOutputStream();
          new Pdf().write(renderer.paper(order), folders.root(), out);
          SafeFiles.write(file, out.toByteArray());
          return file;
        },
        saved -> notices.tell("Saved as " + saved + ". Open it to print it."));
  }
}
