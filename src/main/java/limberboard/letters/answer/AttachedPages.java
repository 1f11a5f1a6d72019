package limberboard.letters.answer;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import limberboard.boat.Fitting;
import limberboard.letters.mail.OutgoingLetter.SentFile;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.print.cut.PageCutter;
import limberboard.print.page.CutPage;

/**
 * Pages that are sent with an answer, each cut to the boat and with all cautions that are hers. As
 * safe for threads as what lays out is.
 *
 * @param library the pages
 * @param paper lays out
 */
public record AttachedPages(Library library, Paper paper) {
  private static final String MEDIA = "application/pdf";

  /** Lays out a page for paper. */
  public interface Paper {
    /**
     * The page as PDF.
     *
     * @throws IOException when it cannot be laid out
     */
    byte[] pdf(CutPage page) throws IOException;
  }

  /**
   * Pages as files to send; ids of pages that are not there are left out.
   *
   * @param ids ids of pages; they are the files' names
   * @param boat for which boat; empty for any
   * @throws IOException when one cannot be laid out
   */
  public List<SentFile> of(List<String> ids, Optional<Fitting> boat) throws IOException {
    PageCutter cutter = new PageCutter(library);
    List<SentFile> sent = new ArrayList<>();
    for (String id : ids) {
      Optional<Page<?>> page = library.page(id);
      if (page.isPresent()) {
        byte[] pdf = paper.pdf(cutter.cut(page.get(), boat));
        sent.add(new SentFile(page.get().id() + ".pdf", MEDIA, pdf));
      }
    }
    return List.copyOf(sent);
  }
}
