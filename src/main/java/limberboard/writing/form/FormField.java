package limberboard.writing.form;

import java.util.Optional;
import limberboard.writing.PageText.Stretch;

/**
 * A field of a page's form.
 *
 * @param declared what it can hold
 * @param value what it says; empty when the key is not there
 * @param place where its value stands in the page's text; empty when the key is not there
 */
public record FormField(
    FieldDeclaration declared, Optional<FieldValue> value, Optional<Stretch> place) {
  /** The key, as it is written. */
  public String key() {
    return declared.key();
  }
}
