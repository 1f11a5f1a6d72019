package limberboard.desktop.write.state;

import java.util.Optional;
import java.util.function.Consumer;
import limberboard.desktop.base.Background;
import limberboard.library.header.YamlText.Unchangeable;
import limberboard.writing.PageText;
import limberboard.writing.form.FieldValue;
import limberboard.writing.form.HeaderForm;

/** Puts what a form's field says into the text of a page. For the event thread only. */
public final class HeaderChanges {
  private final Background looking;
  private final WriteModel model;

  /**
   * Changes of headers.
   *
   * @param model takes what comes of them
   * @param looking works them out, off the event thread
   */
  public HeaderChanges(WriteModel model, Background looking) {
    this.model = model;
    this.looking = looking;
  }

  private record Outcome(Optional<PageText> text, String refused) {}

  /**
   * Sets a field, or clears it.
   *
   * @param key the field's key
   * @param value what it is to say; empty to clear it
   * @param refused takes why it could not be done; empty text when it was
   */
  public void set(OpenPage page, String key, Optional<FieldValue> value, Consumer<String> refused) {
    Optional<HeaderForm> form = page.checked().flatMap(Checked::form);
    if (form.isEmpty()) {
      refused.accept("The header cannot be read just now.");
      return;
    }
    PageText before = page.text();
    looking.run(
        "Changing the header",
        () -> changed(form.get(), before, key, value),
        outcome -> {
          if (outcome.text().isPresent() && !page.text().equals(before)) {
            set(page, key, value, refused);
            return;
          }
          refused.accept(outcome.refused());
          outcome.text().ifPresent(text -> model.replace(page, text.plain()));
        });
  }

  private static Outcome changed(
      HeaderForm form, PageText now, String key, Optional<FieldValue> value) {
    Optional<HeaderForm> read = form.edited(now);
    if (read.isEmpty()) {
      return new Outcome(Optional.empty(), "The header cannot be read just now.");
    }
    try {
      HeaderForm set = value.isPresent() ? read.get().set(key, value.get()) : read.get().clear(key);
      return new Outcome(Optional.of(set.page()), "");
    } catch (Unchangeable e) {
      return new Outcome(Optional.empty(), "Not taken: " + e.getMessage() + ".");
    }
  }
}
