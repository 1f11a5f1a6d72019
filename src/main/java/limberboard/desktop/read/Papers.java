package limberboard.desktop.read;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import limberboard.desktop.base.Background;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Notices.Offer;
import limberboard.library.file.OutputFile;
import limberboard.print.page.CutPage;

/**
 * Prints and saves whatever is read: pages, lists, sheets, tables. Laying out, writing, printing
 * and opening are done off the event thread. For the event thread only.
 */
public final class Papers {
  private static final String SAVING = "Saving the file";
  private final PageRenderer renderer;
  private final Background background;
  private final Notices notices;
  private final Outlets outlets;

  /**
   * What prints and saves.
   *
   * @param renderer makes pages ready for paper
   * @param background does the work
   * @param notices is told what became of it
   * @param outlets where it goes
   */
  public Papers(PageRenderer renderer, Background background, Notices notices, Outlets outlets) {
    this.renderer = renderer;
    this.background = background;
    this.notices = notices;
    this.outlets = outlets;
  }

  /** Asks where to and saves a page as PDF. */
  public void save(PageRenderer.Order order) {
    save(order.fileName(), order::cut);
  }

  /**
   * Asks where to and saves a sheet as PDF.
   *
   * @param name a file name without ending
   * @param sheet makes the sheet, off the event thread
   */
  public void save(String name, Supplier<CutPage> sheet) {
    write(name + ".pdf", () -> renderer.paper(sheet.get()));
  }

  /**
   * Asks where to and saves a text, such as a table for other programs.
   *
   * @param name a file name with its ending
   * @param text makes it, off the event thread
   */
  public void saveText(String name, Supplier<String> text) {
    write(name, () -> text.get().getBytes(StandardCharsets.UTF_8));
  }

  /** Prints a page through the system's dialog. */
  public void print(PageRenderer.Order order) {
    print(order.fileName(), order::cut);
  }

  /**
   * Prints a sheet through the system's dialog; without a printer it says so and offers the PDF.
   *
   * @param name what it is called among what is being printed
   * @param sheet makes the sheet, off the event thread
   */
  public void print(String name, Supplier<CutPage> sheet) {
    background.run(
        "Looking for printers",
        outlets.printing()::hasPrinter,
        found -> {
          if (found) {
            ask(name, sheet);
          } else {
            notices.tell(
                "No printer is set up on this computer. Save it as PDF and print that where there"
                    + " is one.",
                new Offer("Save as PDF …", () -> save(name, sheet)));
          }
        });
  }

  private void ask(String name, Supplier<CutPage> sheet) {
    try {
      outlets
          .printing()
          .ask(name)
          .ifPresent(
              order ->
                  background.run(
                      "Printing",
                      () -> {
                        order.print(renderer.paper(sheet.get()));
                        return name;
                      },
                      printed -> notices.tell("Sent to the printer: " + printed + ".")));
    } catch (IOException e) {
      notices.failure("Printing", e);
    }
  }

  private void write(String name, Callable<byte[]> content) {
    outlets.askFile().apply(name).ifPresent(file -> write(file, content));
  }

  private void write(Path file, Callable<byte[]> content) {
    background.run(
        SAVING,
        () -> {
          OutputFile.write(file, content.call());
          return file;
        },
        saved -> notices.tell("Saved as " + saved + ".", new Offer("Open", () -> open(saved))));
  }

  private void open(Path file) {
    background.run(
        "Opening " + file.getFileName(),
        () -> {
          outlets.opening().open(file);
          return file;
        },
        opened -> notices.dismiss());
  }
}
