package limberboard.desktop.read;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.library.SafeFiles;
import limberboard.library.WorkspaceFolders;
import limberboard.print.CutPage;
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

  /** Asks where to and saves a page. */
  public void save(PageRenderer.Order order) {
    save(order.page().id(), order::cut);
  }

  /**
   * Asks where to and saves a sheet.
   *
   * @param name a file name without ending
   * @param sheet makes the sheet, off the event thread
   */
  public void save(String name, Supplier<CutPage> sheet) {
    ask.apply(name + ".pdf").ifPresent(file -> write(sheet, file));
  }

  private void write(Supplier<CutPage> sheet, Path file) {
    background.run(
        "Saving the PDF",
        () -> {
          ByteArrayOutputStream out = new ByteArrayOutputStream();
          new Pdf().write(renderer.paper(sheet.get()), folders.root(), out);
          SafeFiles.write(file, out.toByteArray());
          return file;
        },
        saved -> notices.tell("Saved as " + saved + ". Open it to print it."));
  }
}
