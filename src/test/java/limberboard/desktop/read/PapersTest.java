package limberboard.desktop.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.print.DocFlavor;
import javax.print.StreamPrintService;
import javax.print.StreamPrintServiceFactory;
import limberboard.desktop.base.Notices;
import limberboard.desktop.support.SmallPrinter;
import limberboard.desktop.support.SmallWorkspace;
import limberboard.desktop.support.Steps;
import limberboard.library.file.WorkspaceFolders;
import limberboard.library.page.Kind;
import limberboard.print.page.Block;
import limberboard.print.page.CutPage;
import limberboard.print.page.Part;
import limberboard.print.picture.Pictures;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PapersTest {
  @TempDir Path folder;
  private final Notices notices = new Notices();
  private final SmallPrinter printer = new SmallPrinter();
  private final List<Path> opened = new ArrayList<>();
  private final List<String> suggested = new ArrayList<>();
  private Papers papers;

  @BeforeEach
  void make() {
    SmallWorkspace.copyTo(folder);
    papers = papers(opened::add);
  }

  private Papers papers(Opening opening) {
    WorkspaceFolders folders = new WorkspaceFolders(folder);
    return new Papers(
        new PageRenderer(Pictures.in(folders)),
        Steps.atOnce(notices),
        notices,
        new Outlets(
            name -> {
              suggested.add(name);
              return Optional.of(folder.resolve(name));
            },
            printer,
            opening));
  }

  private static CutPage sheet() {
    return new CutPage(
        "sheet",
        Kind.TOPIC,
        "A sheet",
        "",
        "",
        List.of(new Part(Part.Role.BODY, "", List.of(Block.Paragraph.of("Some words.")))));
  }

  private String told() {
    return notices.current().map(Notices.Notice::text).orElse("");
  }

  private void take(String offer) {
    notices.current().orElseThrow().offers().stream()
        .filter(found -> found.title().equals(offer))
        .findFirst()
        .orElseThrow()
        .action()
        .run();
  }

  @Test
  void savesAPdfSaysWhereAndOpensIt() throws IOException {
    papers.save("gasket-knot", PapersTest::sheet);
    Path file = folder.resolve("gasket-knot.pdf");
    assertThat(Files.readAllBytes(file)).startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    assertThat(told()).isEqualTo("Saved as " + file + ".");
    take("Open");
    assertThat(opened).containsExactly(file);
  }

  @Test
  void saysWhenTheSystemCannotOpenIt() {
    papers(
            file -> {
              throw new IOException("there is no program for it");
            })
        .save("gasket-knot", PapersTest::sheet);
    take("Open");
    assertThat(told()).contains("Opening gasket-knot.pdf", "there is no program for it");
    assertThat(notices.current().orElseThrow().failure()).isTrue();
  }

  @Test
  void savesATextUnderItsOwnEnding() throws IOException {
    papers.saveText("list.csv", () -> "a,b\n");
    assertThat(folder.resolve("list.csv")).hasContent("a,b\n");
  }

  @Test
  void printsThroughTheDialogAndNothingWhenItIsPutAway() {
    papers.print("gasket-knot", PapersTest::sheet);
    assertThat(printer.jobs()).extracting(SmallPrinter.Job::name).containsExactly("gasket-knot");
    assertThat(printer.jobs().get(0).pdf()).startsWith("%PDF-".getBytes(StandardCharsets.US_ASCII));
    assertThat(told()).isEqualTo("Sent to the printer: gasket-knot.");
    printer.refuse();
    papers.print("other", PapersTest::sheet);
    assertThat(printer.jobs()).hasSize(1);
  }

  @Test
  void withoutAPrinterItSaysSoAndOffersThePdf() {
    printer.takeAway();
    papers.print("gasket-knot", PapersTest::sheet);
    assertThat(printer.jobs()).isEmpty();
    assertThat(told()).startsWith("No printer is set up on this computer.");
    take("Save as PDF …");
    assertThat(suggested).containsExactly("gasket-knot.pdf");
    assertThat(folder.resolve("gasket-knot.pdf")).exists();
  }

  @Test
  void theSystemsPrintingSendsTheSheetsToThePrinterThatWasChosen() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    StreamPrintService postscript =
        StreamPrintServiceFactory.lookupStreamPrintServiceFactories(
            DocFlavor.SERVICE_FORMATTED.PAGEABLE, "application/postscript")[0]
            .getPrintService(out);
    SystemPrinting printing =
        new SystemPrinting(
            job -> {
              try {
                job.setPrintService(postscript);
                return true;
              } catch (java.awt.print.PrinterException e) {
                throw new IllegalStateException(e);
              }
            });
    byte[] pdf = new PageRenderer(Pictures.in(new WorkspaceFolders(folder))).paper(sheet());
    printing.ask("a sheet").orElseThrow().print(pdf);
    assertThat(out.toString(StandardCharsets.ISO_8859_1))
        .startsWith("%!PS-Adobe")
        .contains("%%Page: 1 1");
    assertThat(new SystemPrinting(job -> false).ask("a sheet")).isEmpty();
  }
}
