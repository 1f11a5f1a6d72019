package limberboard.desktop.write.state;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import limberboard.desktop.base.Latest;
import limberboard.library.Library;
import limberboard.writing.PageText;
import limberboard.writing.form.HeaderForm;
import limberboard.writing.typing.PageTyping;

/** Looks at the text that is typed, off the event thread; the newest outcome wins. */
final class PageChecks {
  private final WriteOutside outside;
  private final Latest readers;
  private final Latest looks;
  private final PageProofs proofs;
  private final Supplier<Library> library;

  /**
   * Looks at texts.
   *
   * @param library gives all pages as they were last read
   */
  PageChecks(WriteOutside outside, Supplier<Library> library) {
    this.outside = outside;
    this.library = library;
    this.proofs = new PageProofs(outside);
    this.readers = new Latest(outside.library());
    this.looks = new Latest(outside.looking());
  }

  /** Looks at a page once its text has rested for a moment. */
  void afterPause(OpenPage page) {
    outside.pause().restart(() -> look(page));
  }

  /** Goes through the other pages anew, then looks at this one. */
  void prepare(OpenPage page) {
    String path = page.path();
    readers.run(
        "Reading what pages refer to",
        () -> new PageTyping(outside.readers().of(path, page.kind())),
        made -> {
          page.typing(Optional.of(made));
          look(page);
        });
  }

  /** Makes a reader of a page's texts, for somebody else. */
  void reader(OpenPage page, Consumer<PageTyping> made) {
    String path = page.path();
    outside
        .library()
        .run(
            "Reading what pages refer to",
            () -> new PageTyping(outside.readers().of(path, page.kind())),
            made);
  }

  /** Looks at a page now. */
  void look(OpenPage page) {
    if (page.typing().isEmpty()) {
      prepare(page);
      return;
    }
    PageTyping typing = page.typing().get();
    PageText text = page.text();
    Optional<HeaderForm> before = page.checked().flatMap(Checked::form);
    looks.run(
        "Looking at the text",
        () -> checked(page, typing, text, before),
        found -> {
          page.checked(found);
          proofs.look(page, library.get());
        });
  }

  /**
   * Hands on what a page says that was just saved, at once where its text was looked at already;
   * nothing while the other pages have not been gone through yet.
   */
  void saved(OpenPage page, PageText text, Consumer<Checked> then) {
    Optional<Checked> known = page.checked().filter(found -> found.text().equals(text));
    if (known.isPresent()) {
      then.accept(known.get());
    } else if (page.typing().isPresent()) {
      PageTyping typing = page.typing().get();
      Optional<HeaderForm> before = page.checked().flatMap(Checked::form);
      outside.looking().run("Looking at the text", () -> checked(page, typing, text, before), then);
    }
  }

  private Checked checked(
      OpenPage page, PageTyping typing, PageText text, Optional<HeaderForm> before) {
    outside.guard().begins("looking at a text");
    Optional<HeaderForm> form =
        before.isPresent() ? before.get().edited(text) : HeaderForm.of(page.kind(), text);
    return new Checked(
        text, typing.read(text), form, form.map(HeaderForm::fields).orElse(List.of()));
  }
}
