package limberboard.desktop.write.state;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import limberboard.desktop.base.Notices;
import limberboard.desktop.base.Session;
import limberboard.library.Library;
import limberboard.library.page.Page;
import limberboard.words.CountWords;
import limberboard.writing.PageText;
import limberboard.writing.change.PageLinks;
import limberboard.writing.change.RenameOutcome;
import limberboard.writing.change.Renamer;
import limberboard.writing.save.KeptText;
import limberboard.writing.save.PageFile;
import limberboard.writing.save.SaveOutcome;

/** Changes that reach beyond the text of a page. For the event thread only. */
public final class PageChanges {
  private final WriteModel model;
  private final Session session;
  private final Notices notices;
  private final WriteOutside outside;

  PageChanges(WriteModel model, Session session, Notices notices, WriteOutside outside) {
    this.model = model;
    this.session = session;
    this.notices = notices;
    this.outside = outside;
  }

  /** Why a page cannot be renamed or deleted now; empty when it can. */
  public Optional<String> hindered(OpenPage page) {
    List<OpenPage> unsaved = model.unsaved();
    if (!unsaved.isEmpty()) {
      return Optional.of(
          unsaved.stream().map(OpenPage::title).collect(Collectors.joining("”, “", "Save “", "”"))
              + " first: other files are about to be changed.");
    }
    return model.page(page.id()).isEmpty()
        ? Optional.of(
            "This page cannot be read as it is saved. Mend what is listed as wrong, and save it.")
        : Optional.empty();
  }

  /** Looks where in the workspace a page is named. */
  public void links(OpenPage page, Consumer<List<PageLinks.Link>> found) {
    Optional<Page<?>> known = model.page(page.id());
    if (known.isEmpty()) {
      found.accept(List.of());
      return;
    }
    outside
        .library()
        .run(
            "Looking what names the page",
            () -> {
              outside.guard().begins("looking for links");
              return new PageLinks(outside.folders()).to(known.get());
            },
            found);
  }

  private record Renamed(RenameOutcome outcome, boolean history) {}

  /** Gives a page another id, with every place that names it. */
  public void rename(OpenPage page, String to) {
    String from = page.id();
    Library library = session.library();
    outside
        .library()
        .run(
            "Renaming " + page.title(),
            () -> {
              outside.guard().begins("renaming a page");
              return new Renamed(
                  new Renamer(outside.folders()).rename(library, from, to),
                  outside.record().isThere());
            },
            renamed -> took(page, renamed));
  }

  private void took(OpenPage page, Renamed renamed) {
    if (renamed.outcome() instanceof RenameOutcome.Renamed done) {
      model.moved(page, done.renaming().toPath());
      List<String> files = new ArrayList<>(done.places().keySet());
      files.add(done.renaming().fromPath());
      files.add(done.renaming().toPath());
      int places = done.places().values().stream().mapToInt(Integer::intValue).sum();
      model.saving().wrote(files);
      model
          .saving()
          .offer(
              "Renamed to “"
                  + done.renaming().to()
                  + "”"
                  + (places == 0
                      ? "; nothing else named it."
                      : ", with "
                          + CountWords.of(places, "place")
                          + " that named it in "
                          + CountWords.of(done.places().size(), "file")
                          + "."),
              renamed.history());
    } else {
      notices.warn(
          (renamed.outcome() instanceof RenameOutcome.Refused refused
                  ? refused.problems()
                  : ((RenameOutcome.Unfinished) renamed.outcome()).problems())
              .stream().map(Troubles::of).collect(Collectors.joining(" ")));
    }
  }

  /** Deletes a page's file; its text is kept, and offered back. */
  public void delete(OpenPage page) {
    if (page.saved().isEmpty()) {
      model.close(page);
      return;
    }
    PageText held = page.saved().get();
    PageFile file = new PageFile(outside.folders(), page.path());
    KeptText kept = KeptText.of(page.path(), Optional.empty(), Instant.now(outside.clock()), held);
    String title = page.title();
    outside
        .library()
        .run(
            "Deleting " + title,
            () -> {
              outside.guard().begins("deleting a page");
              outside.texts().keep(kept);
              return file.delete(held);
            },
            outcome -> {
              if (outcome instanceof SaveOutcome.Saved) {
                gone(page, title, held);
              } else if (outcome instanceof SaveOutcome.Changed) {
                notices.warn("Not deleted: somebody else has changed the file meanwhile.");
              } else {
                notices.warn(
                    "Not deleted: " + Troubles.of(((SaveOutcome.Refused) outcome).problem()));
              }
            });
  }

  private void gone(OpenPage page, String title, PageText held) {
    model.remove(page);
    model.saving().wrote(List.of(page.path()));
    notices.tell(
        "“" + title + "” is deleted.",
        new Notices.Offer(
            "Bring it back",
            () -> {
              notices.dismiss();
              OpenPage again = new OpenPage(page.path(), page.kind(), Optional.empty(), held);
              model.adopt(again);
              model.saving().save(again);
            }));
  }

  /** Copies pictures beside the page, and puts links to them where the caret is. */
  public void putIn(OpenPage page, List<Path> pictures) {
    if (pictures.isEmpty()) {
      return;
    }
    outside
        .library()
        .run(
            "Putting pictures in",
            () -> {
              outside.guard().begins("copying pictures");
              return PictureCopies.into(outside.folders(), page.path(), pictures);
            },
            copied -> {
              if (!copied.links().isEmpty()) {
                insert(page, page.caret(), page.caret(), copied.links());
                model.saving().wrote(copied.files());
              }
              if (!copied.refused().isEmpty()) {
                notices.warn(copied.refused());
              }
            });
  }

  /** Asks for pictures and puts them in. */
  public void putIn(OpenPage page) {
    putIn(page, outside.pictures().get());
  }

  /** Puts letters in the place of a stretch, and the caret behind them. */
  public void insert(OpenPage page, int from, int to, String letters) {
    String plain = page.text().plain();
    int begin = Math.min(from, plain.length());
    int end = Math.min(Math.max(begin, to), plain.length());
    model.replace(page, plain.substring(0, begin) + letters + plain.substring(end));
    page.goTo(begin + letters.length(), begin + letters.length());
  }
}
