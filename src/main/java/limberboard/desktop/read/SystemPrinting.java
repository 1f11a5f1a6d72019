package limberboard.desktop.read;

import java.awt.print.PrinterException;
import java.awt.print.PrinterJob;
import java.io.IOException;
import java.util.Optional;
import java.util.function.Predicate;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.printing.PDFPageable;

/** The printers that the system knows, asked for by its own dialog. */
public final class SystemPrinting implements Printing {
  private final Predicate<PrinterJob> dialog;

  /** With the system's dialog. */
  public SystemPrinting() {
    this(PrinterJob::printDialog);
  }

  /**
   * With another dialog.
   *
   * @param dialog chooses printer and sheets; false when nothing is to be printed
   */
  SystemPrinting(Predicate<PrinterJob> dialog) {
    this.dialog = dialog;
  }

  @Override
  public boolean hasPrinter() {
    return PrinterJob.lookupPrintServices().length > 0;
  }

  @Override
  public Optional<Order> ask(String name) {
    PrinterJob job = PrinterJob.getPrinterJob();
    job.setJobName(name);
    return dialog.test(job) ? Optional.of(pdf -> print(job, pdf)) : Optional.empty();
  }

  private static void print(PrinterJob job, byte[] pdf) throws IOException {
    try (PDDocument sheets = Loader.loadPDF(pdf)) {
      job.setPageable(new PDFPageable(sheets));
      job.print();
    } catch (PrinterException e) {
      throw new IOException("the printer says: " + e.getMessage(), e);
    }
  }
}
